import { describe, expect, test, vi } from "vitest";
import { speedAt, waterColumn } from "../column/index.js";
import { float, line, sinker } from "../forces/index.js";
import { rig } from "../rig/index.js";
import {
  cubicMillimetres,
  grams,
  heightAboveBed,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
} from "../units/index.js";
import { fished, rigOf } from "./directions.fixture.js";
import { dragFreeTime, hold, holdInStep, slowerThanFoam } from "./held.js";
import { settle } from "./settled.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const dry = float({
  length: millimetres(22),
  width: millimetres(6),
  height: millimetres(6),
  mass: grams(0.1),
  treatment: 0.5,
});
const nymph = sinker({
  mass: grams(0.2),
  volume: cubicMillimetres(30),
  bead: millimetres(2.8),
  body: { length: millimetres(6), diameter: millimetres(1.8) },
});
const tippet = (length: number) =>
  line({ length: metres(length), diameter: millimetres(0.15), density: kilogramsPerCubicMetre(1780) });
const hung = rig(dry, { line: tippet(0.46), sinker: nymph });
const boulders = waterColumn({
  depth: metres(0.9),
  surfaceSpeed: metresPerSecond(0.9),
  bed: { d84: metres(0.36) },
});

describe("holding back over boulders", () => {
  const held = hold(hung, boulders);

  test("slows the drift and lessens the excess, more with every newton", () => {
    held.curve.slice(1).forEach((point, i) => {
      const before = held.curve[i];
      expect(point.force).toBeGreaterThan(before?.force ?? 0);
      expect(point.driftSpeed).toBeLessThan(before?.driftSpeed ?? 0);
      expect(point.excess).toBeLessThan(before?.excess ?? 0);
    });
    expect(held.curve).toHaveLength(9);
    expect(held.curve[0]).toMatchObject({ force: 0, driftSpeed: held.free.driftSpeed });
  });

  test("in step, the nymph drifts with its own water and the float slower than the foam", () => {
    if (held.inStep.reach !== "held") throw new Error(`not held: ${held.inStep.reach}`);
    const { point } = held.inStep;
    expect(Math.abs(point.excess)).toBeLessThan(1e-5);
    expect(point.slip).toBeLessThan(held.free.slip);
    expect(slowerThanFoam(point)).toBe(boulders.surfaceSpeed - point.driftSpeed);
    const settled = settle(hung, boulders, { held: point.force });
    expect(Math.abs(settled.driftSpeed / point.driftSpeed - 1)).toBeLessThan(1e-9);
  });

  test("half the excess takes less force than being in step", () => {
    const { halvedExcess, inStep, free } = held;
    if (halvedExcess.reach !== "held" || inStep.reach !== "held") throw new Error("not held");
    expect(Math.abs(halvedExcess.point.excess / (free.sinkers[0]?.excess ?? 0) - 0.5)).toBeLessThan(1e-4);
    expect(halvedExcess.point.force).toBeLessThan(inStep.point.force);
  });
});

describe("holding back many rigs that hang", () => {
  const all = Array.from({ length: 110 }, (_, seed) => fished(seed))
    .map((it) => ({ it, made: rigOf(it), held: hold(rigOf(it), it.column, { points: 5 }) }))
    .filter(({ held }) => held.free.regime === "hanging");
  const degrees = (lean: number): number => (Math.abs(lean) * 180) / Math.PI;

  test("each point found is a steady state with the excess asked for, a millionth of the surface speed or nearer", () => {
    expect(all.length).toBeGreaterThan(75);
    let found = 0;
    for (const { it, made, held } of all) {
      const half = (held.free.sinkers[0]?.excess ?? 0) / 2;
      for (const [target, aim] of [
        [held.inStep, 0],
        [held.halvedExcess, half],
      ] as const) {
        if (target.reach !== "held") continue;
        found++;
        const again = settle(made, it.column, { held: target.point.force });
        expect(again.driftSpeed).toBe(target.point.driftSpeed);
        const own = speedAt(it.column, target.point.heightAboveBed);
        expect(Math.abs(again.driftSpeed - own - aim) / it.column.surfaceSpeed).toBeLessThan(1e-6);
      }
    }
    expect(found).toBeGreaterThan(110);
  });

  test("every rig within 20° of plumb can be held in step, or is so already", () => {
    for (const { held } of all) {
      if (degrees(held.free.lean) < 20) expect(held.inStep.reach).not.toBe("unreachable");
    }
  });

  test("one that leans far may swing over from one steady state to another, and is said to", () => {
    const over = all.filter(({ held }) => held.inStep.reach === "unreachable");
    expect(over.length).toBeGreaterThan(0);
    for (const { held } of over) {
      expect(held.inStep).toMatchObject({ reason: expect.stringMatching(/mN the rig swings over$/) });
      expect(degrees(held.free.lean)).toBeGreaterThan(20);
    }
  });

  test("the drift slows with every newton", () => {
    for (const { held } of all) {
      held.curve.slice(1).forEach((point, i) => {
        expect(point.driftSpeed).toBeLessThan(held.curve[i]?.driftSpeed ?? 0);
      });
    }
  });

  test("a wind against the stream spares some of the hold", () => {
    let spared = 0;
    for (const { it, made, held } of all.slice(0, 40)) {
      const wind = metresPerSecond(-3);
      const blown = settle(made, it.column, { wind });
      const inWind = holdInStep(made, it.column, blown, newtons(0.02), wind);
      if (held.inStep.reach !== "held" || inWind.reach !== "held") continue;
      // nothing where the dry sits in the film to its full height
      expect(inWind.point.force).toBeLessThan(held.inStep.point.force + 1e-9);
      if (inWind.point.force < held.inStep.point.force - 1e-6) spared++;
    }
    expect(spared).toBeGreaterThan(15);
  });
});

test("water of one speed needs no hold", () => {
  const point = (z: number) => ({ heightAboveBed: heightAboveBed(z), speed: metresPerSecond(0.6) });
  const even = waterColumn({ depth: metres(0.9), points: [point(0), point(0.9)] });
  expect(hold(hung, even)).toMatchObject({
    inStep: { reach: "unneeded" },
    halvedExcess: { reach: "unneeded" },
  });
});

test("a rig on the bed cannot be held in step, and too small a force does not do it", () => {
  const dragging = rig(dry, { line: tippet(2), sinker: nymph });
  const onBed = hold(dragging, waterColumn({ depth: metres(0.4), surfaceSpeed: metresPerSecond(0.2) }));
  expect(onBed.free.regime).toBe("on-bed");
  expect(onBed.inStep.reach).toBe("unreachable");
  expect(hold(hung, boulders, { greatest: newtons(1e-6) }).inStep.reach).toBe("unreachable");
});

describe("refuses", () => {
  test.each([0, -1, 2])("a greatest force of %d N", (force) => {
    expect(() => hold(hung, boulders, { greatest: newtons(force) })).toThrow(
      "greatest held force must be from",
    );
  });

  test.each([1, 201, Number.NaN])("%d points", (points) => {
    expect(() => hold(hung, boulders, { points })).toThrow("points of the curve must be from 2 to 200");
  });
});

describe("drag-free time", () => {
  test("is slack over difference, whichever lane is quicker", () => {
    expect(dragFreeTime(metres(0.9), metresPerSecond(0.45))).toBe(2);
    expect(dragFreeTime(metres(0.9), metresPerSecond(-0.45))).toBe(2);
  });

  test("has no end where the lanes run alike, and needs slack", () => {
    expect(() => dragFreeTime(metres(0.9), metresPerSecond(0))).toThrow(
      "difference of speed between the lanes must be above 0 m/s, got 0",
    );
    expect(() => dragFreeTime(metres(0), metresPerSecond(0.3))).toThrow("slack must be above 0 m, got 0");
  });
});
