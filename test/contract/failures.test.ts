/** Every operation by every way to fail that the contract names; those of a guarded or limited host are with its configuration. */

import { gzipSync } from "node:zlib";
import { createApp } from "@plumbdrift/api";
import { MAX_BODY_BYTES, MAX_ERRORS, operations, type ProblemCode, problemKinds } from "@plumbdrift/contract";
import { afterEach, describe, expect, test, vi } from "vitest";
import { ask, type Body, exampleOf, examplesOf, post, requiredOf, sending } from "./api.js";
import { broken } from "./broken.js";

interface Failure {
  readonly code: ProblemCode;
  readonly init: (example: Body, path: string) => RequestInit;
  /** What the first error has to say, where there are errors. */
  readonly error?: (path: string) => object;
}

const json = { "content-type": "application/json" };

/** The first quantity of a body, in its order. */
function quantityIn(value: Body, at = ""): { readonly at: string; readonly quantity: Body } | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  if (typeof value.value === "number" && typeof value.unit === "string") return { at, quantity: value };
  for (const [key, inner] of Object.entries(value)) {
    const found = quantityIn(inner, `${at}/${key}`);
    if (found) return found;
  }
  return undefined;
}

const firstKey = (path: string): string => requiredOf(path)[0]?.slice(1) ?? "";

/** A body that says a field again, with another value first. */
const twice = (body: Body, key: string): string => `{"${key}":null,${JSON.stringify(body).slice(1)}`;

/** A body that was right but for one byte, which no UTF-8 has, in a string. */
const withByte = (body: Body, byte: number): Uint8Array<ArrayBuffer> => {
  const bytes = new TextEncoder().encode(JSON.stringify(body));
  bytes[bytes.lastIndexOf(0x22) - 1] = byte;
  return bytes;
};

const failures: Readonly<Record<string, Failure>> = {
  "malformed JSON": { code: "malformed-json", init: () => sending('{"water": {') },
  "a body that is not UTF-8": {
    code: "malformed-json",
    init: (example) => ({ method: "POST", headers: json, body: withByte(example, 0xff) }),
  },
  "an empty body": { code: "malformed-json", init: () => ({ method: "POST", headers: json, body: "" }) },
  "no content type": {
    code: "unsupported-media-type",
    init: (example) => ({ method: "POST", body: new TextEncoder().encode(JSON.stringify(example)) }),
  },
  "another content type": {
    code: "unsupported-media-type",
    init: (example) => sending(example, "POST", { "content-type": "text/plain" }),
  },
  "lines in place of a body": {
    code: "unsupported-media-type",
    init: (example) => sending(example, "POST", { "content-type": "application/x-ndjson" }),
  },
  "a body that is compressed": {
    code: "unsupported-media-type",
    init: (example) => ({
      method: "POST",
      headers: { ...json, "content-encoding": "gzip" },
      body: new Uint8Array(gzipSync(JSON.stringify(example))),
    }),
  },
  "a method that it does not answer": { code: "method-not-allowed", init: () => ({ method: "DELETE" }) },
  "a key misspelt": {
    code: "invalid-request",
    init: (example, path) => {
      const { [firstKey(path)]: value, ...rest } = example;
      return sending({ [`${firstKey(path)}x`]: value, ...rest });
    },
    error: (path) => ({ path: `/${firstKey(path)}x`, suggestion: `did you mean "${firstKey(path)}"?` }),
  },
  "a key given twice": {
    code: "invalid-request",
    init: (example, path) => sending(twice(example, firstKey(path))),
    error: (path) => ({ path: `/${firstKey(path)}`, expected: "a key that is given once" }),
  },
  "one byte too many": {
    code: "too-large",
    init: (example) => sending(JSON.stringify(example).padEnd(MAX_BODY_BYTES + 1)),
  },
};

afterEach(() => void vi.restoreAllMocks());

describe.each(operations.map(({ id, path }) => [id, path] as const))("%s", (_id, path) => {
  const ways = Object.entries(failures).flatMap(([name, failure]) =>
    ["POST", "QUERY"].map((by) => [name, by, failure] as const),
  );

  test.each(ways)("%s, by %s", async (_name, by, { code, init, error }) => {
    const { method, ...sent } = init(exampleOf(path), path);
    const reply = await ask(path, { ...sent, method: method === "POST" ? by : method! });
    expect(reply).toMatchObject({
      status: problemKinds[code].status,
      type: "application/problem+json",
      body: { code, type: `/v1/problems/${code}`, title: problemKinds[code].title },
    });
    expect(reply.headers.get("cache-control")).toBe("no-store");
    if (error) expect(reply.body.errors).toContainEqual(expect.objectContaining(error(path)));
    if (code === "method-not-allowed") expect(reply.headers.get("allow")).toBe("POST, QUERY");
    if (code === "unsupported-media-type") expect(reply.headers.get("accept-query")).toBe("application/json");
  });

  test("a path misspelt names the right one", async () => {
    const near = `${path.slice(0, -2)}${path.slice(-1)}`;
    const reply = await post(near, exampleOf(path));
    expect(reply).toMatchObject({ status: 404, body: { code: "not-found" } });
    expect(reply.body.detail).toContain("Did you mean /v1/");
  });

  test.each([
    // a candle is no unit of anything here, and no unit of power measures anything that is asked
    ["a unit that is none", { unit: "candle" }, "/unit"],
    ["a unit of another dimension", { unit: "hp" }, "/unit"],
    ["a text for a number", { value: "0.8" }, "/value"],
    ["a number far out of range", { value: -9e8 }, ""],
  ])("%s", async (_name, wrong, where) => {
    // not every example has a quantity, but every operation has one that has
    const [body] = Object.values(examplesOf(path)).flatMap(({ value }) =>
      quantityIn(value) ? [structuredClone(value)] : [],
    );
    const place = quantityIn(body)!;
    Object.assign(place.quantity, wrong);
    const reply = await post(path, body);
    expect(reply).toMatchObject({ status: 400, body: { code: "invalid-request" } });
    expect(reply.body.errors[0].path).toBe(`${place.at}${where}`);
  });

  test("says no more of what came than where it was and a clipped value", async () => {
    const marked = Object.fromEntries(
      Array.from({ length: 50 }, (_, i) => [`unknown${i}`, `secret ${"s".repeat(500)}`]),
    );
    const { body } = await post(path, { ...exampleOf(path), ...marked });
    expect(body.errors).toHaveLength(MAX_ERRORS);
    expect(JSON.stringify(body)).not.toContain("s".repeat(60));
    for (const { received } of body.errors) expect(received.length).toBeLessThanOrEqual(60);
  });

  test("a failure of ours is opaque, and can be found in the log", async () => {
    const log = vi.spyOn(console, "error").mockImplementation(() => {});
    const { status, body } = await post(path, exampleOf(path), createApp(broken));
    expect({ status, code: body.code, errors: body.errors }).toEqual({
      status: 500,
      code: "internal",
      errors: [],
    });
    expect(JSON.stringify(body)).not.toContain("secret");
    expect(String(log.mock.calls[0]?.[0])).toContain(body.instance);
  });
});
