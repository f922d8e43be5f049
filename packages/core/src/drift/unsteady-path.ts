/** The path of a drift, thinned to a few hundred instants while it is made. */

import { heightAboveBed, metres, metresPerSecond, newtons, seconds } from "../units/index.js";
import type { DriftInstant, Position } from "./unsteady-types.js";

/** Numbers of one instant: time, float (3), excess of the lowest sinker, tension at the float, then sinkers (3 each). */
export const sinkersFrom = 6;

/** An instant of the path as plain data. */
export function instantOf(numbers: Float64Array): DriftInstant {
  const place = (from: number): Position => ({
    downstream: metres(numbers[from]!),
    across: metres(numbers[from + 1]!),
    heightAboveBed: heightAboveBed(numbers[from + 2]!),
  });
  const sinkers: Position[] = [];
  for (let from = sinkersFrom; from < numbers.length; from += 3) sinkers.push(place(from));
  return {
    time: seconds(numbers[0]!),
    float: place(1),
    sinkers,
    excess: metresPerSecond(numbers[4]!),
    tensionAtFloat: newtons(numbers[5]!),
  };
}

export interface Path {
  readonly add: () => void;
  /** Keeps the last instant, whatever the thinning. */
  readonly end: () => void;
  readonly kept: () => readonly Float64Array[];
}

/** Keeps every instant until there are too many, then every second, every fourth, ... */
export function compilePath(sinkers: number, most: number, write: (instant: Float64Array) => void): Path {
  const size = sinkersFrom + 3 * sinkers;
  const kept: Float64Array[] = [];
  let stride = 1;
  let since = 0;
  const keep = (): void => {
    const instant = new Float64Array(size);
    write(instant);
    kept.push(instant);
  };
  const add = (): void => {
    if (most === 0 || since++ % stride !== 0) return;
    if (kept.length >= most) {
      for (let i = 1; 2 * i < kept.length; i++) kept[i] = kept[2 * i]!;
      kept.length = Math.ceil(kept.length / 2);
      stride *= 2;
      since = 1;
    }
    keep();
  };
  const end = (): void => {
    if (most > 0 && (since - 1) % stride !== 0) keep();
    since = 1;
  };
  return { add, end, kept: () => kept };
}
