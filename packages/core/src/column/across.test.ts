import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rectangularSection, trapezoidalSection } from "../channel/index.js";
import {
  cubicMetresPerSecond,
  metres,
  metresPerSecond,
  millimetres,
  standardGravity,
} from "../units/index.js";
import { columnInChannel, columnOfMean, roughnessLengthOf, type SpotBed, slackBehind } from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
const depth = metres(0.9);
const beds: readonly SpotBed[] = [
  { depth, exponent: 6 },
  { depth, bed: { d84: millimetres(40) } },
  { depth, bed: { d84: millimetres(40) }, wake: 0.2 },
  { depth, bed: { d84: millimetres(40) }, channelWidth: metres(2) },
  { depth, bed: "boulder" },
  { depth, roughness: metres(0) },
];

test.each(beds)("a column of a given mean has that mean: %j", (bed) => {
  for (const mean of [0.05, 0.6, 2]) {
    const column = columnOfMean(bed, metresPerSecond(mean));
    expect(relative(column.meanSpeed, mean)).toBeLessThan(1e-12);
    expect(relative(column.surfaceSpeed * column.surfaceRatio, mean)).toBeLessThan(1e-12);
  }
  expect(columnOfMean(bed, metresPerSecond(0)).surfaceSpeed).toBe(0);
});

test("a roughness length gives back the V/u* it was made for", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.02, max: 40, noNaN: true }), (ratio) => {
      const share = roughnessLengthOf(ratio, depth) / depth;
      expect(relative((Math.log(1 / share) - 1 + share) / 0.41, ratio)).toBeLessThan(1e-6);
    }),
    { seed: 1, numRuns: 200 },
  );
  expect(() => roughnessLengthOf(0, depth)).toThrow("mean over shear velocity");
});

describe("a column from discharge, section and slope", () => {
  const friction = { law: "manning", n: 0.035 } as const;
  const channel = { section: trapezoidalSection(metres(4), 3), friction, slope: 0.004 };
  const discharge = cubicMetresPerSecond(5);
  const at = (station?: number) => {
    const found = columnInChannel({
      channel,
      discharge,
      ...(station === undefined ? {} : { station: metres(station) }),
    });
    if ("kind" in found) throw new TypeError(found.kind);
    return found;
  };

  test("has the depth and mean speed of its lane, and √(g h S) for shear velocity", () => {
    const { lane, column } = at();
    expect(column.depth).toBe(lane.depth);
    expect(relative(column.meanSpeed, lane.meanSpeed)).toBeLessThan(1e-12);
    expect(relative(column.shearVelocity, Math.sqrt(standardGravity * lane.depth * 0.004))).toBeLessThan(
      1e-12,
    );
    expect(column.grounds.assumptions.map((a) => a.name)).toContain("speed across the stream");
  });

  test("runs faster towards the middle from either bank, by opposite gradients", () => {
    const width = 4 + 6 * at().lane.depth;
    const [left, right] = [at(0.15 * width), at(0.85 * width)];
    expect(left.laneGradient).toBeGreaterThan(0);
    expect(relative(right.laneGradient, -left.laneGradient)).toBeLessThan(1e-6);
    expect(relative(right.column.surfaceSpeed, left.column.surfaceSpeed)).toBeLessThan(1e-9);
  });

  test("takes a stated bed in place of the roughness that fits", () => {
    const found = columnInChannel({ channel, discharge, bed: { bed: "cobble" } });
    if ("kind" in found) throw new TypeError(found.kind);
    expect(found.column.profile.law).toBe("mixing-layer");
    expect(relative(found.column.meanSpeed, found.lane.meanSpeed)).toBeLessThan(1e-12);
  });

  test("is not given where nothing runs uniformly, and a dry station is named", () => {
    const level = { section: rectangularSection(metres(4)), friction, slope: 0 };
    expect(columnInChannel({ channel: level, discharge })).toEqual({ kind: "no-slope" });
    expect(() => at(-5)).toThrow("station");
  });
});

describe("the slack behind a boulder", () => {
  const behind = (downstream: number, across = 0, width = 1) =>
    slackBehind({
      width: metres(width),
      downstream: metres(downstream),
      across: metres(across),
      speed: metresPerSecond(1),
    });

  test("is still at its foot, fills up downstream and sideways, and ends at its edge", () => {
    expect(behind(0.5)).toMatchObject({ speed: 0, zone: "still" });
    const down = [1, 2, 4, 8, 100].map((x) => behind(x).speed);
    expect(down).toEqual(down.toSorted((a, b) => a - b));
    expect(behind(4, behind(4).halfWidth * 1.01)).toMatchObject({ speed: 1, zone: "open stream" });
    expect(behind(4, 0.3).speed).toBeGreaterThan(behind(4).speed);
    expect(behind(4, -0.3).speed).toBe(behind(4, 0.3).speed);
  });

  // a plane wake keeps its momentum defect: ∫ u1 dy goes as deficit × width, which does not change downstream
  test("keeps its defect of momentum, and has the scale of its boulder", () => {
    const defect = (x: number): number => (1 - behind(x).speed) * behind(x).halfWidth;
    expect(relative(defect(10), defect(80))).toBeLessThan(1e-9);
    expect(relative(behind(6, 0.4, 2).speed, behind(3, 0.2, 1).speed)).toBeLessThan(1e-12);
  });

  test("carries a caveat near the boulder, none far away, and names what cannot be", () => {
    expect(behind(4).grounds.caveats).toHaveLength(1);
    expect(behind(60).grounds.caveats).toEqual([]);
    expect(() => behind(4, 0, 0)).toThrow("width of the boulder");
    expect(() => behind(0)).toThrow("distance downstream");
  });
});
