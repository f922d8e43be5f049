/** One rig at one drift speed: the line integrated from its lowest point up, every force included. */

import type { Column } from "../column/index.js";
import { speedProfile } from "../column/index.js";
import { type FloatKernel, floatKernel, lineKernel, sinkerKernel, submergedWeight } from "../forces/index.js";
import { integrator, rungeKutta } from "../numerics/index.js";
import type { Rig, Section } from "../rig/index.js";
import { requirePositive } from "../units/index.js";
import type { Water } from "../water/index.js";
import { bedFriction } from "./bed-friction.js";

/** Where the line starts, as one continuous number q from the surface to a rig that lies on the bed altogether.
 *  q >= 0: the lowest sinker hangs at height q above the bed. q < 0: the bed carries something: from 0 to -1 a growing share of the
 *  lowest sinker's weight, from -1 to -2 a growing share of the line above it lies down as well, then the next sinker and its line.
 *  The vertical reach of what still hangs falls continuously to nothing at q = -2 n, so a rig of any length finds its bed contact by a bracket. */
export type Support = number;

/** What arrives at the upper end of the line. */
export interface TopOfLine {
  height: number;
  /** Force of the float on the line: downstream and up, N. */
  tow: number;
  load: number;
}

export interface TracedPoint {
  readonly downstream: number;
  readonly height: number;
  readonly tension: number;
}

export interface TracedBody extends TracedPoint {
  readonly relativeSpeed: number;
}

export interface Trace {
  /** From the top down, x from the lowest point that hangs. */
  readonly points: readonly TracedPoint[];
  readonly sinkers: readonly TracedBody[];
  readonly reaction: number;
  readonly lyingLine: number;
}

export type Shot = (driftSpeed: number, support: Support, friction: number) => Readonly<TopOfLine>;

export interface Hang {
  readonly depth: number;
  readonly surfaceSpeed: number;
  readonly speedAt: (height: number) => number;
  readonly float: FloatKernel;
  readonly sections: number;
  readonly length: number;
  /** Submerged weight of all sinkers and lines, N. */
  readonly weight: number;
  /** Integrates the line; `friction` is the bed friction over its greatest value, positive downstream. The same object is returned each time. */
  readonly shoot: Shot;
  /** As `shoot`, to another relative error per step. */
  readonly shootTo: (tolerance: number) => Shot;
  /** As `shoot`, by a few fixed Runge-Kutta steps: cheap, to be refined; not finite where the line is too stiff for it. */
  readonly roughShoot: Shot;
  readonly trace: (driftSpeed: number, support: Support, friction: number) => Trace;
  /** How often `shoot` was called. */
  readonly shots: () => number;
}

/** A state of the line after a step, and how far along its section. */
interface Knot {
  readonly at: number;
  readonly y: Float64Array;
}

interface Piece {
  readonly length: number;
  readonly normal: (speed: number) => number;
  readonly tangential: number;
  readonly weight: number;
  readonly sinkerWeight: number;
  readonly sinkerDrag: (speed: number, along: number) => number;
}

/** Error per step of the line, relative. The estimate is far above the error of the 8th order step: tops agree to about 1e-10. */
const tolerance = 5e-8;
/** Steps per section of the rough shot. */
const roughSteps = 6;
/** Points per section of a trace. */
const tracePieces = 8;

/** Compiles a rig in a column. Throws QuantityError for a sinker that floats or a line lighter than the water. */
export function hang(rig: Rig, column: Column): Hang {
  return hangFrom(floatKernel(rig.float, column.water), rig.sections, column);
}

/** As `hang`, for a float that is compiled already. */
export function hangFrom(float: FloatKernel, sections: readonly Section[], column: Column): Hang {
  const speedAt = speedProfile(column);
  const pieces = sections.map((section) => compile(section, column.water));
  const count = pieces.length;
  const length = pieces.reduce((sum, p) => sum + p.length, 0);
  let drift = 0;
  let piece = pieces[0]!;
  let shots = 0;
  const top: TopOfLine = { height: 0, tow: 0, load: 0 };

  // State: height z, tension components Tx and Tz, and x. dr/ds = T/|T|, dT/ds = −f.
  function slope(y: Float64Array, k: Float64Array, at: number): void {
    const Tx = y[1]!;
    const Tz = y[2]!;
    const square = Tx * Tx + Tz * Tz;
    const perTension = square > 0 ? 1 / Math.sqrt(square) : 0;
    const tx = Tx * perTension;
    const tz = square > 0 ? Tz * perTension : 1;
    const w = speedAt(y[0]!) - drift;
    const across = w * tz;
    const along = w * tx;
    const fn = piece.normal(Math.abs(across)) * across;
    const ft = piece.tangential * Math.abs(along) * along;
    k[at] = tz;
    k[at + 1] = -fn * tz - ft * tx;
    k[at + 2] = fn * tx - ft * tz + piece.weight;
    k[at + 3] = tx;
  }
  function norm(y: Float64Array, error: Float64Array): number {
    const T = Math.sqrt(y[1]! * y[1]! + y[2]! * y[2]!) + 1e-300;
    const place = Math.abs(error[0]!) / length;
    const force = (Math.abs(error[1]!) + Math.abs(error[2]!)) / T;
    return Math.max(place, force);
  }
  const state = new Float64Array(4);
  // the drag turns over, with a kink, where the water runs at the drift speed
  const turn = (y: Float64Array): number => speedAt(y[0]!) - drift;
  const lineIntegrator = integrator(slope, norm, turn);
  const bed = { reaction: 0, lying: 0, index: 0, remaining: 0 };
  /** Sets the state at the lowest point that hangs, and in `bed` what lies below it. */
  function begin(y: Float64Array, support: Support, friction: number): void {
    bed.reaction = 0;
    bed.lying = 0;
    bed.index = count - 1;
    y[0] = support > 0 ? support : 0;
    y[1] = 0;
    y[2] = 0;
    y[3] = 0;
    if (support >= 0) {
      addSinker(y, bed.index);
      bed.remaining = pieces[bed.index]!.length;
      return;
    }
    const stage = Math.min(2 * count - 1, Math.floor(-support));
    const share = Math.min(1, -support - stage);
    bed.index = count - 1 - Math.floor(stage / 2);
    for (let i = count - 1; i > bed.index; i--) layDown(y, i, 1, 1);
    layDown(y, bed.index, stage % 2 === 0 ? share : 1, stage % 2 === 0 ? 0 : share);
    y[1] = y[1]! - friction * bedFriction * bed.reaction;
    bed.remaining = (stage % 2 === 0 ? 1 : 1 - share) * pieces[bed.index]!.length;
  }
  /** A sinker whose weight the bed carries by a share, and the share of the line above it that lies on the bed. */
  function layDown(y: Float64Array, i: number, carried: number, lying: number): void {
    const p = pieces[i]!;
    const w = speedAt(0) - drift;
    addSinker(y, i);
    y[1] = y[1]! - p.tangential * Math.abs(w) * w * lying * p.length;
    y[2] = (1 - carried) * p.sinkerWeight;
    bed.reaction += carried * p.sinkerWeight + lying * p.length * p.weight;
    bed.lying += lying * p.length;
  }
  function addSinker(y: Float64Array, i: number): void {
    const p = pieces[i]!;
    const w = speedAt(y[0]!) - drift;
    y[1] = y[1]! - p.sinkerDrag(Math.abs(w), 0) * w;
    y[2] = y[2]! + p.sinkerWeight;
  }

  function shootWith(advance: (y: Float64Array, span: number, index: number) => unknown): Shot {
    return (driftSpeed, support, friction) => {
      shots++;
      drift = driftSpeed;
      begin(state, support, friction);
      for (let i = bed.index; i >= 0; i--) {
        piece = pieces[i]!;
        if (i !== bed.index) addSinker(state, i);
        advance(state, i === bed.index ? bed.remaining : piece.length, i);
      }
      top.height = state[0]!;
      top.tow = state[1]!;
      top.load = state[2]!;
      return top;
    };
  }
  const rough = rungeKutta(slope);
  const shootTo = (relative: number): Shot =>
    shootWith((y, span) => lineIntegrator.advance(y, span, relative));
  // a full shot keeps its steps, so that the trace of the last one is free
  const kept: Knot[][] = pieces.map(() => []);
  const keptOf = { driftSpeed: Number.NaN, support: Number.NaN, friction: Number.NaN };
  const keep = shootWith((y, span, index) => {
    const knots: Knot[] = [{ at: 0, y: y.slice() }];
    kept[index] = knots;
    lineIntegrator.advance(y, span, tolerance, (at) => knots.push({ at, y: y.slice() }));
  });
  const shoot: Shot = (driftSpeed, support, friction) => {
    Object.assign(keptOf, { driftSpeed, support, friction });
    return keep(driftSpeed, support, friction);
  };
  const roughShoot = shootWith((y, span) => rough(y, span, roughSteps));

  function trace(driftSpeed: number, support: Support, friction: number): Trace {
    const isKept =
      keptOf.driftSpeed === driftSpeed && keptOf.support === support && keptOf.friction === friction;
    if (!isKept) shoot(driftSpeed, support, friction);
    drift = driftSpeed;
    begin(state, support, friction);
    const side = state[1]! >= 0 ? 1 : -1;
    const points: TracedPoint[] =
      bed.lying > 0 ? [{ downstream: -bed.lying * side, height: 0, tension: 0 }] : [];
    const sinkers: TracedBody[] = [];
    const addBody = (downstream: number): void => {
      sinkers.unshift({ ...pointOf(state), downstream, relativeSpeed: drift - speedAt(state[0]!) });
    };
    let lying = bed.lying;
    for (let i = count - 1; i > bed.index; i--) {
      addBody(-lying * side);
      lying -= pieces[i]!.length;
    }
    addBody(-lying * side);
    for (let i = bed.index; i >= 0; i--) {
      piece = pieces[i]!;
      if (i !== bed.index) {
        addSinker(state, i);
        addBody(state[3]!);
      }
      const knots = kept[i]!;
      state.set(knots.at(-1)!.y);
      for (const point of evenly(knots)) points.unshift(point);
    }
    return { points, sinkers, reaction: bed.reaction, lyingLine: bed.lying };
  }
  const weight = pieces.reduce((sum, p) => sum + p.sinkerWeight + p.weight * p.length, 0);
  const { depth, surfaceSpeed } = column;
  return {
    depth,
    surfaceSpeed,
    speedAt,
    float,
    sections: count,
    length,
    weight,
    shoot,
    shootTo,
    roughShoot,
    trace,
    shots: () => shots,
  };
}

function pointOf(y: Float64Array): TracedPoint {
  return { downstream: y[3]!, height: y[0]!, tension: Math.hypot(y[1]!, y[2]!) };
}

/** Points evenly spaced over one section, by cubic Hermite interpolation between the steps taken. */
function evenly(knots: readonly Knot[]): readonly TracedPoint[] {
  const span = knots.at(-1)!.at;
  const points: TracedPoint[] = [];
  let knot = 0;
  for (let i = 0; i <= tracePieces; i++) {
    const at = (span * i) / tracePieces;
    while (knot + 2 < knots.length && knots[knot + 1]!.at < at) knot++;
    const [from, to] = [knots[knot]!, knots[Math.min(knot + 1, knots.length - 1)]!];
    points.push(hermite(from.y, to.y, to.at - from.at, at - from.at));
  }
  return points;
}

/** The point at `at` between two states `span` apart, with the line's own directions at both. */
function hermite(from: Float64Array, to: Float64Array, span: number, at: number): TracedPoint {
  if (!(span > 0)) return pointOf(to);
  const t = at / span;
  const s = 1 - t;
  const [a, b] = [pointOf(from), pointOf(to)];
  const between = (p: number, slopeP: number, q: number, slopeQ: number): number =>
    s * s * ((1 + 2 * t) * p + t * span * slopeP) + t * t * ((1 + 2 * s) * q - s * span * slopeQ);
  const direction = (component: number, tension: number): number => (tension > 0 ? component / tension : 0);
  return {
    downstream: between(
      a.downstream,
      direction(from[1]!, a.tension),
      b.downstream,
      direction(to[1]!, b.tension),
    ),
    height: between(a.height, direction(from[2]!, a.tension), b.height, direction(to[2]!, b.tension)),
    tension: s * a.tension + t * b.tension,
  };
}

function compile(section: Section, water: Water): Piece {
  const kernel = lineKernel(section.line, water);
  const sinkerWeight = submergedWeight(section.sinker, water);
  requirePositive("submerged weight of the sinker", sinkerWeight, "N");
  return {
    length: section.line.length,
    ...kernel,
    sinkerWeight,
    sinkerDrag: sinkerKernel(section.sinker, water),
  };
}
