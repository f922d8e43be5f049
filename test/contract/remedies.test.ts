/** Remedies of a check that change no rig: to wait for cooler water, to stay out of quick and deep water. `post` holds each answer against the document. */

import { expect, test } from "vitest";
import { type Body, exampleOf, post } from "./api.js";

const path = "/v1/checks";

const actsFor = async (water: object, more: object = {}): Promise<Record<string, Body>> => {
  const example = exampleOf(path);
  const { status, body } = await post(path, { ...example, ...more, water: { ...example.water, ...water } });
  expect(status).toBe(200);
  const fished = body.findings.filter(({ remedy }: Body) => remedy.kind === "fish");
  return Object.fromEntries(fished.map(({ code, remedy }: Body) => [code, remedy]));
};

test("water that is too warm: wait until it is cool", async () => {
  const acts = await actsFor({ temperature: { value: 22, unit: "degC" } });
  expect(acts["water-too-warm"]).toMatchObject({ act: "wait", to: { kind: "temperature" } });
});

test("water that is beyond the published limits of wading: stand elsewhere", async () => {
  const quick = { depth: { value: 1.2, unit: "m" }, surfaceSpeed: { value: 2.5, unit: "m/s" } };
  const acts = await actsFor(quick, {
    wader: { height: { value: 1.7, unit: "m" }, mass: { value: 70, unit: "kg" } },
  });
  expect(acts["wading-beyond-limit"]).toMatchObject({ act: "stand" });
  expect(acts["wading-beyond-limit"]).not.toHaveProperty("to");
});
