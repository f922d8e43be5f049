/** How much a Worker has to load. */

import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const built = (name: string): string => readFileSync(resolve("../../apps/api/dist", name), "utf8");
const kilobytes = (name: string): number => gzipSync(built(name), { level: 9 }).length / 1000;

/** A host compiles it before its first answer, and an edge does so whenever it has let go of the Worker. 90 kB was aimed at and
 *  is missed: the engine alone takes about half, the contract and what reads it (zod) most of the rest, each with one use for
 *  every part. 134 kB today, 3 of them the equations of `?explain=steps`; an operation adds 3 to 8. */
const ceiling = 135;

test("a Worker's script is small", () => {
  expect(kilobytes("workerd.js")).toBeLessThanOrEqual(ceiling);
});

test("keys and limits cost only the Worker that has them, and no more than 25 kB", () => {
  expect(kilobytes("workerd-service.js")).toBeGreaterThan(kilobytes("workerd.js"));
  expect(kilobytes("workerd-service.js")).toBeLessThanOrEqual(ceiling + 25);
});

test("the scripts of a Worker import nothing of Node", () => {
  for (const name of ["workerd.js", "workerd-service.js"]) {
    expect(built(name)).not.toMatch(/(from\s*|import\s*\(?\s*|require\()["']node:/);
  }
});

test("the document stays apart from them", () => {
  expect(built("rendered.js")).toContain("openapi");
  expect(built("rendered.js")).not.toMatch(/^import\b/m);
  for (const name of ["workerd.js", "workerd-service.js", "lambda.js"]) {
    expect(built(name)).toContain('import("./rendered.js")');
    expect(built(name)).not.toContain("Recommends dry-dropper setups");
  }
  expect(built("rendered.js")).toContain("Recommends dry-dropper setups");
});
