/** The directions of model §9 in time, common practice without a source: what makes the nymph reach a given depth sooner. */

import { describe, expect, test, vi } from "vitest";
import { line as lineOf, sinker } from "../forces/index.js";
import { tippetDensity } from "../tackle/index.js";
import {
  heightAboveBed,
  kilograms,
  metres,
  metresPerSecond,
  millimetres,
  perSecond,
  seconds,
  times,
} from "../units/index.js";
import { type Fished, fished, nymphOf, rigOf } from "./directions.fixture.js";
import { settle } from "./settled.js";
import { type Cast, drift } from "./unsteady.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

/** Rigs that hang clear of the bed under a dry that carries them, each with a depth to reach: four fifths of what it settles at. */
const all = Array.from({ length: 160 }, (_, seed) => ({ seed, it: fished(seed) })).flatMap(({ seed, it }) => {
  const { regime, floatMargin, sinkers } = settle(rigOf(it), it.column);
  const target = 0.8 * (sinkers[0]?.depthBelowSurface ?? 0);
  return regime === "hanging" && floatMargin >= 1.5 ? [{ seed, it, target }] : [];
});

/** Seconds from landing until the nymph is first as deep as `target`. */
function timeTo(target: number, it: Fished, cast: Partial<Cast> = {}): number {
  const { firstInWindow } = drift(rigOf(it), it.column, {
    cast,
    runLength: metres(60),
    duration: seconds(20),
    window: { low: heightAboveBed(0), high: heightAboveBed(it.column.depth - target) },
    segments: 4,
    timeStep: seconds(0.02),
    instants: 0,
  });
  return firstInWindow ?? Number.POSITIVE_INFINITY;
}

const changes: Readonly<Record<string, (it: Fished) => readonly [Fished, Fished]>> = {
  "more mass in the same size": (it) => [
    it,
    { ...it, nymph: sinker({ ...it.nymph, mass: kilograms(1.3 * it.nymph.mass) }) },
  ],
  "a larger bead": (it) => [
    { ...it, nymph: nymphOf(14, millimetres(2.8), "tungsten") },
    { ...it, nymph: nymphOf(14, millimetres(3.8), "tungsten") },
  ],
  "a thinner tippet": (it) => [
    it,
    { ...it, line: lineOf({ ...it.line, diameter: times(it.line.diameter, 0.8) }) },
  ],
  "fluorocarbon for nylon of the same diameter": (it) => [
    { ...it, line: { ...it.line, density: tippetDensity.nylon } },
    { ...it, line: { ...it.line, density: tippetDensity.fluorocarbon } },
  ],
  "a loop for a tight knot": (it) => [it, { ...it, nymph: { ...it.nymph, knot: "loop" } }],
};

test("there are enough rigs, and each gets to its depth", () => {
  expect(all.length).toBeGreaterThan(80);
  for (const { seed, it, target } of all) expect(timeTo(target, it), `rig ${seed}`).toBeLessThan(20);
});

describe.each(Object.entries(changes))("%s", (_, change) => {
  test("is sooner at a given depth", () => {
    let gained = 0;
    for (const { seed, it, target } of all) {
      const [before, after] = change(it);
      const [slow, quick] = [timeTo(target, before), timeTo(target, after)];
      expect(quick, `rig ${seed}`).toBeLessThanOrEqual(slow);
      if (quick < slow) gained++;
    }
    // equal only where the step of the detector cannot tell them apart
    expect(gained / all.length).toBeGreaterThan(0.9);
  });
});

test("a nymph cast into a quicker lane is sooner down than one in a slower lane, wherever the surface is the quickest water", () => {
  const upright = all.filter(({ it }) => it.column.profile.law !== "dip");
  expect(upright.length).toBeGreaterThan(60);
  let gained = 0;
  for (const { seed, it, target } of upright) {
    const length = it.line.length;
    const into = (share: number): number =>
      timeTo(target, it, {
        sinkerDownstream: metres(-0.6 * length),
        sinkerAcross: metres(0.3 * length),
        entrySpeed: metresPerSecond(0.5),
        laneGradient: perSecond(share * it.column.surfaceSpeed),
      });
    const [slower, same, quicker] = [into(-0.3), into(0), into(0.3)];
    expect(quicker, `rig ${seed}`).toBeLessThanOrEqual(same);
    expect(same, `rig ${seed}`).toBeLessThanOrEqual(slower);
    if (quicker < slower) gained++;
  }
  expect(gained / upright.length).toBeGreaterThan(0.9);
});
