import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, type Metres, metres, standardGravity } from "../units/index.js";
import {
  circularSection,
  criticalDepth,
  directStep,
  normalDepth,
  profileClass,
  type Reach,
  type River,
  rectangularSection,
  specificForce,
  surfaceProfile,
  trapezoidalSection,
} from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const manning = (n: number) => ({ law: "manning", n }) as const;
const reach = (length: number, slope: number, n = 0.02): Reach => ({
  length: metres(length),
  slope,
  friction: manning(n),
});
const section = rectangularSection(metres(5));
const discharge = cubicMetresPerSecond(10);
const depthOf = (found: ReturnType<typeof normalDepth>): Metres => {
  if (found.kind !== "found") throw new TypeError(found.kind);
  return found.depth;
};
const critical = criticalDepth({ section, discharge });
const yc = critical.kind === "found" ? critical.depth : metres(0);
const base = { section, discharge };
const mildSteepMild: River = {
  ...base,
  reaches: [reach(500, 0.0005), reach(200, 0.03), reach(500, 0.0005)],
  upstream: { depth: metres(0.3) },
  downstream: "normal",
};

/** Rivers of one to three reaches under a pool, with a gate or a fall above. */
const slope = fc.oneof(within(0.0002, 0.03), fc.constant(0), within(-0.002, -0.0005));
const rivers: fc.Arbitrary<River> = fc
  .record({
    width: within(2, 20),
    bank: within(0, 3),
    flow: within(1, 60),
    reaches: fc.array(fc.record({ length: within(20, 800), slope, n: within(0.012, 0.06) }), {
      minLength: 1,
      maxLength: 3,
    }),
    above: within(0.3, 1),
    below: within(1.02, 2.5),
  })
  .map(({ width, bank, flow, reaches, above, below }) => {
    const shape = trapezoidalSection(metres(width), bank);
    const q = cubicMetresPerSecond(flow);
    const found = criticalDepth({ section: shape, discharge: q });
    const y = found.kind === "found" ? found.depth : 0;
    return {
      section: shape,
      discharge: q,
      reaches: reaches.map((r) => reach(r.length, r.slope, r.n)),
      upstream: { depth: metres(above * y) },
      downstream: { depth: metres(below * y) },
      pointsPerReach: 61,
    };
  });

describe("any river", () => {
  test("keeps its energy from point to point", () => {
    fc.assert(
      fc.property(rivers, (river) => {
        const { points } = surfaceProfile({ ...river, pointsPerReach: 1001 });
        points.slice(1).forEach((point, i) => {
          // where depth changes by more between two points, or turns sharply near critical, the integral of the residual is too coarse to tell
          if (relative(point.depth, points[i]!.depth) > 0.03 || Math.abs(point.froude - 1) < 0.1) return;
          expect(Math.abs(point.residual)).toBeLessThan(1e-6 * point.specificEnergy);
        });
      }),
      { seed: 1, numRuns: 60, endOnFailure: true },
    );
  });

  test("loses head all the way down, and more in its jumps", () => {
    fc.assert(
      fc.property(rivers, (river) => {
        const { points, jumps } = surfaceProfile(river);
        const ends = river.reaches.map((_, i) =>
          river.reaches.slice(0, i + 1).reduce((sum, r) => sum + r.length, 0),
        );
        const bed = (x: number): number =>
          river.reaches.reduce(
            (z, r, i) => z - r.slope * Math.max(0, Math.min(r.length, x - (ends[i]! - r.length))),
            0,
          );
        const head = points.map((p) => bed(p.distance) + p.specificEnergy);
        head.slice(1).forEach((h, i) => {
          expect(h - head[i]!).toBeLessThan(1e-9 * points[i]!.specificEnergy);
        });
        for (const jump of jumps) expect(jump.headLoss).toBeGreaterThan(0);
      }),
      { seed: 2, numRuns: 150, endOnFailure: true },
    );
  });

  test("keeps its specific force through a jump, from shooting to tranquil water", () => {
    let seen = 0;
    fc.assert(
      fc.property(rivers, (river) => {
        for (const { before, after } of surfaceProfile(river).jumps) {
          seen++;
          expect(relative(specificForce(river, after), specificForce(river, before))).toBeLessThan(1e-9);
          expect(after).toBeGreaterThan(before);
        }
      }),
      { seed: 3, numRuns: 150, endOnFailure: true },
    );
    expect(seen).toBeGreaterThan(30);
  });

  test("does not change when a reach is cut in two", () => {
    fc.assert(
      fc.property(rivers, within(0.1, 0.9), (river, share) => {
        const [first, ...rest] = river.reaches;
        const cut = metres(first!.length * share);
        const two = {
          ...river,
          reaches: [{ ...first!, length: cut }, { ...first!, length: metres(first!.length - cut) }, ...rest],
        };
        const [whole, parts] = [surfaceProfile(river), surfaceProfile(two)];
        expect(parts.jumps).toHaveLength(whole.jumps.length);
        parts.jumps.forEach((jump, i) => {
          expect(Math.abs(jump.distance - whole.jumps[i]!.distance)).toBeLessThan(1e-5 * first!.length);
        });
        for (const end of [0, -1])
          expect(relative(parts.points.at(end)!.depth, whole.points.at(end)!.depth)).toBeLessThan(1e-7);
      }),
      { seed: 4, numRuns: 100, endOnFailure: true },
    );
  });

  test("is the same in other units of length and time", () => {
    const in_ = (L: number, T: number): River => ({
      section: trapezoidalSection(metres(4 * L), 1),
      discharge: cubicMetresPerSecond((12 * L ** 3) / T),
      gravity: (standardGravity * L) / T ** 2,
      reaches: [0.001, 0.03, 0].map((s) => ({
        length: metres(300 * L),
        slope: s,
        friction: { law: "rough", roughness: metres(0.2 * L) },
      })),
      upstream: { depth: metres(0.3 * L) },
      downstream: { depth: metres(1.6 * L) },
    });
    const [one, other] = [surfaceProfile(in_(1, 1)), surfaceProfile(in_(3.28, 0.7))];
    expect(one.jumps.length).toBeGreaterThan(0);
    other.points.forEach((p, i) => {
      expect(relative(p.depth, 3.28 * one.points[i]!.depth)).toBeLessThan(1e-7);
      expect(relative(p.froude, one.points[i]!.froude)).toBeLessThan(1e-7);
    });
  });
});

describe("a mild, a steep and a mild reach under a gate", () => {
  const { points, jumps, unused } = surfaceProfile(mildSteepMild);

  test("jump below the gate, pass critical depth at the break, and jump again on the steep reach", () => {
    expect(jumps).toHaveLength(2);
    expect(unused).toEqual([]);
    expect(relative(points.find((p) => p.distance === 500)?.depth ?? 0, yc)).toBeLessThan(1e-12);
    expect([...new Set(points.map((p) => p.curve))]).toEqual(["M3", "M2", "critical", "S2", "S1", "uniform"]);
  });

  test("end at normal depth", () => {
    expect(
      relative(
        points.at(-1)!.depth,
        depthOf(normalDepth({ section, friction: manning(0.02), slope: 0.0005 }, discharge)),
      ),
    ).toBeLessThan(1e-12);
  });
});

test("a backwater curve is that of the differential equation, integrated by small steps", () => {
  const flow = { ...base, friction: manning(0.02), slope: 0.0005 };
  const rate = (y: number): number => {
    const [area, r] = [5 * y, (5 * y) / (5 + 2 * y)];
    const friction = (10 * 0.02) ** 2 / (area ** 2 * r ** (4 / 3));
    return (0.0005 - friction) / (1 - (100 * 5) / (standardGravity * area ** 3));
  };
  let y = 3;
  const h = -0.5;
  for (let i = 0; i < 4000; i++) {
    const k1 = rate(y);
    const k2 = rate(y + (h * k1) / 2);
    const k3 = rate(y + (h * k2) / 2);
    y += (h / 6) * (k1 + 2 * k2 + 2 * k3 + rate(y + h * k3));
  }
  const { points } = surfaceProfile({
    ...base,
    reaches: [reach(2000, 0.0005)],
    downstream: { depth: metres(3) },
  });
  expect(relative(points[0]!.depth, y)).toBeLessThan(1e-10);
  expect(profileClass(flow, points[0]!.depth)).toEqual({ slope: "mild", curve: "M1" });
});

describe("the direct step", () => {
  const flow = { ...base, friction: manning(0.02), slope: 0.0005 };
  const depths = [2.4, 2.3, 2.2, 2.1, 2].map(metres);

  test("taken in the other order runs back the same way, by every average", () => {
    for (const average of ["arithmetic", "geometric", "harmonic", "conveyance"] as const) {
      const there = directStep(flow, depths, average).at(-1)!.distance;
      const back = directStep(flow, depths.toReversed(), average).at(-1)!.distance;
      expect(there).toBeLessThan(0);
      expect(relative(back, -there)).toBeLessThan(1e-12);
    }
  });

  test("comes to the adaptive profile by the square of its step", () => {
    const miss = (n: number): number => {
      const fine = Array.from({ length: n + 1 }, (_, i) => metres(2.4 - (0.4 * i) / n));
      const length = -directStep(flow, fine).at(-1)!.distance;
      const { points } = surfaceProfile({
        ...base,
        reaches: [reach(length, 0.0005)],
        downstream: { depth: metres(2.4) },
      });
      return points[0]!.depth - 2;
    };
    const order = Math.log2(miss(32) / miss(64));
    expect(order).toBeGreaterThan(1.9);
    expect(order).toBeLessThan(2.1);
  });

  test("names what it cannot step over", () => {
    expect(() => directStep(flow, [metres(1)])).toThrow("depths of the steps");
    expect(() => directStep(flow, [metres(1), metres(-1)])).toThrow("depth");
  });
});

describe("the class of a profile", () => {
  test.each([
    [0.0005, 3, "M1"],
    [0.0005, 1, "M2"],
    [0.0005, 0.3, "M3"],
    [0.03, 1.2, "S1"],
    [0.03, 0.6, "S2"],
    [0.03, 0.2, "S3"],
    [0, 1, "H2"],
    [0, 0.3, "H3"],
    [-0.001, 1, "A2"],
    [-0.001, 0.3, "A3"],
    [0.0005, yc, "critical"],
  ])("on a slope of %d at a depth of %d m is %s", (slope_, depth, curve) => {
    expect(profileClass({ ...base, friction: manning(0.02), slope: slope_ }, metres(depth)).curve).toBe(
      curve,
    );
  });

  test("on the critical slope is C1 above, C3 below, uniform between", () => {
    // Sc = (n Q/(A R^(2/3)))² at critical depth
    const [area, r] = [5 * yc, (5 * yc) / (5 + 2 * yc)];
    const flow = { ...base, friction: manning(0.02), slope: (0.2 / (area * r ** (2 / 3))) ** 2 };
    expect(profileClass(flow, metres(1.5))).toEqual({ slope: "critical", curve: "C1" });
    expect(profileClass(flow, metres(0.4)).curve).toBe("C3");
    expect(profileClass(flow, yc).curve).toBe("uniform");
  });
});

describe("controls", () => {
  const mild = [reach(400, 0.0005)];

  test("a fall at the end of a mild reach draws the water down to critical depth", () => {
    const { points } = surfaceProfile({ ...base, reaches: mild, downstream: "critical" });
    expect(relative(points.at(-1)!.depth, yc)).toBeLessThan(1e-12);
    expect(points.slice(0, -1).every((p) => p.curve === "M2")).toBe(true);
  });

  test("a gate is drowned by a high pool, and says so", () => {
    const profile = surfaceProfile({
      ...base,
      reaches: mild,
      upstream: { depth: metres(0.6) },
      downstream: { depth: metres(4) },
    });
    expect(profile.unused).toEqual(["upstream"]);
    expect(profile.jumps).toEqual([]);
  });

  test("a low pool below a steep reach is never felt", () => {
    const profile = surfaceProfile({
      ...base,
      reaches: [reach(300, 0.03)],
      upstream: "critical",
      downstream: "critical",
    });
    expect(profile.unused).toEqual(["downstream"]);
    expect(profile.points.every((p) => p.froude >= 1 - 1e-9)).toBe(true);
  });

  test.each([
    ["reaches", { ...base, reaches: [] }],
    ["length of reach 1", { ...base, reaches: [reach(0, 0.001)], downstream: "normal" }],
    ["upstream control", { ...base, reaches: [reach(100, 0.03)], downstream: "critical" }],
    ["depth of the downstream control", { ...base, reaches: mild, downstream: { depth: metres(0.2) } }],
    [
      "depth of the upstream control",
      { ...base, reaches: mild, upstream: { depth: metres(2) }, downstream: "normal" },
    ],
    ["downstream control", { ...base, reaches: mild, upstream: { depth: metres(0.3) } }],
    ["downstream control", { ...base, reaches: [reach(100, 0)], downstream: "normal" }],
    [
      "depth of the downstream control",
      { ...base, section: circularSection(metres(4)), reaches: mild, downstream: { depth: metres(5) } },
    ],
    ["points in each reach", { ...base, reaches: mild, downstream: "normal", pointsPerReach: 1 }],
    ["slope", { ...base, reaches: [reach(100, 2)], downstream: "critical" }],
    ["discharge", { ...base, discharge: cubicMetresPerSecond(0), reaches: mild, downstream: "normal" }],
  ] as const)("a mistake is named: %s", (name, river) => {
    expect(() => surfaceProfile(river)).toThrow(name);
  });
});
