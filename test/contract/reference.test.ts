/** What can be looked up: units, tackle, limits and problems, each from the table that the code computes by. */

import { createApp } from "@plumbdrift/api";
import { dimensions, operations, problemKinds, references, toSi } from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";
import { describe, expect, test } from "vitest";
import { ask, type Body, document } from "./api.js";
import { broken } from "./broken.js";

const paths = references.map(({ path, keyed }) => path.replace(/\{\w+\}/, keyed?.keys[0] ?? ""));

describe.each(paths)("%s", (path) => {
  test("is fit for a cache, and spares who has it", async () => {
    const { status, headers } = await ask(path);
    expect(status).toBe(200);
    expect(headers.get("cache-control")).toBe("public, max-age=3600");
    const named = { "if-none-match": headers.get("etag") ?? "" };
    expect((await ask(path, { headers: named }, createApp(broken))).status).toBe(304);
  });

  test("answers GET and HEAD only", async () => {
    const reply = await ask(path, { method: "POST" });
    expect(reply).toMatchObject({ status: 405, body: { code: "method-not-allowed" } });
    expect(reply.headers.get("allow")).toBe("GET, HEAD");
  });

  test("takes no query parameters", async () => {
    const reply = await ask(`${path}?limit=5`);
    expect(reply).toMatchObject({ status: 400, body: { code: "invalid-request" } });
    expect(reply.body.errors[0]).toEqual({
      path: "?limit",
      expected: "no query parameters",
      received: '"5"',
    });
  });

  test("has an example in the document", () => {
    const template = references[paths.indexOf(path)]?.path ?? "";
    expect(document.paths[template].get.responses["200"].content["application/json"].example).toBeDefined();
  });
});

describe("units", () => {
  test("say exactly what a value is in SI: the expression gives what the code computes", async () => {
    const { body } = await ask("/v1/units");
    const said = body.dimensions.flatMap(({ dimension, units }: Body) =>
      units.map((unit: Body) => ({ dimension, ...unit })),
    );
    expect(said).toHaveLength(Object.values(dimensions).flatMap((units) => Object.keys(units)).length);
    for (const { dimension, unit, inSi, factor, zero } of said) {
      const text = inSi.replaceAll("×", "*").replaceAll("−", "-").replaceAll("π", "Math.PI");
      const exactly = new Function("value", `return ${text}`) as (value: number) => number;
      for (const value of [0, 1, 7.3, -40, 1234.5]) {
        const si = toSi(dimension, value, unit);
        expect(Math.abs(exactly(value) - si)).toBeLessThanOrEqual(4e-16 * Math.max(Math.abs(si), zero && 40));
        expect(Math.abs(factor * value + zero - si)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(si)));
      }
    }
  });

  // NIST SP 811 (2008), appendix B.8, and the definition of the degree Fahrenheit
  test.each([
    ["length", "ft", 0.3048],
    ["length", "in", 0.0254],
    ["speed", "mph", 0.44704],
    ["mass", "gr", 6.479891e-5],
    ["force", "lbf", 4.4482216152605],
    ["volume", "ft3", 0.028316846592],
    ["temperature", "degF", 5 / 9],
  ])("%s in %s has the factor %f", async (dimension, unit, factor) => {
    const { body } = await ask("/v1/units");
    const row = body.dimensions.find((one: Body) => one.dimension === dimension);
    const { factor: said } = row.units.find((one: Body) => one.unit === unit);
    expect(Math.abs(said / factor - 1)).toBeLessThan(1e-14);
  });
});

describe("tackle", () => {
  test("hooks are those that bodies are built from", async () => {
    const { rows, spread } = (await ask("/v1/tackle/hooks")).body;
    expect(rows.map(({ size }: Body) => size)).toEqual(core.hookSizes);
    for (const { size, shank, mass } of rows) {
      expect(shank).toEqual({ value: expect.closeTo(1000 * core.hook(size).shank, 9), unit: "mm" });
      expect(mass.fine.value).toBeCloseTo(1000 * core.hookMass(core.hook(size), "fine"), 9);
    }
    expect(spread).toContainEqual({ of: "mass", share: core.hookMassSpread });
  });

  test("beads are cut as a bead is unless its cut is given", async () => {
    const { rows } = (await ask("/v1/tackle/beads")).body;
    expect(rows).toHaveLength(3 * core.beadMillimetres.length);
    for (const { diameter, material, mass } of rows) {
      const bead = { diameter: core.millimetres(diameter.value), material };
      expect(mass.value).toBeCloseTo(1000 * core.beadMass(bead), 9);
    }
  });

  test("tippets bear what is computed with", async () => {
    const { rows, spread } = (await ask("/v1/tackle/tippets")).body;
    const fiveX = rows.find(({ x, material }: Body) => x === 5 && material === "nylon");
    // 0.011 in less 5 thousandths, the rule of the trade: common practice, no source
    expect(fiveX.diameter.value).toBeCloseTo(25.4 * 0.006, 9);
    expect(fiveX.breakingForce.unit).toBe("N");
    expect(spread.map(({ of }: Body) => of)).toEqual(["diameter", "density", "breakingForce"]);
    for (const { share } of spread) expect(share).toBeGreaterThan(0);
  });

  test("dries are the styles of the core", async () => {
    const { rows } = (await ask("/v1/tackle/dries")).body;
    expect(rows.map(({ style }: Body) => style)).toEqual(Object.keys(core.dryStyles));
    for (const { style, buoyantShare, shareSpread, dressing } of rows) {
      const known = core.dryStyles[style as core.DryStyle];
      expect({ buoyantShare, shareSpread, dressing: dressing.value }).toEqual({
        buoyantShare: known.buoyantShare,
        shareSpread: known.shareSpread,
        dressing: known.dressing,
      });
    }
  });

  test.each([
    ["/v1/tackle/hook", "There is no table of this key. Did you mean hooks?"],
    ["/v1/problems/overbudget", "There is no problem of this key. Did you mean over-budget?"],
    ["/v1/problems/nothing-like-it", "There is no problem of this key. /v1/problems lists every key."],
  ])("%s is none, and what helps is said", async (path, detail) => {
    expect(await ask(path)).toMatchObject({ status: 404, body: { code: "not-found", detail } });
  });
});

test("each problem is explained where its type points", async () => {
  for (const [code, { status, title, meaning }] of Object.entries(problemKinds)) {
    const { body } = await ask(`/v1/problems/${code}`);
    expect(body).toEqual({ code, type: `/v1/problems/${code}`, status, title, meaning });
  }
});

test("limits name every operation with what it costs", async () => {
  const { body } = await ask("/v1/limits");
  expect(body.operations.map(({ operation }: Body) => operation)).toEqual(operations.map(({ id }) => id));
  for (const { terms } of body.operations) expect(terms.length).toBeGreaterThan(0);
});
