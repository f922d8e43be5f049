/** Bad input of every kind is answered with a problem that names the path and what was expected. */

import { MAX_ERRORS, operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { type Body, exampleOf, post } from "./api.js";
import { inBox } from "./hostile/box.js";
import { inChannel } from "./hostile/channel.js";
import { inCheck } from "./hostile/check.js";
import { inDrift, withFish } from "./hostile/drift.js";
import { inRig } from "./hostile/rig.js";
import type { Hostile } from "./hostile/row.js";
import { inWater } from "./hostile/water.js";

async function expectProblem(path: string, { change, status, ...says }: Hostile): Promise<void> {
  const body = exampleOf(path);
  change(body);
  const reply = await post(path, body);
  expect(reply).toMatchObject({ status, type: "application/problem+json" });
  const errors: Pick<Hostile, "path" | "expected" | "received" | "suggestion">[] = reply.body.errors;
  expect(reply.body.detail).not.toMatch(/undefined|NaN|\[object|\.\d{10}/);
  const named = errors.find((error) => error.path === says.path);
  expect(errors.map((error) => error.path)).toContain(says.path);
  expect(named?.expected).toContain(says.expected);
  if (says.received) expect(named?.received).toBe(says.received);
  if (says.suggestion) expect(named?.suggestion).toBe(says.suggestion);
}

describe.each(operations.map(({ id, path }) => [id, path] as const))("%s", (id, path) => {
  const rows = [
    ...("water" in exampleOf(path) ? inWater : []),
    ...(path.startsWith("/v1/channels/") ? inChannel(id) : []),
    ...("rig" in exampleOf(path) ? inRig : []),
    ...(id === "rankSetups" ? [...inBox, withFish] : []),
    ...(id === "checkRig" ? [...inCheck, withFish] : []),
    ...(id === "driftRig" ? [...inDrift, withFish] : []),
  ];
  test.each(rows.map((row) => [row.name, row] as const))("%s", (_name, row) => expectProblem(path, row));

  test.each([
    ["an empty body", "", "malformed-json"],
    ["half a body", '{"water":', "malformed-json"],
    ["NaN", '{"water":{"depth":{"value":NaN,"unit":"m"}}}', "malformed-json"],
    ["a trailing comma", '{"water":{},}', "malformed-json"],
    ["an array", "[]", "invalid-request"],
    ["a text", '"water"', "invalid-request"],
    ["null", "null", "invalid-request"],
    ["a number beyond double precision", '{"water":{"depth":{"value":1e309,"unit":"m"}}}', "invalid-request"],
    ["brackets 100,000 deep", `${"[".repeat(1e5)}${"]".repeat(1e5)}`, "invalid-request"],
    [
      "objects 50,000 deep in a field",
      `{"water":${'{"a":'.repeat(5e4)}1${"}".repeat(5e4)}}`,
      "invalid-request",
    ],
  ])("%s as the body", async (_name, text, code) => {
    const reply = await post(path, text);
    expect(reply).toMatchObject({ status: 400, type: "application/problem+json", body: { code } });
  });

  test("keys of the prototype are unknown keys and change nothing", async () => {
    const inner = '{"polluted":true}';
    for (const key of ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty"]) {
      const text = JSON.stringify(exampleOf(path)).replace(/\{(?=")/g, `{"${key}":${inner},`);
      const { body } = await post(path, text);
      const paths: string[] = body.errors.map((error: Body) => error.path);
      expect(paths.filter((at) => at.endsWith(`/${key}`)).length).toBeGreaterThan(1);
    }
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  test("a thousand wrong keys give twenty errors and no echo of their length", async () => {
    const wrong = Object.fromEntries(
      Array.from({ length: 1000 }, (_, i) => [`${"x".repeat(200)}${i}`, "y".repeat(200)]),
    );
    const reply = await post(path, { ...exampleOf(path), ...wrong });
    expect(reply.body.errors).toHaveLength(MAX_ERRORS);
    expect(JSON.stringify(reply.body).length).toBeLessThan(10_000);
  });
});

describe("a dropper longer than the depth is an answer that says where it lies", () => {
  test.each(["/v1/drifts/settled", "/v1/drifts/unsteady", "/v1/drifts/held"])("%s", async (path) => {
    const body = exampleOf(path);
    body.rig.sections[0].line.length = { value: 5, unit: "ft" };
    body.water.surfaceSpeed = { value: 0.1, unit: "ft/s" };
    const reply = await post(path, body);
    const settled = reply.body.settled ?? reply.body.drift?.settled ?? reply.body.free;
    expect(settled).toMatchObject({ regime: "on-bed", bed: { lyingLine: { unit: "ft" } } });
  });
});
