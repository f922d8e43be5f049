import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { violations } from "./rules.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const src = `${root}packages/core/src`;
const files = readdirSync(src, { recursive: true, encoding: "utf8" }).map((file) =>
  file.replaceAll("\\", "/"),
);
const tracked = execFileSync("git", ["ls-files"], { cwd: root, encoding: "utf8" }).trim().split("\n");

describe("packages/core/src", () => {
  test.each(files.filter((file) => file.endsWith(".ts")))("%s keeps the rules", (file) => {
    expect(violations(file, readFileSync(`${src}/${file}`, "utf8"))).toEqual([]);
  });

  test("holds TypeScript only", () => {
    expect(files.filter((file) => file.includes(".") && !file.endsWith(".ts"))).toEqual([]);
  });

  test("has no dependencies", () => {
    const manifest = JSON.parse(readFileSync(`${root}packages/core/package.json`, "utf8"));
    const kinds = ["dependencies", "peerDependencies", "optionalDependencies", "bundledDependencies"];
    expect(kinds.filter((kind) => kind in manifest)).toEqual([]);
  });
});

describe("compiler settings", () => {
  const shared = compilerOptions(".tsconfig.json");
  const strict = [
    "strict",
    "exactOptionalPropertyTypes",
    "noUncheckedIndexedAccess",
    "isolatedDeclarations",
    "verbatimModuleSyntax",
  ];

  test("are strict", () => {
    expect(strict.filter((key) => shared[key] !== true)).toEqual([]);
  });

  test.each(tracked.filter((file) => /tsconfig\.json$/.test(file) && file !== ".tsconfig.json"))(
    "%s does not loosen them",
    (file) => {
      const own = compilerOptions(file);
      expect(strict.filter((key) => key in own && own[key] !== true)).toEqual([]);
    },
  );
});

function compilerOptions(file: string): Readonly<Record<string, unknown>> {
  return JSON.parse(readFileSync(`${root}${file}`, "utf8")).compilerOptions ?? {};
}

describe("the rules catch", () => {
  test.each([
    ["utils/a.ts", "", "no room is called utils"],
    ["water/a.ts", 'import { z } from "zod"', "imports the package zod"],
    ["water/a.ts", 'import fs from "node:fs"', "imports the package node:fs"],
    ["water/a.ts", 'import { a } from "../../package.json"', "imports from outside src"],
    ["water/a.ts", 'export { a } from "../rig/index.js"', "water imports from rig"],
    ["water/a.ts", 'type A = import("../rig/index.js").A', "water imports from rig"],
    ["water/a.ts", 'const a = await import("../rig/index.js")', "water imports from rig"],
    ["water/a.ts", 'import { a } from "../index.js"', "imports the root"],
    ["water/a.ts", "const a = Date.now()", "is not pure: Date"],
    ["water/a.ts", "const a = { b: Date }", "is not pure: Date"],
    ["water/a.ts", "const a = Math.random()", "is not pure: Math.random"],
    ["water/a.ts", "const { random } = Math", "is not pure"],
    ["water/a.ts", "const a = Math.exp(1)", "is not the same on every engine: Math.exp"],
    ["water/a.ts", "const a = 2 ** 3", "is not the same on every engine: 2 ** 3"],
    ["water/a.ts", "const a = x as Metres", "casts: x as Metres"],
    ["water/a.ts", "const a = <Metres>x", "casts: <Metres>x"],
    ["water/a.ts", "const a: any = 1", "says any"],
    ["water/a.ts", "enum A { b }", "enum A"],
    ["water/a.ts", "export default 1", "default export"],
    ["water/a.ts", "export default function f() {}", "default export"],
    ["water/a.ts", "export { a as default }", "default export"],
    ["water/a.ts", "// @ts-ignore\nlet a", "switches the type checker off"],
  ])("%s: %s", (path, text, message) => {
    expect(violations(path, text)).toEqual([expect.stringContaining(message)]);
  });

  test.each([
    ["rig/a.ts", 'import { a } from "../water/index.js"; import { b } from "./b.js"'],
    ["index.ts", 'export * from "./outing/index.js"'],
    ["units/a.ts", "const a = x as Metres"],
    ["water/a.ts", "/* Date, any, x as Metres */ const a = [Math.PI] as const; const b = a[0]!"],
    ["water/a.ts", "switch (a) { default: b.process }"],
    ["water/a.test.ts", 'import { test } from "vitest"; console.log(Date.now(), x as Metres)'],
  ])("nothing in %s: %s", (path, text) => {
    expect(violations(path, text)).toEqual([]);
  });
});

describe("the repository", () => {
  test("has nothing else at its top level", () => {
    const allowed =
      /^(\..+|packages|apps|test|docs|turbo\.json|package\.json|pnpm-workspace\.yaml|pnpm-lock\.yaml|README\.md|DEVELOPERS\.md|LICENSE)$/;
    const top = new Set(tracked.map((file) => file.split("/")[0] ?? ""));
    expect([...top].filter((name) => !allowed.test(name))).toEqual([]);
  });

  // A path of one machine, a registry's host, a download address.
  const places = /\/work\/|\/root\/|pool\/main|https?:\/\/[\w.-]*registry|tarball:\s/;

  test("names no machine and no registry", () => {
    const present = tracked.filter((file) => existsSync(root + file));
    const naming = present.filter((file) => places.test(readFileSync(root + file, "latin1")));
    expect(naming).toEqual([]);
  });

  test.each(["/work" + "/main", "https:" + "//registry.example.org/a", "tarball" + ": a"])(
    "would see %s",
    (text) => {
      expect(places.test(text)).toBe(true);
    },
  );
});
