/** Reading a gauge at an hour: between its readings, never across a gap, never from a flagged one. */

import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  QuantityError,
  requirePositive,
  requireWithin,
  type Seconds,
  seconds,
} from "../units/index.js";

export interface GaugeReading {
  /** Seconds from any moment that all the readings share. */
  readonly time: Seconds;
  /** Null where the gauge gave none. */
  readonly discharge: CubicMetresPerSecond | null;
  /** Why it is not to be trusted, in the words of the gauge: it is left out. */
  readonly flag?: string;
}

/** What was left out of a series, and where it has gaps. */
export interface GaugeReport {
  readonly used: number;
  readonly missing: number;
  readonly flagged: readonly { readonly flag: string; readonly count: number }[];
  /** Readings of a time already read; the first counts. */
  readonly repeated: number;
  /** Pairs of neighbouring readings farther apart than the longest gap. */
  readonly gaps: readonly { readonly from: Seconds; readonly to: Seconds }[];
}

export type GaugeAt =
  | {
      readonly kind: "read";
      readonly discharge: CubicMetresPerSecond;
      /** Change per second between the two readings: above 0 the river rises. */
      readonly risingPerSecond: number;
      readonly report: GaugeReport;
    }
  /** The hour lies in a gap. */
  | { readonly kind: "gap"; readonly from: Seconds; readonly to: Seconds; readonly report: GaugeReport }
  /** The hour lies before the first or after the last reading. Nothing is extrapolated. */
  | {
      readonly kind: "outside";
      readonly first: Seconds;
      readonly last: Seconds;
      readonly report: GaugeReport;
    };

export interface GaugeQuestion {
  readonly readings: readonly GaugeReading[];
  readonly time: Seconds;
  /** Longest time between two readings to read across; 6 h unless given, an assumption. */
  readonly longestGap?: Seconds;
}

/** The discharge at a time, on the straight line between the readings before and after it. Readings may come in any order.
 *  Throws QuantityError for a series without a reading to use, or a discharge below 0. */
export function readGauge({ readings, time, longestGap = seconds(21_600) }: GaugeQuestion): GaugeAt {
  requirePositive("longest gap of the gauge", longestGap, "s");
  const { kept, ...left } = sortOut(readings);
  const report: GaugeReport = { ...left, used: kept.length, gaps: gapsOf(kept, longestGap) };
  const first = kept[0];
  const last = kept.at(-1);
  if (first === undefined || last === undefined)
    throw new QuantityError("gauge readings", "one or more that are neither missing nor flagged", "none");
  if (time < first.time || time > last.time)
    return { kind: "outside", first: first.time, last: last.time, report };
  const next = kept.findIndex((one) => one.time >= time);
  const after = kept[next] ?? last;
  const before = kept[next - 1] ?? after;
  if (after.time - before.time > longestGap && time !== after.time)
    return { kind: "gap", from: before.time, to: after.time, report };
  const span = after.time - before.time;
  const slope = span > 0 ? (after.discharge - before.discharge) / span : 0;
  return {
    kind: "read",
    discharge: cubicMetresPerSecond(before.discharge + slope * (time - before.time)),
    risingPerSecond: slope,
    report,
  };
}

interface Kept {
  readonly time: Seconds;
  readonly discharge: CubicMetresPerSecond;
}

/** The readings to use by time, and how many were not. */
function sortOut(
  readings: readonly GaugeReading[],
): Pick<GaugeReport, "missing" | "flagged" | "repeated"> & { readonly kept: readonly Kept[] } {
  const flags = new Map<string, number>();
  const byTime = new Map<number, Kept>();
  let [missing, repeated] = [0, 0];
  readings.forEach(({ time, discharge, flag }, i) => {
    if (discharge !== null) requireWithin(`discharge of gauge reading ${i + 1}`, discharge, 0, 1e6, "m³/s");
    if (flag !== undefined) flags.set(flag, (flags.get(flag) ?? 0) + 1);
    else if (discharge === null) missing++;
    else if (byTime.has(time)) repeated++;
    else byTime.set(time, { time, discharge });
  });
  const kept = [...byTime.values()].sort((a, b) => a.time - b.time);
  return { kept, missing, repeated, flagged: [...flags].map(([flag, count]) => ({ flag, count })) };
}

function gapsOf(kept: readonly Kept[], longest: number): GaugeReport["gaps"] {
  return kept.flatMap(({ time: to }, i) => {
    const from = kept[i - 1]?.time ?? to;
    return to - from > longest ? [{ from, to }] : [];
  });
}
