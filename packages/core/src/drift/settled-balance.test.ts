/** The settled rig drawn again: from the lowest sinker up by the midpoint rule, with formulas written here and not those of the solver. */

import { describe, expect, test, vi } from "vitest";
import { type Column, speedProfile } from "../column/index.js";
import type { Line, Sinker } from "../forces/index.js";
import { standardGravity } from "../units/index.js";
import { type SeededRig, seededRig } from "./settled.fixture.js";
import { settle } from "./settled.js";
import type { Settled } from "./state.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

interface Force {
  readonly x: number;
  readonly z: number;
}

/** Sucker and Brauer 1975. */
const cylinder = (re: number): number =>
  1.18 + 6.8 / re ** 0.89 + 1.96 / re ** 0.5 - (4e-4 * re) / (1 + 3.64e-7 * re ** 2);
/** Brown and Lawler 2003. */
const sphere = (re: number): number => (24 / re) * (1 + 0.15 * re ** 0.681) + 0.407 / (1 + 8710 / re);

function onSinker({ mass, volume, bead, body, dressing }: Sinker, excess: number, column: Column): Force {
  const { density, kinematicViscosity: nu } = column.water;
  const w = Math.abs(excess) + 1e-30;
  const beadArea = bead === undefined ? 0 : (Math.PI / 4) * bead ** 2 * sphere((w * bead) / nu);
  const bodyArea = body === undefined ? 0 : body.length * body.diameter * cylinder((w * body.diameter) / nu);
  return {
    x: -0.5 * density * w * excess * dressing * (beadArea + bodyArea),
    z: -(mass - density * volume) * standardGravity,
  };
}

interface Place extends Force {
  /** Downstream pull and lift of the line above on all that is below. */
  readonly pullX: number;
  readonly pullZ: number;
}

/** Where the line goes per metre, and what each metre of it adds to the pull: its weight and the stream square to it and along it. */
function alongLine({ z, pullX, pullZ }: Place, line: Line, drift: number, column: Column): Place {
  const { density, kinematicViscosity: nu } = column.water;
  const d = line.diameter;
  const pull = Math.hypot(pullX, pullZ);
  const [tx, tz] = [pullX / pull, pullZ / pull];
  const w = speedProfile(column)(z) - drift;
  const square = { x: w * tz * tz, z: -w * tz * tx };
  const speed = Math.hypot(square.x, square.z) + 1e-30;
  const normal = 0.5 * density * d * cylinder((speed * d) / nu) * speed;
  const tangential = 0.5 * density * Math.PI * d * 0.02 * Math.abs(w * tx) * w * tx;
  const weight = (line.density - density) * standardGravity * (Math.PI / 4) * d * d;
  return {
    x: tx,
    z: tz,
    pullX: -(normal * square.x + tangential * tx),
    pullZ: weight - (normal * square.z + tangential * tz),
  };
}

const step = (from: Place, slope: Place, by: number): Place => ({
  x: from.x + by * slope.x,
  z: from.z + by * slope.z,
  pullX: from.pullX + by * slope.pullX,
  pullZ: from.pullZ + by * slope.pullZ,
});

/** The upper end of a rig of which nothing but the lowest sinker may touch the bed, in `pieces` steps per section. */
function draw(settled: Settled, { rig, column }: SeededRig, pieces: number): Place {
  const lowest = settled.sinkers.at(-1);
  let at: Place = {
    x: lowest?.downstreamOfFloat ?? Number.NaN,
    z: lowest?.heightAboveBed ?? Number.NaN,
    pullX: -(settled.bed?.friction ?? 0),
    pullZ: -(settled.bed?.reaction ?? 0),
  };
  for (const { line, sinker } of [...rig.sections].reverse()) {
    const force = onSinker(sinker, settled.driftSpeed - speedProfile(column)(at.z), column);
    at = { ...at, pullX: at.pullX - force.x, pullZ: at.pullZ - force.z };
    const by = line.length / pieces;
    for (let i = 0; i < pieces; i++) {
      const half = step(at, alongLine(at, line, settled.driftSpeed, column), by / 2);
      at = step(at, alongLine(half, line, settled.driftSpeed, column), by);
    }
  }
  return at;
}

/** Drag of the float from its load: ½ρ·1.1·length·(2/π)·draft·|w|w, draft = (weight + load)/(ρ g · elliptic cylinder). */
function floatDrag(settled: Settled, { rig: { float }, column }: SeededRig): number {
  const { density } = column.water;
  const weight = float.mass * standardGravity;
  const perDraft = density * standardGravity * float.length * float.width * (Math.PI / 4);
  const draft = Math.min(float.height, Math.max(0, (weight + settled.load) / perDraft));
  const w = -settled.slip;
  return 0.5 * density * 1.1 * float.length * (2 / Math.PI) * draft * Math.abs(w) * w;
}

const sample = Array.from({ length: 600 }, (_, index) => {
  const seeded = seededRig(100_000 + index);
  return { index, seeded, settled: settle(seeded.rig, seeded.column, seeded.options) };
});
const clear = sample.filter(({ settled }) => settled.bed === null);
const touching = sample.flatMap(({ settled: { bed, ...settled }, ...rest }) =>
  bed === null ? [] : [{ ...rest, bed, settled: { ...settled, bed } }],
);

describe("a rig clear of the bed, drawn again from its lowest sinker", () => {
  test("there are enough of them", () => expect(clear.length).toBeGreaterThan(300));

  test("ends at the float, with the pull that the float has", () => {
    for (const { index, seeded, settled } of clear) {
      const end = draw(settled, seeded, 1000);
      const miss = Math.hypot(end.x, end.z - seeded.column.depth);
      const pull = Math.hypot(end.pullX - settled.tow, end.pullZ - settled.load);
      expect(miss, `rig ${index}, m`).toBeLessThan(1e-3);
      expect(pull / Math.hypot(settled.tow, settled.load), `rig ${index}`).toBeLessThan(5e-3);
    }
  });

  test("and the float pulls with its drag less what holds it", () => {
    for (const { index, seeded, settled } of clear) {
      if (seeded.options.wind !== undefined) continue;
      const push = floatDrag(settled, seeded) - (seeded.options.held ?? 0);
      expect(Math.abs(settled.tow - push), `rig ${index}`).toBeLessThan(1e-8);
    }
  });
});

describe("a rig that touches the bed", () => {
  test("with its lowest sinker alone, drawn again with the reaction and friction of the bed, ends at the float", () => {
    const alone = touching.filter(
      ({ bed, settled }) =>
        bed.lyingLine === 0 && settled.sinkers.filter((s) => s.heightAboveBed === 0).length === 1,
    );
    expect(alone.length).toBeGreaterThan(10);
    for (const { index, seeded, settled } of alone) {
      const end = draw(settled, seeded, 1000);
      expect(Math.hypot(end.x, end.z - seeded.column.depth), `rig ${index}, m`).toBeLessThan(1e-3);
      const pull = Math.hypot(end.pullX - settled.tow, end.pullZ - settled.load);
      expect(pull / Math.hypot(settled.tow, settled.load), `rig ${index}`).toBeLessThan(5e-3);
    }
  });

  test("rubs with half the reaction against its sliding, or less where it stands", () => {
    expect(touching.length).toBeGreaterThan(50);
    for (const { index, bed, settled } of touching) {
      expect(bed.reaction, `rig ${index}`).toBeGreaterThan(0);
      expect(bed.anchored, `rig ${index}`).toBe(settled.driftSpeed === 0);
      const share = bed.friction / (0.5 * bed.reaction);
      if (bed.anchored) expect(Math.abs(share), `rig ${index}`).toBeLessThanOrEqual(1);
      else expect(Math.abs(share + Math.sign(settled.driftSpeed)), `rig ${index}`).toBeLessThan(1e-12);
    }
    expect(new Set(touching.map(({ bed }) => bed.anchored)).size).toBe(2);
  });
});

test("the line is as long as it was cut, and ends at the float and at the lowest sinker", () => {
  for (const { index, seeded, settled } of sample) {
    const { shape, sinkers } = settled;
    const length = shape.slice(1).reduce((total, to, i) => {
      const from = shape[i] ?? to;
      return (
        total +
        Math.hypot(to.downstreamOfFloat - from.downstreamOfFloat, to.heightAboveBed - from.heightAboveBed)
      );
    }, 0);
    const cut = seeded.rig.sections.reduce((total, { line }) => total + line.length, 0);
    expect(length / cut, `rig ${index}`).toBeGreaterThan(0.98);
    expect(length / cut, `rig ${index}`).toBeLessThan(1 + 1e-6);
    expect(shape[0]?.downstreamOfFloat).toBe(0);
    expect(Math.abs((shape[0]?.heightAboveBed ?? 0) - seeded.column.depth), `rig ${index}`).toBeLessThan(
      1e-4,
    );
    expect(shape.at(-1)?.heightAboveBed, `rig ${index}`).toBe(sinkers.at(-1)?.heightAboveBed);
  }
});
