/** What the numbers rest on, over HTTP: every key that an answer names can be looked up. */

import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { operations } from "@plumbdrift/contract";
import { resistanceLaws, sources, wakeValidity } from "@plumbdrift/core";
import { describe, expect, test } from "vitest";
import { ask, type Body, examplesOf, post } from "./api.js";

const { relations } = (await ask("/v1/relations")).body;
const core = new URL("../../packages/core/src/", import.meta.url);

describe("relations", () => {
  test("are those of the core, each by its key too", async () => {
    expect(relations.map(({ key }: Body) => key)).toEqual(Object.keys(sources));
    for (const relation of relations) {
      expect((await ask(`/v1/relations/${relation.key}`)).body).toEqual(relation);
    }
  });

  test("say where they are used, and the files say so too", () => {
    const cited = relations.flatMap(({ key, usedIn }: Body) => usedIn.map((file: string) => ({ key, file })));
    expect(cited.length).toBeGreaterThan(relations.length);
    for (const { key, file } of cited) {
      const path = fileURLToPath(new URL(file, core));
      expect(existsSync(path) && readFileSync(path, "utf8")).toMatch(new RegExp(`["[]${key}["\\]]`));
    }
  });

  test("say their ranges: every limit of a law of resistance, and an open end as none", () => {
    const rangesOf = (key: string): Body[] => relations.find((one: Body) => one.key === key).ranges;
    for (const { relation, limits } of resistanceLaws) {
      for (const { quantity, min, max } of limits) {
        expect(rangesOf(relation)).toContainEqual({ quantity, min, max });
      }
    }
    // fitted 50 coefficients times widths behind a cylinder and farther: Schlichting, ch. XXIV, as the core quotes it
    expect(wakeValidity.max).toBe(Number.POSITIVE_INFINITY);
    expect(rangesOf("Schlichting1979")).toEqual([{ quantity: wakeValidity.quantity, min: 50 }]);
  });

  test.each(operations.map(({ id, path }) => [id, path] as const))(
    "%s names none but these",
    async (_id, path) => {
      const keys = new Set(relations.map(({ key }: Body) => key));
      for (const { value } of Object.values(examplesOf(path))) {
        const { meta, caveats } = (await post(path, value)).body;
        expect(meta.relations.length).toBeGreaterThan(0);
        for (const key of [...meta.relations, ...caveats.map((caveat: Body) => caveat.relation)]) {
          expect(keys).toContain(key);
        }
      }
    },
  );
});

describe("a key that is none", () => {
  test.each([
    ["Chow1958", "Did you mean Chow1959?"],
    ["chow1959", "Did you mean Chow1959?"],
    ["limerinos", "Did you mean Limerinos1970?"],
    ["nobody", "/v1/relations lists every key."],
    ["__proto__", "/v1/relations lists every key."],
    ["constructor", "/v1/relations lists every key."],
    ["%", "/v1/relations lists every key."],
    ["x".repeat(5000), "/v1/relations lists every key."],
  ])("%s gets a problem that helps", async (key, hint) => {
    const { status, type, body } = await ask(`/v1/relations/${key}`);
    expect({ status, type, code: body.code }).toEqual({
      status: 404,
      type: "application/problem+json",
      code: "not-found",
    });
    expect(body.detail).toBe(`There is no relation of this key. ${hint}`);
  });

  test.each(["/v1/relations", "/v1/relations/Chow1959"])("%s answers GET only", async (path) => {
    const reply = await ask(path, { method: "POST" });
    expect(reply).toMatchObject({ status: 405, body: { code: "method-not-allowed" } });
    expect(reply.headers.get("allow")).toBe("GET, HEAD");
  });
});
