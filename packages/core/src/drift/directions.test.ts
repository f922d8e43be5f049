/** The directions of model §9, common practice without a source, over a range of rigs and waters: what docs/practice.md says of them. */

import { describe, expect, test, vi } from "vitest";
import { line as lineOf, type Sinker, sinker } from "../forces/index.js";
import { buildDry, type TippetMaterial, tippetDensity, tippetDiameter } from "../tackle/index.js";
import { kilograms, millimetres, newtons, times } from "../units/index.js";
import { type Fished, fished, nymphOf, rigOf } from "./directions.fixture.js";
import { settle } from "./settled.js";
import type { Settled } from "./state.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const settled = (it: Fished, held = 0): Settled => settle(rigOf(it), it.column, { held: newtons(held) });
const depth = (s: Settled): number => s.sinkers[0]?.depthBelowSurface ?? Number.NaN;
const lean = (s: Settled): number => Math.abs(s.lean);
const excess = (s: Settled): number => s.sinkers[0]?.excess ?? Number.NaN;
const clear = ({ bed }: Settled): boolean => bed === null;
const degrees = (angle: number): number => (angle * Math.PI) / 180;

const all = Array.from({ length: 600 }, (_, seed) => {
  const it = fished(seed);
  return { seed, it, free: settled(it) };
}).filter(({ free }) => free.regime === "hanging");
/** In a dip profile the quickest water lies under the surface and pushes the line ahead of the dry: there less drag need not mean less lean. */
const quickestAtSurface = all.filter(({ it }) => it.column.profile.law !== "dip");

const withTippet = (it: Fished, x: number, material: TippetMaterial): Settled =>
  settled({
    ...it,
    line: lineOf({ length: it.line.length, diameter: tippetDiameter(x), density: tippetDensity[material] }),
  });
const withDensity = (it: Fished, material: TippetMaterial): Settled =>
  settled({ ...it, line: { ...it.line, density: tippetDensity[material] } });
const withNymph = (it: Fished, nymph: Sinker): Settled => settled({ ...it, nymph });

/** Pairs of settled rigs, the second with the change that practice says is deeper and more upright; those that touch the bed are left out. */
const changes: Readonly<Record<string, (it: Fished) => readonly [Settled, Settled]>> = {
  "more mass in the same size": (it) => [
    settled(it),
    withNymph(it, sinker({ ...it.nymph, mass: kilograms(1.3 * it.nymph.mass) })),
  ],
  "a larger bead": (it) => [
    withNymph(it, nymphOf(14, millimetres(2.3), "tungsten")),
    withNymph(it, nymphOf(14, millimetres(2.8), "tungsten")),
  ],
  "tungsten for brass": (it) => [
    withNymph(it, nymphOf(14, millimetres(2.8), "brass")),
    withNymph(it, nymphOf(14, millimetres(2.8), "tungsten")),
  ],
  "a thinner tippet": (it) => [
    settled(it),
    settled({ ...it, line: lineOf({ ...it.line, diameter: times(it.line.diameter, 0.8) }) }),
  ],
  "fluorocarbon for nylon of the same diameter": (it) => [
    withDensity(it, "nylon"),
    withDensity(it, "fluorocarbon"),
  ],
  "5X fluorocarbon for 4X nylon": (it) => [withTippet(it, 4, "nylon"), withTippet(it, 5, "fluorocarbon")],
  "5X fluorocarbon for 3X nylon": (it) => [withTippet(it, 3, "nylon"), withTippet(it, 5, "fluorocarbon")],
};

test("there are rigs of every kind to try", () => {
  expect(all.length).toBeGreaterThan(400);
  expect(quickestAtSurface.length).toBeGreaterThan(300);
  const angles = all.map(({ free }) => lean(free));
  expect(Math.min(...angles)).toBeLessThan(degrees(1));
  expect(Math.max(...angles)).toBeGreaterThan(degrees(60));
});

describe.each(Object.entries(changes))("%s", (_, change) => {
  test("is deeper", () => {
    let tried = 0;
    let deeper = 0;
    for (const { seed, it } of all) {
      const [before, after] = change(it);
      if (!clear(before) || !clear(after)) continue;
      tried++;
      expect(depth(after), `rig ${seed}`).toBeGreaterThan(depth(before) - 1e-8);
      if (depth(after) > depth(before) + 1e-7) deeper++;
    }
    expect(deeper / tried).toBeGreaterThan(0.9);
    expect(tried).toBeGreaterThan(300);
  });

  test("leans less, wherever the surface is the quickest water", () => {
    let tried = 0;
    for (const { seed, it } of quickestAtSurface) {
      const [before, after] = change(it);
      if (!clear(before) || !clear(after)) continue;
      tried++;
      expect(lean(after), `rig ${seed}`).toBeLessThan(lean(before) + 1e-8);
    }
    expect(tried).toBeGreaterThan(250);
  });
});

describe("a larger dry over the same nymph", () => {
  const sizes = [14, 12, 10, 8, 6];
  const under = (it: Fished): readonly Settled[] =>
    sizes
      .map((size) => settled({ ...it, float: buildDry({ name: "dry", size, style: "foam" }).body }))
      .filter(({ regime, floatMargin }) => regime === "hanging" && floatMargin >= 1.5);

  test("tows it on more of a slant, wherever the surface is the quickest water", () => {
    let tried = 0;
    for (const { seed, it } of quickestAtSurface) {
      const rigs = under(it);
      rigs.slice(1).forEach((after, i) => {
        tried++;
        const before = rigs[i] ?? after;
        expect(lean(after), `rig ${seed}`).toBeGreaterThan(lean(before) - 1e-8);
        expect(after.driftSpeed, `rig ${seed}`).toBeGreaterThan(before.driftSpeed - 1e-9);
      });
    }
    expect(tried).toBeGreaterThan(500);
  });
});

describe("a dropper within 20° of plumb", () => {
  test("fishes at more than nine tenths of its length", () => {
    const plumb = all.filter(({ free }) => lean(free) < degrees(20));
    expect(plumb.length).toBeGreaterThan(200);
    for (const { seed, it, free } of plumb)
      expect(depth(free) / it.line.length, `rig ${seed}`).toBeGreaterThan(0.9);
  });

  test("at twice the length it takes to get there, a rig leans 45° or more", () => {
    const towed = all.filter(({ it, free }) => it.line.length > 2 * depth(free));
    expect(towed.length).toBeGreaterThan(0);
    for (const { seed, free } of towed) expect(lean(free), `rig ${seed}`).toBeGreaterThan(degrees(45));
  });
});

describe("a steady upstream hold", () => {
  const forces = [0, 2e-4, 1e-3, 3e-3];

  test("slows the drift, more with every newton", () => {
    let tried = 0;
    for (const { seed, it } of all) {
      const speeds = forces.map((force) => settled(it, force)).filter(clear);
      speeds.slice(1).forEach((after, i) => {
        tried++;
        expect(after.driftSpeed, `rig ${seed}`).toBeLessThan(speeds[i]?.driftSpeed ?? Number.NaN);
      });
    }
    expect(tried).toBeGreaterThan(1000);
  });

  test("lessens the excess of a rig that hangs within 20° of plumb", () => {
    let tried = 0;
    for (const { seed, it, free } of all) {
      if (lean(free) > degrees(20)) continue;
      for (const force of forces.slice(1)) {
        const after = settled(it, force);
        if (!clear(after)) continue;
        tried++;
        expect(excess(after), `rig ${seed}`).toBeLessThan(excess(free));
      }
    }
    expect(tried).toBeGreaterThan(800);
  });

  test("of a rig that leans far, it first swings the nymph down into slower water, and may add to the excess", () => {
    const worse = all.filter(({ it, free }) => {
      const after = settled(it, 2e-4);
      return clear(after) && excess(after) > excess(free);
    });
    expect(worse.length).toBeGreaterThan(0);
    for (const { it, free } of worse) {
      expect(lean(free)).toBeGreaterThan(degrees(20));
      expect(depth(settled(it, 2e-4))).toBeGreaterThan(depth(free));
    }
  });
});
