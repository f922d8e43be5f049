import { describe, expect, test } from "vitest";
import { waterColumn } from "../column/index.js";
import { line, sinker } from "../forces/index.js";
import { rig } from "../rig/index.js";
import {
  cubicMetres,
  heightAboveBed,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  newtons,
  perSecond,
  QuantityError,
  seconds,
} from "../units/index.js";
import { settle } from "./settled.js";
import {
  anyRig,
  bigFloat,
  boulderWater,
  hung,
  logWater,
  nymph,
  stillWater,
  water,
} from "./unsteady.fixture.js";
import { type Drift, type DriftOptions, drift } from "./unsteady.js";
import { shareInside } from "./unsteady-tally.js";

/** Time at which the lowest sinker first is as deep, s. */
function timeToDepth({ path }: Drift, height: number): number {
  return path.find((instant) => (instant.sinkers.at(-1)?.heightAboveBed ?? 0) <= height)?.time ?? Infinity;
}

const bead = (diameter: number, density: number) =>
  sinker({
    mass: kilograms((density * Math.PI * diameter ** 3) / 6),
    volume: cubicMetres((Math.PI * diameter ** 3) / 6),
    bead: metres(diameter),
  });

describe("what acts on the time to settle", () => {
  const fine: DriftOptions = { timeStep: seconds(0.005), duration: seconds(8), instants: 2000 };

  // common practice, no source: a loop knot lets the fly fall head first, sooner
  test("a loop knot settles sooner than a tight one", () => {
    for (const column of [logWater, boulderWater]) {
      const [loop, tight] = (["loop", "tight"] as const).map((knot) =>
        drift(hung({ ...nymph, knot }), column, fine),
      );
      if (!loop?.settling.settles || !tight?.settling.settles) throw new Error("does not settle");
      expect(loop.settling.time).toBeLessThan(tight.settling.time);
      expect(loop.settling.distance).toBeLessThan(tight.settling.distance);
    }
  });

  // common practice, no source: more bead (larger, or tungsten), deeper and sooner
  test("a bigger bead and a denser one are sooner at a depth", () => {
    const down = [
      [2e-3, 8500],
      [2.8e-3, 8500],
      [2.8e-3, 15000],
      [3.8e-3, 15000],
    ].map(([diameter = 0, density = 0]) =>
      timeToDepth(drift(hung(bead(diameter, density)), boulderWater, fine), 0.65),
    );
    expect([...down].sort((a, b) => b - a)).toEqual(down);
    expect(new Set(down).size).toBe(4);
  });

  // common practice, no source: the nymph falling in slightly quicker water than the dry passes under by itself
  test("a nymph in the quicker lane gains on the dry", () => {
    const place = (gradient: number) => {
      const cast = {
        sinkerDownstream: metres(-0.2),
        sinkerAcross: metres(0.25),
        laneGradient: perSecond(gradient),
      };
      const last = drift(hung(nymph), logWater, { cast, duration: seconds(1), instants: 10 }).path.at(-1);
      return (last?.sinkers[0]?.downstream ?? 0) - (last?.float.downstream ?? 0);
    };
    expect(place(0.4)).toBeGreaterThan(place(0));
    expect(place(-0.4)).toBeLessThan(place(0));
  });
});

test("left and right are alike: the mirrored cast drifts the mirrored way, exactly", () => {
  const at = (side: number) =>
    drift(hung(nymph, nymph), logWater, {
      cast: {
        sinkerDownstream: metres(-0.3),
        sinkerAcross: metres(0.4 * side),
        laneGradient: perSecond(0.3 * side),
      },
      duration: seconds(2),
    }).path;
  const left = at(-1);
  at(1).forEach((right, i) => {
    right.sinkers.forEach((place, s) => {
      const other = left[i]?.sinkers[s];
      expect(other?.across).toBe(0 - place.across);
      expect(other?.downstream).toBe(place.downstream);
      expect(other?.heightAboveBed).toBe(place.heightAboveBed);
    });
  });
  expect(left.length).toBeGreaterThan(100);
});

describe("the end of a drift", () => {
  test("a run ends at its length, its seconds are distance over speed", () => {
    const result = drift(hung(nymph), logWater, { runLength: metres(6) });
    expect(result.outcome).toBe("run-ended");
    expect(result.distance).toBeCloseTo(6, 9);
    expect(result.duration).toBeGreaterThan(6 / 0.9144);
  });

  test("stopping early at the steady state changes nothing that is reported", () => {
    const window = { low: heightAboveBed(0.3), high: heightAboveBed(0.6) };
    const early = drift(hung(nymph), boulderWater, { window, runLength: metres(12) });
    const full = drift(hung(nymph), boulderWater, {
      window,
      runLength: metres(12),
      stationary: metresPerSecond(0),
    });
    expect(early.steps).toBeLessThan(0.7 * full.steps);
    for (const key of ["duration", "distance", "secondsInWindow", "effectiveSeconds"] as const) {
      expect(Math.abs(early[key] / full[key] - 1), key).toBeLessThan(1e-5);
    }
    expect(early.settling).toEqual(full.settling);
    expect(full.secondsInWindow).toBeGreaterThan(5);
    expect(full.effectiveSeconds).toBeLessThan(full.secondsInWindow);
  });

  test("a float goes under a load beyond its reserve, and the drift ends there", () => {
    const result = drift(hung(bead(4.6e-3, 15000)), logWater);
    expect(result.outcome).toBe("drowned");
    expect(result.settling).toEqual({ settles: false });
    expect(result.duration).toBeLessThan(3);
  });

  test("still water: time ends, the rig hangs plumb under its float", () => {
    const result = drift(hung(nymph), stillWater(0.9144), { duration: seconds(30) });
    const last = result.path.at(-1);
    expect(result.outcome).toBe("time-ended");
    expect(last?.sinkers[0]?.heightAboveBed).toBeCloseTo(0.4572, 6);
    expect(last?.sinkers[0]?.downstream).toBeCloseTo(last?.float.downstream ?? Number.NaN, 4);
  });

  // against the settled solver, which balances the bed in another way: it shoots along the line from the bed up
  test.each([
    ["slides", 0.8, 0.26e-3, false],
    ["anchors", 0.15, 0.55e-3, true],
  ] as const)("on the bed it %s as the settled drift does", (_, surfaceSpeed, mass, anchored) => {
    const tippet = line({
      length: metres(0.9),
      diameter: metres(0.15e-3),
      density: kilogramsPerCubicMetre(1780),
    });
    const column = waterColumn({
      depth: metres(0.5),
      surfaceSpeed: metresPerSecond(surfaceSpeed),
      exponent: 6,
      water,
    });
    const given = rig(bigFloat, {
      line: tippet,
      sinker: bead(Math.cbrt((6 * mass) / 15000 / Math.PI), 15000),
    });
    const settled = settle(given, column);
    const result = drift(given, column, {
      settled,
      duration: seconds(60),
      runLength: metres(1e3),
      segments: 32,
    });
    const [before, last] = result.path.slice(-2);
    if (before === undefined || last === undefined) throw new Error("no path");
    const speed = (last.float.downstream - before.float.downstream) / (last.time - before.time);
    const heights = result.path.map((instant) => instant.sinkers[0]?.heightAboveBed ?? Number.NaN);
    expect(settled.regime).toBe("on-bed");
    expect(settled.bed?.anchored).toBe(anchored);
    expect(Math.abs(speed - settled.driftSpeed)).toBeLessThan(0.005 * surfaceSpeed);
    expect(Math.min(...heights)).toBeGreaterThan(-1e-6);
    expect(heights.at(-1)).toBeLessThan(1e-6);
    expect(result.settling.settles).toBe(true);
  });
});

describe("over the whole range of model §4", () => {
  test.each([
    ["usual", {}],
    ["coarse", { segments: 2, timeStep: seconds(0.05) }],
  ] as const)("nothing throws, nothing is not a number: %s settings", (_, settings) => {
    const outcomes = new Set<string>();
    for (let seed = 1; seed <= 150; seed++) {
      const { rig: given, column, uniform } = anyRig(seed);
      const total = given.sections.reduce((sum, section) => sum + section.line.length, 0);
      const angle = uniform(0, 2 * Math.PI);
      const chord = total * uniform(0, 1);
      const result = drift(given, column, {
        ...settings,
        cast: {
          sinkerDownstream: metres(chord * Math.cos(angle)),
          sinkerAcross: metres(chord * Math.sin(angle)),
          entrySpeed: metresPerSecond(uniform(0, 3)),
          laneGradient: perSecond(uniform(-1, 1)),
        },
        held: newtons(Math.max(0, uniform(-0.02, 0.02))),
        window: { low: heightAboveBed(0), high: heightAboveBed(column.depth / 2) },
        duration: seconds(15),
        instants: 40,
      });
      outcomes.add(result.outcome);
      const { duration, distance, effectiveSeconds, secondsInWindow, lengthError } = result;
      for (const value of [duration, distance, effectiveSeconds]) expect(Number.isFinite(value)).toBe(true);
      expect(effectiveSeconds).toBeLessThanOrEqual(secondsInWindow);
      expect(secondsInWindow).toBeLessThanOrEqual(duration * (1 + 1e-12));
      expect(lengthError, `seed ${seed}`).toBeLessThan(1e-3);
      for (const { sinkers } of result.path) {
        for (const place of sinkers) {
          expect(place.heightAboveBed).toBeGreaterThan(-1e-5);
          expect(place.heightAboveBed).toBeLessThan(column.depth + 1e-6);
        }
      }
    }
    expect(outcomes).toEqual(new Set(["run-ended", "time-ended", "drowned"]));
  });
});

test("options out of range are named", () => {
  const given = hung(nymph);
  const bad: readonly (readonly [DriftOptions, RegExp])[] = [
    [
      { cast: { sinkerDownstream: metres(-1) } },
      /^distance from the float to the lowest sinker must be at most/,
    ],
    [{ cast: { entrySpeed: metresPerSecond(-1) } }, /^entry speed/],
    [{ runLength: metres(0) }, /^length of the run/],
    [{ duration: seconds(0) }, /^duration/],
    [{ timeStep: seconds(0) }, /^time step/],
    [{ duration: seconds(1e4), timeStep: seconds(0.01) }, /^steps of the drift/],
    [{ segments: 0 }, /^segments/],
    [{ segments: 2.5 }, /^segments/],
    [{ segments: 65 }, /^segments/],
    [{ held: newtons(-1) }, /^held force/],
    [{ excessScale: metresPerSecond(0) }, /^excess scale/],
    [{ window: { low: heightAboveBed(0.5), high: heightAboveBed(0.2) } }, /^upper edge of the window/],
  ];
  for (const [options, message] of bad) {
    expect(() => drift(given, logWater, options), message.source).toThrow(QuantityError);
    expect(() => drift(given, logWater, options)).toThrow(message);
  }
});

test("a straight move through the window counts by its share inside", () => {
  expect(shareInside(0, 2, 1, 3)).toBe(0.5);
  expect(shareInside(2, 0, 1, 3)).toBe(0.5);
  expect(shareInside(0, 4, 1, 3)).toBe(0.5);
  expect(shareInside(2, 2, 1, 3)).toBe(1);
  expect(shareInside(0, 0, 1, 3)).toBe(0);
  expect(shareInside(0, 1, 1, 3)).toBe(0);
});

test("every default that was taken is said", () => {
  const names = drift(hung(nymph), logWater, { duration: seconds(0.1) }).grounds.assumptions.map(
    (a) => a.name,
  );
  for (const name of ["landing of the lowest sinker", "entry speed of the sinkers", "lane gradient"]) {
    expect(names).toContain(name);
  }
  const told = drift(hung(nymph), logWater, {
    duration: seconds(0.1),
    cast: { entrySpeed: metresPerSecond(1) },
  }).grounds.assumptions.map((a) => a.name);
  expect(told).not.toContain("entry speed of the sinkers");
});
