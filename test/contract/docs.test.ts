/** docs/api.md says what the contract does: its requests are named examples, its tables are those of the code. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { dimensions, operations, problemKinds } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { type Body, exampleOf, examplesOf, post } from "./api.js";

const text = readFileSync(fileURLToPath(new URL("../../docs/api.md", import.meta.url)), "utf8");
const calls = [...text.matchAll(/^curl .*?localhost:8787(\/v1\/\S+) .*?-d '(.*?)'$/gms)].map(
  ([, path = "", body = ""]) => ({ path, body: JSON.parse(body) as Body }),
);

describe("docs/api.md", () => {
  test.each(operations.map(({ path }) => path))("calls %s with a named example", (path) => {
    const sent = calls.filter((call) => call.path === path).map(({ body }) => body);
    const named = Object.values(examplesOf(path)).map(({ value }) => value);
    expect(sent).toHaveLength(1);
    expect(named).toContainEqual(sent[0]);
  });

  test("shows the problem that a misspelt key gets", async () => {
    const shown = JSON.parse(/```json\n(.*?)```/s.exec(text)?.[1] ?? "null");
    const body = exampleOf("/v1/columns");
    body.water.dpeth = body.water.depth;
    delete body.water.depth;
    expect((await post("/v1/columns", body)).body).toEqual(shown);
  });

  test("explains every problem code with its status", () => {
    for (const [code, { status, meaning }] of Object.entries(problemKinds)) {
      expect(text).toContain(`\n### ${code}\n\n${status}. ${meaning}\n`);
    }
  });

  test("lists every unit", () => {
    for (const [dimension, units] of Object.entries(dimensions)) {
      const row = Object.keys(units).map((unit) => `\`${unit}\``);
      expect(text.replace(/ +/g, " ")).toContain(`\n| ${dimension} | ${row.join(", ")} |\n`);
    }
  });
});
