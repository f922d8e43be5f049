/** The answer that the document shows for each operation is the one that its example gets. It is what the engine said
 *  when `npm run write` kept it: a regression, which validates nothing. */

import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { type Body, examplesOf, post } from "./api.js";

const file = fileURLToPath(new URL("../../packages/contract/src/answers.json", import.meta.url));

/** The document stays of moderate size: an example with a longer answer is not shown with it. */
const MOST_CHARACTERS = 12_000;

if (process.env.WRITE !== undefined) writeFileSync(file, `${JSON.stringify(await answered(), null, 2)}\n`);
const kept: Body = JSON.parse(readFileSync(file, "utf8"));

test.each(operations.map(({ id, path }) => [id, path] as const))(
  "%s answers what is kept",
  async (id, path) => {
    const { example, value } = kept[id] ?? {};
    const { status, body } = await post(path, examplesOf(path)[example]?.value);
    expect(status).toBe(200);
    expect(differences(value, body)).toEqual([]);
    expect(JSON.stringify(value).length).toBeLessThan(MOST_CHARACTERS);
  },
);

test("nothing is kept of an operation that is gone", () => {
  expect(Object.keys(kept)).toEqual(operations.map(({ id }) => id));
});

describe("the comparison", () => {
  const answer = { a: [{ value: 2, unit: "m" }], residual: { force: 1e-12 }, kind: "found" };
  test.each([
    [{ ...answer, a: [{ value: 2 + 2e-10, unit: "m" }] }, []],
    [{ ...answer, a: [{ value: 2 + 1e-8, unit: "m" }] }, ["/a/0/value"]],
    [{ ...answer, a: [{ value: 2, unit: "ft" }] }, ["/a/0/unit"]],
    [{ ...answer, a: [] }, ["/a/0"]],
    [{ ...answer, b: 1 }, ["/b"]],
    [{ ...answer, kind: undefined }, ["/kind"]],
    [{ ...answer, residual: { force: -3e-11 } }, []],
    [{ ...answer, residual: { force: 2e-9 } }, ["/residual/force"]],
  ])("sees %j", (other, where) => {
    expect(differences(answer, other)).toEqual(where);
  });
});

/** Of each operation the first example whose answer is short enough. */
async function answered(): Promise<Body> {
  const all: Body = {};
  for (const { id, path } of operations) {
    for (const [example, { value }] of Object.entries(examplesOf(path))) {
      const { body } = await post(path, value);
      if (JSON.stringify(body).length < MOST_CHARACTERS) all[id] ??= { example, value: body };
    }
  }
  return all;
}

/** Where two answers differ: numbers by more than 1e-9 of their size, or what rounding left of an equation by that itself. */
function differences(a: Body, b: Body, at = ""): string[] {
  if (typeof a === "number" && typeof b === "number") {
    const size = at.includes("/residual/") ? 1 : Math.max(Math.abs(a), Math.abs(b));
    return Math.abs(a - b) <= 1e-9 * size ? [] : [at];
  }
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b ? [] : [at];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) => differences(a[key], b[key], `${at}/${key}`));
}
