import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, metres } from "../units/index.js";
import { fitGeometry, type Gauging, geometryOf, ratedDischarge, rateStage, streamAt } from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const gauging = (stage: number, discharge: number, uncertainty?: number): Gauging => ({
  stage: metres(stage),
  discharge: cubicMetresPerSecond(discharge),
  ...(uncertainty === undefined ? {} : { uncertainty }),
});
const heights = [0.1, 0.22, 0.35, 0.5, 0.8, 1.2, 1.7];
/** Invented scatter of a few per cent. */
const errors = [0.03, -0.04, 0.01, 0.05, -0.02, -0.03, 0.02];
const curve = fc.record({ c: within(0.5, 30), h0: within(-2, 2), b: within(1.2, 3) });
const on = ({ c, h0, b }: { c: number; h0: number; b: number }, scatter = 0): readonly Gauging[] =>
  heights.map((h, i) => gauging(h0 + h, c * h ** b * Math.exp(scatter * errors[i]!)));

describe("a rating curve", () => {
  test("finds the curve that its gaugings lie on, its zero too", () => {
    fc.assert(
      fc.property(curve, (true_) => {
        const given = rateStage(on(true_), { stage: metres(true_.h0) });
        expect(relative(given.coefficient, true_.c)).toBeLessThan(1e-9);
        expect(relative(given.exponent, true_.b)).toBeLessThan(1e-9);
        const searched = rateStage(on(true_), { from: metres(true_.h0 - 0.5), to: metres(true_.h0 + 0.099) });
        expect(searched.zeroFlow).toBe("found");
        expect(Math.abs(searched.zeroFlowStage - true_.h0)).toBeLessThan(1e-5);
        expect(relative(searched.exponent, true_.b)).toBeLessThan(1e-4);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  test("does not care for the units of discharge or the datum of stage", () => {
    const base = { c: 6, h0: 0.3, b: 1.8 };
    const fit = rateStage(on(base, 1), { stage: metres(0.3) });
    const moved = rateStage(on({ ...base, c: 60, h0: 5.3 }, 1), { stage: metres(5.3) });
    expect(relative(moved.coefficient, 10 * fit.coefficient)).toBeLessThan(1e-9);
    expect(relative(moved.exponent, fit.exponent)).toBeLessThan(1e-9);
    expect(relative(moved.scatter, fit.scatter)).toBeLessThan(1e-9);
  });

  test("predicts a gauging in a wider interval than the curve's, wider outside, with a caveat there", () => {
    const fit = rateStage(on({ c: 6, h0: 0, b: 1.8 }, 1), { stage: metres(0) });
    const inside = ratedDischarge(fit, metres(0.6));
    expect(inside.caveats).toEqual([]);
    expect(inside.prediction.min).toBeLessThan(inside.curve.min);
    expect(inside.prediction.max).toBeGreaterThan(inside.curve.max);
    expect(relative(inside.discharge ** 2, inside.prediction.min * inside.prediction.max)).toBeLessThan(
      1e-12,
    );
    const outside = ratedDischarge(fit, metres(3));
    expect(outside.caveats).toHaveLength(1);
    expect(outside.curve.max / outside.discharge).toBeGreaterThan(inside.curve.max / inside.discharge);
  });

  test("that searched its zero knows less than one that was told", () => {
    const gaugings = on({ c: 6, h0: 0, b: 1.8 }, 1);
    const searched = rateStage(gaugings, { from: metres(-0.5), to: metres(0.09) });
    const told = rateStage(gaugings, { stage: searched.zeroFlowStage });
    expect(searched.freedom).toBe(told.freedom - 1);
    expect(searched.exponentStandardError).toBeGreaterThan(told.exponentStandardError);
    const width = (r: ReturnType<typeof ratedDischarge>): number => r.curve.max / r.curve.min;
    expect(width(ratedDischarge(searched, metres(0.12)))).toBeGreaterThan(
      width(ratedDischarge(told, metres(0.12))),
    );
  });

  test("goes nearer to the gaugings that are stated to be better", () => {
    const bent = (u: number) =>
      heights.map((h, i) => gauging(h, 5 * h ** 2 * (i === 6 ? 1.2 : 1), i === 6 ? u : 0.05));
    const trusted = rateStage(bent(0.01), { stage: metres(0) });
    const doubted = rateStage(bent(0.5), { stage: metres(0) });
    expect(Math.abs(trusted.residuals[6]!)).toBeLessThan(Math.abs(doubted.residuals[6]!));
  });

  test("says when its zero lies at an end of the bracket", () => {
    const fit = rateStage(on({ c: 6, h0: 0, b: 1.8 }), { from: metres(-3), to: metres(-1) });
    expect(fit.zeroFlow).toBe("at the end of the bracket");
  });

  test.each([
    ["gaugings", () => rateStage(on({ c: 1, h0: 0, b: 2 }).slice(0, 2), { stage: metres(0) })],
    ["gaugings", () => rateStage(on({ c: 1, h0: 0, b: 2 }).slice(0, 3), { from: metres(-1), to: metres(0) })],
    ["stage of gauging 1", () => rateStage(on({ c: 1, h0: 0, b: 2 }), { stage: metres(0.2) })],
    [
      "discharge of gauging 1",
      () => rateStage([gauging(1, 0), gauging(2, 1), gauging(3, 2)], { stage: metres(0) }),
    ],
    ["bracket", () => rateStage(on({ c: 1, h0: 0, b: 2 }), { from: metres(0), to: metres(0) })],
    [
      "for all or for none",
      () => rateStage([gauging(1, 1, 0.1), gauging(2, 1), gauging(3, 2)], { stage: metres(0) }),
    ],
    [
      "tell the coefficients apart",
      () => rateStage([gauging(1, 1), gauging(1, 1.1), gauging(1, 2)], { stage: metres(0) }),
    ],
  ])("names its mistake: %s", (name, mistake) => {
    expect(mistake).toThrow(name);
  });
});

describe("hydraulic geometry", () => {
  const measured = fc.array(fc.record({ q: within(0.1, 50), w: within(2, 40), d: within(0.1, 3) }), {
    minLength: 3,
    maxLength: 12,
  });

  test("has exponents of sum 1 and coefficients of product 1, whatever was measured", () => {
    fc.assert(
      fc.property(
        measured.filter((all) => new Set(all.map((m) => Math.round(m.q))).size > 2),
        (all) => {
          const fit = fitGeometry(
            all.map(({ q, w, d }) => ({
              discharge: cubicMetresPerSecond(q),
              width: metres(w),
              meanDepth: metres(d),
            })),
          );
          const { width, meanDepth, meanSpeed } = fit;
          expect(Math.abs(width.exponent + meanDepth.exponent + meanSpeed.exponent - 1)).toBeLessThan(1e-9);
          expect(relative(width.coefficient * meanDepth.coefficient * meanSpeed.coefficient, 1)).toBeLessThan(
            1e-9,
          );
        },
      ),
      { seed: 2, numRuns: 100 },
    );
  });

  test("with published exponents goes through its one measurement and keeps w d v = Q", () => {
    const one = { discharge: cubicMetresPerSecond(3), width: metres(12), meanDepth: metres(0.5) };
    for (const kind of ["at a station", "downstream"] as const) {
      const geometry = geometryOf(one, kind);
      const there = streamAt(geometry, one.discharge);
      expect(there.width.value).toBeCloseTo(12, 12);
      expect(there.width.interval).toBeNull();
      expect(there.caveats).toEqual([]);
      const more = streamAt(geometry, cubicMetresPerSecond(9));
      expect(relative(more.width.value * more.meanDepth.value * more.meanSpeed.value, 9)).toBeLessThan(1e-12);
      expect(more.caveats).toHaveLength(1);
    }
  });

  test("holds a new measurement in its interval, the wider the surer", () => {
    const days = heights.map((h, i) => ({
      discharge: cubicMetresPerSecond(10 * h),
      width: metres(9 * h ** 0.2 * Math.exp(errors[i]!)),
      meanDepth: metres(0.6 * h ** 0.4),
    }));
    const fit = fitGeometry(days);
    const [sure, surer] = [0.8, 0.99].map((c) => streamAt(fit, cubicMetresPerSecond(4), c).width.interval!);
    expect(surer!.max - surer!.min).toBeGreaterThan(sure!.max - sure!.min);
    expect(() => streamAt(fit, cubicMetresPerSecond(0))).toThrow("discharge");
    expect(() => fitGeometry(days.slice(0, 2))).toThrow("measurements");
    expect(() => geometryOf({ ...days[0]!, width: metres(0) }, "downstream")).toThrow(
      "width of measurement 1",
    );
  });
});
