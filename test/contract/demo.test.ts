/** The demo as it is started. */

import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { document, verdict } from "./api.js";

const entry = fileURLToPath(new URL("../../apps/api/dist/demo.js", import.meta.url));
const run = (...args: string[]): string =>
  execFileSync(process.execPath, [entry, ...args], { encoding: "utf8" });

test("--json prints the answer alone, and it fits the document", () => {
  const answer = JSON.parse(run("--json"));
  const { schema } = document.paths["/v1/setups"].post.responses["200"].content["application/json"];
  expect(verdict(schema, answer)).toMatchObject({ valid: true });
});

const printed = run();

test("without it, it prints for a person", () => {
  expect(printed).toMatch(/^Larkspur Bend: an invented stop/);
});

test("the README shows what it prints", () => {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const shown = [...readme.matchAll(/```text\n(.*?)\n```/gs)].map(([, text = ""]) => text).slice(0, 2);
  expect(shown).toHaveLength(2);
  for (const text of shown) expect(printed).toContain(text);
});
