import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, type GaugeReading, readGauge, seconds } from "../index.js";

const hour = 3600;
const reading = (hours: number, discharge: number | null, flag?: string): GaugeReading => ({
  time: seconds(hours * hour),
  discharge: discharge === null ? null : cubicMetresPerSecond(discharge),
  ...(flag === undefined ? {} : { flag }),
});
const series = [reading(0, 10), reading(1, 12), reading(2, 11), reading(10, 20), reading(11, 21)];
const at = (hours: number, readings: readonly GaugeReading[] = series) =>
  readGauge({ readings, time: seconds(hours * hour) });

describe("a gauge at an hour", () => {
  test.each([
    [0, 10],
    [0.5, 11],
    [1.5, 11.5],
    [11, 21],
  ])("at %s h it reads %s", (hours, discharge) => {
    expect(at(hours)).toMatchObject({ kind: "read", discharge });
  });

  test("it says how fast the river rises", () => {
    const read = at(10.5);
    expect(read.kind === "read" && Math.abs(read.risingPerSecond * hour - 1) < 1e-12).toBe(true);
  });

  test("between readings it stays between them, in whatever order they come", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.shuffledSubarray(series, { minLength: 5 }),
        (t, any) => {
          const read = at(t, any);
          expect(read).toEqual(at(t));
          expect(read.kind === "read" && read.discharge >= 10 && read.discharge <= 12).toBe(true);
        },
      ),
      { seed: 2, numRuns: 100 },
    );
  });

  test("across a gap it reads nothing, at its edges it does", () => {
    expect(at(5)).toMatchObject({ kind: "gap", from: 2 * hour, to: 10 * hour });
    expect(at(10)).toMatchObject({ kind: "read", discharge: 20 });
    expect(at(0.5).report.gaps).toEqual([{ from: 2 * hour, to: 10 * hour }]);
  });

  test("before the first and after the last it extrapolates nothing", () => {
    expect(at(-0.1)).toMatchObject({ kind: "outside", first: 0 });
    expect(at(11.1)).toMatchObject({ kind: "outside", last: 11 * hour });
  });

  test("flagged, missing and repeated readings are left out and counted", () => {
    const messy = [
      ...series,
      reading(0.5, 99, "ice"),
      reading(1.5, 99, "ice"),
      reading(1.7, null),
      reading(1, 55),
    ];
    expect(at(0.5, messy)).toMatchObject({ kind: "read", discharge: 11 });
    expect(at(0.5, messy).report).toMatchObject({
      used: 5,
      missing: 1,
      repeated: 1,
      flagged: [{ flag: "ice", count: 2 }],
    });
  });

  test("a series of nothing is refused, and so is a river that runs backwards", () => {
    expect(() => at(0, [reading(0, null)])).toThrow("gauge readings must be one or more");
    expect(() => at(0, [reading(0, -3)])).toThrow(
      "discharge of gauge reading 1 must be from 0 to 1000000 m³/s, got -3",
    );
  });
});
