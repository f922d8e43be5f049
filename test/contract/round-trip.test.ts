/** What a ranking says to tie on can be sent back as it is. */

import { isDeepStrictEqual } from "node:util";
import { describe, expect, test } from "vitest";
import { type Body, exampleOf, post } from "./api.js";

const { water } = exampleOf("/v1/setups");
const weighed = {
  dry: { size: 10, style: "foam", measured: { mass: { value: 0.11, unit: "g" }, treatment: 0.7 } },
  nymph: {
    name: "weighed nymph",
    size: 14,
    bead: { diameter: { value: 0.11, unit: "in" }, material: "brass", cut: "slotted" },
    underbody: { diameter: { value: 0.3, unit: "mm" }, turns: 8, material: "tin" },
    knot: "loop",
    measured: {
      mass: { value: 3.1, unit: "gr" },
      volume: { value: 25, unit: "mm3" },
      body: { length: { value: 8, unit: "mm" }, diameter: { value: 2, unit: "mm" } },
      dressing: 1.4,
    },
  },
  tippet: { material: "nylon", x: 5, breakingForce: { value: 4.5, unit: "lbf" } },
  dropper: { value: 20, unit: "in" },
};

/** 12 digits travel, and half as many are left after the solvers. */
const close = (a: Body, b: Body): boolean =>
  a.unit === b.unit && Math.abs(a.value - b.value) <= 1e-6 * Math.abs(a.value);

describe.each(["si", "us"])("in %s", (units) => {
  test("the best setup, sent back as the rig in hand, is judged the same", async () => {
    const request = { ...exampleOf("/v1/setups"), inHand: undefined, units };
    const best = (await post("/v1/setups", request)).body.setups[0];
    const { inHand } = (await post("/v1/setups", { ...request, inHand: best.tied })).body;
    expect(inHand.tied).toEqual(best.tied);
    expect(inHand.place).toBeLessThanOrEqual(2);
    expect(close(inHand.effectiveSeconds, best.effectiveSeconds)).toBe(true);
  });

  test("every setup, sent to settleRig, settles as the ranking says", async () => {
    const { setups } = (await post("/v1/setups", { ...exampleOf("/v1/setups"), units })).body;
    expect(setups).toHaveLength(5);
    for (const { tied, settled } of setups) {
      const reply = await post("/v1/drifts/settled", { water, rig: rigOf(tied), units });
      expect(reply.body.settled.regime).toBe(settled.regime);
      expect(close(reply.body.settled.driftSpeed, settled.driftSpeed)).toBe(true);
    }
  });

  test("the change that would gain most, made, gains what it says", async () => {
    const request = { ...exampleOf("/v1/setups"), units, top: 1 };
    const { next, effectiveSeconds, tied } = (await post("/v1/setups", request)).body.inHand;
    const after = (await post("/v1/setups", { ...request, inHand: next.tied })).body.inHand;
    const gained = { ...next.gain, value: after.effectiveSeconds.value - effectiveSeconds.value };
    expect(close(gained, next.gain)).toBe(true);
    const parts = Object.keys(tied).filter((part) => !isDeepStrictEqual(tied[part], next.tied[part]));
    expect(parts).toEqual([next.part]);
  });

  test("measured values, bead, wire, knot and strength come back whole, and twice the same", async () => {
    const request = { water, units, top: 1 };
    const once = (await post("/v1/setups", { ...request, inHand: weighed })).body.inHand.tied;
    const twice = (await post("/v1/setups", { ...request, inHand: once })).body.inHand.tied;
    expect(twice).toEqual(once);
    const keys = (value: Body): Body =>
      typeof value === "object" ? Object.entries(value).flatMap(([k, v]) => [k, ...keys(v)]) : [];
    const sent = new Set([...keys(weighed), "name"]);
    sent.delete("x");
    expect(new Set(keys(once))).toEqual(sent);
    const [bead, strength] =
      units === "us"
        ? ["0.11 in", "4.5 lbf"]
        : ["2.794 mm", `${Number((4.5 * 4.4482216152605).toPrecision(12))} N`];
    const said = ({ value, unit }: Body): string => `${value} ${unit}`;
    expect([said(once.nymph.bead.diameter), said(once.tippet.breakingForce)]).toEqual([bead, strength]);
    expect(once.dry.name).toBe("foam dry 10");
    expect(once.tippet.name).toBe("5X nylon");
  });
});

test("no text of an answer in feet names a metric length or a strength in newtons", async () => {
  const poor = { ...weighed, dropper: { value: 5, unit: "in" }, nymph: { size: 10 } };
  const { setups, inHand } = (await post("/v1/setups", { water, inHand: poor, units: "us", top: 20 })).body;
  const texts = [...setups, inHand].flatMap(({ why, cautions, next }: Body) => [
    why.text,
    ...cautions.map(({ text }: Body) => text),
    ...(next ? [next.cost, ...(next.part === "dropper" ? [next.from, next.to] : [])] : []),
  ]);
  expect(texts.length).toBeGreaterThan(40);
  expect(texts.filter((text) => /\d (m|cm|mm|N|g|m\/s)\b/.test(text))).toEqual([]);
  expect(texts.filter((text) => /^\d+ in$/.test(text)).length).toBeGreaterThan(0);
});

function rigOf({ dry, nymph, tippet, dropper }: Body): Body {
  const line = { kind: "tippet", ...tippet, length: dropper };
  return { float: { kind: "dry", ...dry }, sections: [{ line, sinker: { kind: "nymph", ...nymph } }] };
}
