import { describe, expect, test } from "vitest";
import { keyIn, keysOf, newKey } from "./keys.js";

// SHA-256("abc"), FIPS 180-4, worked example of NIST
const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
const keys = keysOf([`other=${"0".repeat(64)}`, `app=${abc}`]) ?? [];

describe("a key", () => {
  test("is found by its SHA-256", async () => {
    expect(await keyIn("Bearer abc", keys)).toBe("app");
    expect(await keyIn("bearer  abc", keys)).toBe("app");
  });

  test.each([
    "",
    "Bearer",
    "Bearer ",
    "abc",
    "Basic abc",
    "Bearer abd",
    "Bearer abc abc",
    "Bearer abc,",
    `Bearer ${abc}`,
    `Bearer app=${abc}`,
    `Bearer ${"a".repeat(20_000)}`,
    "Bearer \u00e4\u00ff",
    "Bearer ../../etc",
    `${"Bearer ".repeat(2000)}abc`,
  ])("is not in %j", async (header) => {
    expect(await keyIn(header, keys)).toBeUndefined();
  });

  test("is 256 random bits that its entry does not show", async () => {
    const [one, two] = [await newKey("app"), await newKey("app")];
    expect(one.key).toMatch(/^[\w-]{43}$/);
    expect(one.key).not.toBe(two.key);
    expect(one.entry).not.toContain(one.key);
    expect(await keyIn(`Bearer ${one.key}`, keysOf([one.entry]) ?? [])).toBe("app");
    expect(await keyIn(`Bearer ${two.key}`, keysOf([one.entry]) ?? [])).toBeUndefined();
  });
});
