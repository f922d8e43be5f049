/** One unbroken piece of water surface in one reach, followed from its control: subcritical upstream, supercritical downstream. */

import { exp, ln } from "../elementary/index.js";
import { type ChebyshevSum, chebyshevSum, findRoot } from "../numerics/index.js";
import { QuantityError } from "../units/index.js";
import type { GradualFlow } from "./gradual.js";

export type Branch = "subcritical" | "supercritical";

/** Depth against the distance from the control, counted the way the piece is followed. */
export interface SurfaceCurve {
  readonly branch: Branch;
  readonly length: number;
  /** Why it is no longer than it is. */
  readonly end: "end of the reach" | "critical depth" | "section full";
  readonly depthAt: (distance: number) => number;
}

/** A stretch of the curve: s from `from` to `to` covers the distance from `start` on. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly rate: ChebyshevSum;
}

/** Distance over s. */
type Rate = (s: number) => number;

/** How the depth runs with a parameter s, chosen so that distance is a smooth function of it. */
interface Course {
  readonly depth: (s: number) => number;
  readonly perParameter: (s: number) => number;
  /** How much more distance may be wrong at s for the same error in depth. */
  readonly slack: (s: number) => number;
  readonly last: number;
  readonly end: "settles" | "critical depth" | "section full" | "open";
}

/** Normal depth is reached when the rest is this part of it. */
const settled = 1e-10;

/** Followed from its control, a surface moves towards normal depth (upwards where there is none) until critical depth or a full section stops it.
 *  In a prismatic reach the distance is the integral of −|1 − F²|/(S0 − Sf) over depth: Chebyshev sums over stretches as long as they hold to 1e-10 of the reach.
 *  The approach to normal depth is exponential, so s is the logarithm of what is left. */
export function surfaceCurve(flow: GradualFlow, start: number, branch: Branch, reach: number): SurfaceCurve {
  const course = courseFrom(flow, start, branch);
  const rate: Rate = (s) => -flow.perRise(course.depth(s)) * course.perParameter(s);
  const stretches: Stretch[] = [];
  let s = 0;
  let done = 0;
  let step = course.last / 8;
  const tolerance = 1e-10 * reach;
  while (s < course.last && done < reach) {
    const to = Math.min(course.last, s + step);
    const sum = chebyshevSum(rate, s, to);
    if (sum.error > tolerance * course.slack(s) && to - s > 1e-4 * course.last) {
      step = (to - s) / 2;
      continue;
    }
    stretches.push({ from: s, to, start: done, rate: sum });
    done += sum.integral;
    s = to;
    step *= 2;
  }
  if (!Number.isFinite(done))
    throw new QuantityError(
      "distance along the water surface",
      "finite: its depths lie too many powers of ten apart",
      done,
    );
  const reached = done >= reach || course.end === "settles";
  const length = reached ? reach : done;
  const depthAt = (distance: number): number => {
    const stretch = stretchAt(stretches, distance);
    if (stretch === undefined) return course.depth(distance <= 0 ? 0 : course.last);
    return course.depth(parameterAt(stretch, distance));
  };
  const end = reached || course.end === "open" ? "end of the reach" : course.end;
  return { branch, length, end, depthAt };
}

function courseFrom(flow: GradualFlow, start: number, branch: Branch): Course {
  const still = {
    depth: () => start,
    perParameter: () => 0,
    slack: () => 1,
    last: 0,
    end: "settles",
  } as const;
  const excess = flow.excessSlope(start);
  if (flow.normals.some((y) => Math.abs(start - y) <= settled * y)) return still;
  const rises = excess < 0;
  // a surface at critical depth that would have to cross it has no length
  const towardsOther = rises === (branch === "supercritical");
  if (Math.abs(start - flow.critical) <= 1e-12 * flow.critical && towardsOther)
    return { ...still, end: "critical depth" };
  const ahead = (y: number): boolean => (rises ? y > start : y < start);
  const nearer = (a: number, b: number): number => (Math.abs(a - start) < Math.abs(b - start) ? a : b);
  const target = flow.normals.filter(ahead).reduce(nearer, rises ? Number.POSITIVE_INFINITY : 0);
  const critical = towardsOther && ahead(flow.critical) && nearer(flow.critical, target) === flow.critical;
  if (critical && Math.abs(flow.critical - target) > settled * flow.critical)
    return straight(start, flow.critical, "critical depth");
  if (target !== Number.POSITIVE_INFINITY) return settling(start, target);
  if (flow.greatest !== Number.POSITIVE_INFINITY) return straight(start, flow.greatest, "section full");
  return {
    depth: (s) => start * exp(s),
    perParameter: (s) => start * exp(s),
    slack: () => 1,
    last: 64,
    end: "open",
  };
}

function straight(start: number, target: number, end: "critical depth" | "section full"): Course {
  return {
    depth: (s) => start + (target - start) * s,
    perParameter: () => target - start,
    slack: () => 1,
    last: 1,
    end,
  };
}

function settling(start: number, target: number): Course {
  const gap = start - target;
  return {
    depth: (s) => target + gap * exp(-s),
    perParameter: (s) => -gap * exp(-s),
    slack: exp,
    last: ln(Math.abs(gap) / (settled * target)),
    end: "settles",
  };
}

function stretchAt(stretches: readonly Stretch[], distance: number): Stretch | undefined {
  if (!(distance > 0)) return undefined;
  let low = 0;
  let high = stretches.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const { start, rate } = stretches[middle]!;
    if (start + rate.integral < distance) low = middle + 1;
    else high = middle;
  }
  return stretches[low];
}

/** The s at which a stretch has covered a distance: Newton, whose slope is known; the bracketed root where that strays. */
function parameterAt({ from, to, start, rate }: Stretch, distance: number): number {
  const left = distance - start;
  // the last bits of the sums
  if (left >= rate.integral) return to;
  let s = from + (to - from) * (left / rate.integral);
  for (let n = 0; n < 12; n++) {
    const change = (rate.integralAt(s) - left) / rate.valueAt(s);
    s -= change;
    if (!(s >= from && s <= to)) break;
    // the next change would be of the order of this one squared
    if (Math.abs(change) <= 1e-8 * (to - from)) return s;
  }
  const missing = (at: number): number =>
    at === from ? -left : at === to ? rate.integral - left : rate.integralAt(at) - left;
  return findRoot(missing, from, to, 1e-13 * (to - from)).root;
}
