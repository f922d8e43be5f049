/** How much a Worker has to load. */

import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { deployed, wrangler } from "./deployment.js";

const built = (name: string): string => readFileSync(resolve("../../apps/api/dist", name), "utf8");
const kilobytes = (names: Iterable<string>): number =>
  [...names].reduce((sum, name) => sum + gzipSync(built(name), { level: 9 }).length / 1000, 0);

/** What these files import before they run, themselves among it. */
function whole(...names: readonly string[]): ReadonlySet<string> {
  const all = new Set(names);
  for (const name of all) {
    for (const [, next = ""] of built(name).matchAll(/(?:from|import)\s*["']\.\/([\w-]+\.js)["']/g))
      all.add(next);
  }
  return all;
}

/** Gzipped, in thousands of bytes. A host compiles what a Worker imports before its first answer, and an edge does so whenever it has let
 *  go of the Worker; operations are imported with the first call of their group. 90 kB was set for it all when there were five operations:
 *  it holds for the start, for choosing and drifting rigs, and for channels. Checks and adjustments rank setups and march drifts for
 *  their remedies, so they need nearly the whole engine. */
describe("a Worker", () => {
  test.each([
    ["at its start", [], 60],
    ["with the first rig", ["part-rigs.js"], 90],
    ["with the first channel", ["part-channels.js"], 90],
    ["with the first check", ["part-outings.js"], 140],
    ["with all of them", ["part-rigs.js", "part-channels.js", "part-outings.js"], 160],
  ])("%s imports little", (_when, parts, most) => {
    expect(kilobytes(whole("workerd.js", ...parts))).toBeLessThanOrEqual(most);
  });

  test("imports nothing of Node", () => {
    for (const name of ["workerd.js", ...Object.keys(deployed(wrangler).apart)]) {
      expect(built(name)).not.toMatch(/(from\s*|import\s*\(?\s*|require\()["']node:/);
    }
  });
});

test("the document stays apart from what computes", () => {
  expect(built("rendered.js")).toContain("Recommends dry-dropper setups");
  expect(built("rendered.js")).not.toMatch(/^import\b/m);
  expect(built("lambda.js")).toContain('import("./rendered.js")');
  expect(built("lambda.js")).not.toContain("Recommends dry-dropper setups");
  const parts = whole("workerd.js", "part-rigs.js", "part-channels.js", "part-outings.js");
  for (const name of parts) expect(built(name)).not.toContain("Recommends dry-dropper setups");
});
