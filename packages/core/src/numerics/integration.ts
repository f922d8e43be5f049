/** Integration of smooth ordinary differential equations along a course of steps: laid out by their errors once, and followed as often as need be. */

import { QuantityError } from "../units/index.js";
import { dormandPrince, type ErrorNorm, type Slope } from "./dormand-prince.js";
import { growth, isPast, type Kink, leanOf, none, stepFrom } from "./kink.js";
import { findRoot } from "./root.js";

/** Steps over a span: of each its share of the span and its lean (see Stepper). */
export type Course = number[];

/** Is told the length done after every step. */
export type Mark = (done: number) => void;

export interface Integrator {
  /** Carries `y` over the length `span` in place, error per step at most `tolerance` in the norm, and adds its steps to `course`. */
  readonly lay: (y: Float64Array, span: number, tolerance: number, course: Course, mark?: Mark) => void;
  /** The same by the steps of a course, no errors asked: a smooth function of `y` and `span`. */
  readonly follow: (y: Float64Array, span: number, course: Course, mark?: Mark) => void;
}

/** A step that was tried: from where, how long, and `turn` at its start. */
interface Tried {
  readonly done: number;
  readonly h: number;
  readonly side: number;
}

/** To a tolerance above this, steps end on a kink but are not graded. */
const gradedTo = 1e-3;
/** A step with a larger error than this says nothing of where the kink is. */
const mostLocated = 0.1;

/** An integrator for an autonomous system of up to four equations (states and slopes always have four components); it owns its working space.
 *  Where the slope has a kink at the zero of `turn`, steps end there, graded towards it and away from it.
 *  Steps below 1e-12 of the span are accepted as they are: `lay` passes a jump of the slope.
 *  Throws QuantityError for a span that is not 0 or more, and where the slope is not finite. */
export function integrator(
  slope: Slope,
  norm: ErrorNorm,
  turn: (y: Float64Array) => number = () => 1,
): Integrator {
  const { first, trial, step, error } = dormandPrince(slope, norm);
  const end = new Float64Array(4);
  const between = new Float64Array(4);

  /** Where in the last step, of length h from `y`, the zero of `turn` lies as a share of it, by cubic Hermite interpolation. */
  function turnWithin(y: Float64Array, h: number): number {
    slope(trial, end, 0);
    const turnAt = (t: number): number => {
      const s = 1 - t;
      for (let i = 0; i < 4; i++) {
        const from = (1 + 2 * t) * y[i]! + t * h * first[i]!;
        const to = (1 + 2 * s) * trial[i]! - s * h * end[i]!;
        between[i] = s * s * from + t * t * to;
      }
      return turn(between);
    };
    return findRoot(turnAt, 0, 1, 1e-5).root;
  }

  /** The kink that a free step went over. */
  function found(y: Float64Array, { done, h }: Tried, graded: boolean): Kink {
    const to = turnWithin(y, h) * h;
    const at = done + to;
    return graded ? { at, before: to / 2, after: (h - to) / 2, aims: 2 } : { ...none, at };
  }
  /** The kink again where a step that was to end on it missed it, for what is left to end on it straight away. */
  function aimed({ done, h, side }: Tried, kink: Kink): Kink {
    const missed = h === kink.at - done && kink.aims > 0 ? turn(trial) / side : 0;
    if (!(Math.abs(missed) > 3e-3 && Math.abs(missed) < 0.5)) return kink;
    const to = h / (1 - missed);
    return { ...kink, at: done + to, before: 4 * to, aims: kink.aims - 1 };
  }

  function lay(y: Float64Array, span: number, tolerance: number, course: Course, mark?: Mark): void {
    requireSpan(span);
    const least = 1e-12 * span;
    let kink = none;
    let done = 0;
    let most = span;
    slope(y, first, 0);
    let side = turn(y);
    while (done < span) {
      const h = stepFrom(done, most, span, kink);
      const lean = leanOf(done, h, kink);
      step(y, h, lean);
      const size = error(h);
      const isFree = isPast(done, kink) && done !== kink.at;
      const crosses = isFree && size < mostLocated && side * turn(trial) < 0 && h > 1e-6 * span;
      const tried = { done, h, side };
      const seen = crosses ? found(y, tried, tolerance < gradedTo) : aimed(tried, kink);
      if (crosses) most = span;
      if (seen !== kink) {
        kink = seen;
        continue;
      }
      const factor = 0.9 * Math.sqrt(Math.sqrt(Math.sqrt(tolerance / size)));
      if (!(size <= tolerance) && h > least) {
        most = Math.max(least, h * (Number.isNaN(factor) ? 0.1 : Math.min(0.9, Math.max(0.1, factor))));
        continue;
      }
      if (!Number.isFinite(size)) throw new QuantityError("slope", "finite", size);
      course.push(h / span, lean);
      y.set(trial);
      most = h === kink.at - done ? span : Math.max(least, h * growth(factor, lean));
      done = h === kink.at - done ? kink.at : span - done - h <= 1e-14 * span ? span : done + h;
      mark?.(done);
      slope(y, first, 0);
      side = turn(y);
    }
  }

  function follow(y: Float64Array, span: number, course: Course, mark?: Mark): void {
    requireSpan(span);
    let done = 0;
    for (let i = 0; i < course.length; i += 2) {
      const h = course[i]! * span;
      slope(y, first, 0);
      step(y, h, course[i + 1]!);
      y.set(trial);
      done += h;
      mark?.(done);
    }
  }
  return { lay, follow };
}

function requireSpan(span: number): void {
  if (!(span >= 0 && span < Number.POSITIVE_INFINITY)) throw new QuantityError("span", "0 or more", span);
}
