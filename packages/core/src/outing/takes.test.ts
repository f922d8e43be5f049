import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seconds } from "../units/index.js";
import { type Takes, weighTakes } from "./index.js";

const count = fc.integer({ min: 0, max: 60 });
const caught = (dry: number, nymph: number, more: Partial<Takes> = {}): Takes => ({
  dry: { takes: dry },
  nymph: { takes: nymph },
  ...more,
});
const timed = (dry: number, nymph: number): Pick<Takes, "effort"> => ({
  effort: { kind: "time", dry: seconds(60 * dry), nymph: seconds(60 * nymph) },
});

describe("the probability", () => {
  // arcsine law: 1 − (2/π) arcsin √(3/4)
  test("is a third before the first take", () =>
    expect(weighTakes(caught(0, 0)).probability).toBeCloseTo(1 / 3, 14));

  test("of the other way round is the rest", () => {
    fc.assert(
      fc.property(count, count, fc.double({ min: 0.2, max: 5, noNaN: true }), (dry, nymph, threshold) => {
        const one = weighTakes(caught(dry, nymph, { threshold })).probability;
        const other = weighTakes(caught(nymph, dry, { threshold: 1 / threshold })).probability;
        expect(Math.abs(one + other - 1)).toBeLessThan(1e-12);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("asks for the ratio of the efforts only: a dry fished half as long is as a threshold of half", () => {
    const whole = weighTakes(caught(20, 5, { threshold: 1.5 })).probability;
    expect(weighTakes(caught(20, 5, timed(30, 60))).probability).toBeCloseTo(whole, 14);
    expect(weighTakes(caught(20, 5, timed(60, 120))).probability).toBeCloseTo(whole, 14);
    const drifts = { kind: "drifts", dry: 30, nymph: 60 } as const;
    expect(weighTakes(caught(20, 5, { effort: drifts })).probability).toBeCloseTo(whole, 14);
  });
});

test("the interval lies on one side of the threshold exactly when there is a verdict", () => {
  const verdicts = new Set<string>();
  const confidence = fc.double({ min: 0.6, max: 0.99, noNaN: true });
  fc.assert(
    fc.property(count, count, confidence, (dry, nymph, sure) => {
      const { verdict, ratio } = weighTakes(caught(dry, nymph, { confidence: sure }));
      verdicts.add(verdict);
      expect(ratio.low < ratio.median && ratio.median < ratio.high).toBe(true);
      expect(verdict === "cut").toBe(ratio.low >= 3);
      expect(verdict === "keep").toBe(ratio.high <= 3);
    }),
    { seed: 2, numRuns: 400 },
  );
  expect(verdicts.size).toBe(3);
});

describe("how many more decide", () => {
  test("the fewest on one fly do, and one fewer do not", () => {
    fc.assert(
      fc.property(count, count, (dry, nymph) => {
        const { toCut, toKeep } = weighTakes(caught(dry, nymph)).fewest;
        if (toCut === null || toKeep === null) throw new Error("beyond");
        expect(weighTakes(caught(dry + toCut, nymph)).verdict).toBe("cut");
        expect(weighTakes(caught(dry, nymph + toKeep)).verdict).toBe("keep");
        if (toCut > 0) expect(weighTakes(caught(dry + toCut - 1, nymph)).verdict).not.toBe("cut");
        if (toKeep > 0) expect(weighTakes(caught(dry, nymph + toKeep - 1)).verdict).not.toBe("keep");
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  // 12 to 2 in half an hour: with the half takes beforehand 12.5 of 15 go on coming to the dry
  test("at the present rates: as many more drawn out at that share decide", () => {
    const { verdict, more } = weighTakes(caught(12, 2, timed(30, 30)));
    expect(verdict).toBe("too-early");
    if (more.kind !== "more") throw new Error(more.kind);
    expect(more.towards).toBe("cut");
    const share = 12.5 / 15;
    expect(more.time).toBeCloseTo((60 * 30 * more.takes) / 15, 9);
    const drawn = (takes: number) =>
      weighTakes(caught(0, 0, { prior: { dry: 12.5 + share * takes, nymph: 2.5 + (1 - share) * takes } }));
    expect(drawn(more.takes).verdict).toBe("cut");
    for (let fewer = 0; fewer < more.takes; fewer++) expect(drawn(fewer).verdict).toBe("too-early");
  });

  test("a ratio on the threshold itself is never decided", () => {
    const { more } = weighTakes(caught(300, 100));
    expect(more).toEqual({ kind: "beyond", takes: 10_000 });
  });

  test("nothing is told from nothing, and nothing more is asked once there is a verdict", () => {
    expect(weighTakes(caught(0, 0)).more).toEqual({ kind: "nothing-seen" });
    expect(weighTakes(caught(40, 1)).more).toEqual({ kind: "decided" });
  });
});

test("misses count as takes unless they are left out", () => {
  const missed = { dry: { takes: 10, missed: 30 }, nymph: { takes: 4, missed: 1 } };
  expect(weighTakes(missed).probability).toBe(weighTakes(caught(40, 5)).probability);
  const hooked = weighTakes({ ...missed, countMisses: false });
  expect(hooked.probability).toBe(weighTakes(caught(10, 4)).probability);
});

test("the bare rule stands beside, however few the takes", () => {
  expect(weighTakes(caught(4, 1))).toMatchObject({ verdict: "too-early", ruleOfThumb: "cut" });
  expect(weighTakes(caught(3, 1))).toMatchObject({ observedRatio: 3, ruleOfThumb: "keep" });
  expect(weighTakes(caught(2, 0))).toMatchObject({ observedRatio: null, ruleOfThumb: "cut" });
  expect(weighTakes(caught(0, 0)).ruleOfThumb).toBe("nothing-seen");
});

test("thousands of takes and none at all are answered", () => {
  for (const [dry, nymph] of [
    [1e5, 0],
    [0, 1e5],
    [1e5, 1e5],
    [75_000, 25_000],
  ] as const) {
    const { probability, ratio } = weighTakes(caught(dry, nymph));
    expect(probability >= 0 && probability <= 1).toBe(true);
    expect(ratio.low > 0 && Number.isFinite(ratio.high)).toBe(true);
  }
});

test.each<[string, Takes]>([
  ["takes on the nymph", caught(1, 0.5)],
  ["takes on the dry", caught(-1, 0)],
  ["missed takes on the dry", { dry: { takes: 1, missed: Number.NaN }, nymph: { takes: 0 } }],
  ["effort on the nymph", caught(1, 0, timed(1, 0))],
  ["prior takes on the dry", caught(1, 0, { prior: { dry: 0, nymph: 1 } })],
  ["ratio of takes to decide by", caught(1, 0, { threshold: 0 })],
  ["confidence", caught(1, 0, { confidence: 1 })],
])("names its %s outside the range", (name, given) => expect(() => weighTakes(given)).toThrow(name));
