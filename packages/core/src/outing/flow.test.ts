import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  celsius,
  cubicMetresPerSecond,
  type FlowMethod,
  type FlowQuestion,
  type FlowShift,
  heightAboveBed,
  metres,
  metresPerSecond,
  rectangularSection,
  type StopPair,
  seconds,
  shiftFlow,
  surveyedSection,
  trapezoidalSection,
  waterColumn,
} from "../index.js";

const q = cubicMetresPerSecond;
const observation = { depth: metres(0.8), surfaceSpeed: metresPerSecond(0.9), temperature: celsius(11) };
const published: FlowMethod = { by: "published-exponents" };
const manning = { law: "manning", n: 0.035 } as const;
const channel = {
  section: trapezoidalSection(metres(12), 2),
  friction: manning,
  slope: 0.004,
};
const section: FlowMethod = { by: "section", channel };

function shift(now: number, method: FlowMethod, more: Partial<FlowQuestion> = {}) {
  const width = metres(14);
  const shifted: FlowShift = shiftFlow({
    observation,
    width,
    measuredAt: q(10),
    now: q(now),
    method,
    ...more,
  });
  if (shifted.kind !== "shifted") throw new Error(`expected a shift, got ${shifted.kind}`);
  return shifted;
}

const same = (value: number | undefined, expected: number) =>
  expect(Math.abs((value ?? Number.NaN) / expected - 1)).toBeLessThan(1e-12);
const ratio = fc.double({ min: 0.2, max: 5, noNaN: true });

describe("whatever the method", () => {
  test.each([published, section])("$by: an unchanged gauge changes nothing", (method) => {
    const { depth, surfaceSpeed } = shift(10, method);
    expect(Math.abs(depth.value / 0.8 - 1)).toBeLessThan(1e-12);
    expect(Math.abs(surfaceSpeed.value / 0.9 - 1)).toBeLessThan(1e-12);
  });

  test.each([published, section])("$by: more water is deeper, quicker and no narrower", (method) => {
    fc.assert(
      fc.property(ratio, fc.double({ min: 1.01, max: 2, noNaN: true }), (r, more) => {
        const low = shift(10 * r, method);
        const high = shift(10 * r * more, method);
        expect(high.depth.value).toBeGreaterThan(low.depth.value);
        expect(high.surfaceSpeed.value).toBeGreaterThan(low.surfaceSpeed.value);
        expect(high.width?.value ?? 0).toBeGreaterThanOrEqual(low.width?.value ?? 0);
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  test.each([published, section])(
    "$by: the value lies in its interval, and a surer interval is wider",
    (method) => {
      const width = (confidence: number) => {
        const { depth } = shift(25, method, { confidence });
        expect(depth.interval?.min).toBeLessThan(depth.value);
        expect(depth.interval?.max).toBeGreaterThan(depth.value);
        return (depth.interval?.max ?? 0) - (depth.interval?.min ?? 0);
      };
      expect(width(0.99)).toBeGreaterThan(width(0.8));
    },
  );
});

test("published exponents at a station: 0.40, 0.34, 0.26. Leopold and Maddock 1953, as quoted", () => {
  const { depth, surfaceSpeed, width, grounds } = shift(20, published);
  same(depth.value / 0.8, 2 ** 0.4);
  same(surfaceSpeed.value / 0.9, 2 ** 0.34);
  same((width?.value ?? 0) / 14, 2 ** 0.26);
  expect(grounds.relations).toEqual(["LeopoldMaddock1953"]);
});

test("a wide rectangle under Manning: depth goes as Q^(3/5), speed as Q^(2/5). Closed form", () => {
  const wide = { section: rectangularSection(metres(5000)), friction: manning, slope: 0.002 };
  const depth = (0.035 * (1000 / 5000)) ** 0.6 / 0.002 ** 0.3;
  const shifted = shift(
    3000,
    { by: "section", channel: wide },
    {
      measuredAt: q(1000),
      observation: { ...observation, depth: metres(depth) },
    },
  );
  expect(Math.abs(shifted.depth.value / depth / 3 ** 0.6 - 1)).toBeLessThan(1e-3);
  expect(Math.abs(shifted.surfaceSpeed.value / 0.9 / 3 ** 0.4 - 1)).toBeLessThan(1e-3);
});

test("pairs that lie on a power give it back", () => {
  const at = (flow: number): StopPair => ({
    discharge: q(flow),
    depth: metres(0.8 * (flow / 10) ** 0.45),
    surfaceSpeed: metresPerSecond(0.9 * (flow / 10) ** 0.3),
  });
  const shifted = shift(30, { by: "pairs", pairs: [at(4), at(18), at(40)] });
  expect(Math.abs(shifted.depth.value / (0.8 * 3 ** 0.45) - 1)).toBeLessThan(1e-12);
  expect(Math.abs(shifted.surfaceSpeed.value / (0.9 * 3 ** 0.3) - 1)).toBeLessThan(1e-12);
  same(shifted.width?.value, 14 * 3 ** 0.26);
  expect(shifted.grounds.caveats).toEqual([]);
  const beyond = shift(60, { by: "pairs", pairs: [at(4), at(18), at(40)] });
  expect(beyond.grounds.caveats).toMatchObject([{ quantity: "discharge, m³/s", max: 40, received: 60 }]);
});

test("what was measured in the column moves with it, and timed floats are spent", () => {
  const points = [
    { heightAboveBed: heightAboveBed(0.2), speed: metresPerSecond(0.4) },
    { heightAboveBed: heightAboveBed(0.8), speed: metresPerSecond(0.9) },
  ];
  const floats = [{ distance: metres(9), time: seconds(10) }];
  const { observation: moved, depth } = shift(20, published, {
    observation: { depth: metres(0.8), timedFloats: floats, points },
  });
  expect(moved.timedFloats).toBeUndefined();
  same(moved.points?.[1]?.heightAboveBed, depth.value);
  same(waterColumn(moved).surfaceSpeed, 0.9 * 2 ** 0.34);
});

describe("a physical no", () => {
  test("the water leaves a shallow spot", () => {
    const shallow = { ...observation, depth: metres(0.15) };
    const dry = shiftFlow({ observation: shallow, measuredAt: q(10), now: q(2), method: section });
    expect(dry).toMatchObject({ kind: "dry" });
  });

  test("a survey does not carry the flood", () => {
    const points = [
      [0, 1.5],
      [2, 0],
      [12, 0],
      [14, 1.5],
    ].map(([station, elevation]) => ({ station: metres(station ?? 0), elevation: metres(elevation ?? 0) }));
    const surveyed = { ...channel, section: surveyedSection({ points }) };
    const flood = shiftFlow({
      observation,
      measuredAt: q(10),
      now: q(900),
      method: { by: "section", channel: surveyed },
    });
    expect(flood).toMatchObject({ kind: "not-carried", discharge: 900, why: "over-capacity" });
  });
});

test.each([
  [{ now: q(0) }, "discharge now must be from 0.000001 to 1000000 m³/s, got 0"],
  [{ now: q(5000) }, "discharge now over that when the stop was measured must be from 0.01 to 100, got 500"],
  [{ confidence: 0.2 }, "confidence must be from 0.5 to 0.9999, got 0.2"],
  [
    { method: { by: "pairs", pairs: [] } as const },
    "pairs must be two or more besides the stop itself, got 0",
  ],
  [
    { method: { by: "section", channel, station: metres(3) } as const },
    "station must be given with a surveyed section only, got 3",
  ],
])("%o is refused", (wrong, message) => {
  const question = { observation, measuredAt: q(10), now: q(20), method: published, ...wrong };
  expect(() => shiftFlow(question)).toThrow(message);
});
