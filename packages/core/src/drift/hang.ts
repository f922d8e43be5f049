/** One rig at one drift speed: the line integrated from its lowest point up, every force included. */

import type { Column } from "../column/index.js";
import { speedProfile } from "../column/index.js";
import { type FloatKernel, floatKernel, lineKernel, sinkerKernel, submergedWeight } from "../forces/index.js";
import { type Course, integrator } from "../numerics/index.js";
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
  /** A shot that integrates the line; `friction` is the bed friction over its greatest value, positive downstream. The same object is returned
   *  each time. Its steps are laid out when it is first called and kept, so that it is a smooth function of what it is asked. */
  readonly steadyShot: (tolerance: number) => Shot;
  /** A shot whose steps are laid out anew each time, to a relative error per step. */
  readonly shootTo: (tolerance: number) => Shot;
  /** The same with the kink of the drag left to the errors of the steps: quicker to a coarse tolerance. */
  readonly plainShot: (tolerance: number) => Shot;
  /** One step per section: cheap, to be refined; not finite where the line is too stiff for it. */
  readonly roughShoot: Shot;
  readonly trace: (driftSpeed: number, support: Support, friction: number) => Trace;
  /** How often the line was integrated. */
  readonly shots: () => number;
}

/** States of one section of the line after its steps, five numbers each: how far along it, height, tension components and x. */
interface Knots {
  readonly at: number[];
  /** How many of the numbers are of the last shot. */
  count: number;
}

interface Piece {
  readonly length: number;
  readonly normal: (speed: number) => number;
  readonly tangential: number;
  readonly weight: number;
  readonly sinkerWeight: number;
  readonly sinkerDrag: (speed: number, along: number) => number;
}

/** Error per step of the line, relative. The estimate is far above the error of the 8th order step. */
export const fullTolerance = 5e-8;
/** The rough shot: one even step per section. */
const roughCourse: Course = [1, 0];
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
    const place = Math.max(Math.abs(error[0]!), Math.abs(error[3]!)) / length;
    const force = (Math.abs(error[1]!) + Math.abs(error[2]!)) / T;
    return Math.max(place, force);
  }
  const state = new Float64Array(4);
  const slopes = new Float64Array(4);
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
  const shootTo = (relative: number): Shot =>
    shootWith((y, span) => lineIntegrator.lay(y, span, relative, []));
  const plainShot = (relative: number): Shot => {
    const plain = integrator(slope, norm);
    return shootWith((y, span) => plain.lay(y, span, relative, []));
  };
  const roughShoot = shootWith((y, span) => lineIntegrator.follow(y, span, roughCourse));
  // a steady shot keeps the states it went through, so that the trace of the last one is free
  const kept: Knots[] = pieces.map(() => ({ at: [], count: 0 }));
  const keptOf = { driftSpeed: Number.NaN, support: Number.NaN, friction: Number.NaN };
  function steadyShot(tolerance: number): Shot {
    const courses: Course[] = pieces.map(() => []);
    const shot = shootWith((y, span, index) => {
      const knots = kept[index]!;
      knots.count = 0;
      const mark = (at: number): void => {
        knots.at[knots.count++] = at;
        for (let i = 0; i < 4; i++) knots.at[knots.count++] = y[i]!;
      };
      mark(0);
      const course = courses[index]!;
      if (course.length > 0) lineIntegrator.follow(y, span, course, mark);
      else lineIntegrator.lay(y, span, tolerance, course, mark);
    });
    return (driftSpeed, support, friction) => {
      keptOf.driftSpeed = driftSpeed;
      keptOf.support = support;
      keptOf.friction = friction;
      return shot(driftSpeed, support, friction);
    };
  }

  /** How the line lies and bends at the state. */
  function bendOf(at: number): Bend {
    slope(state, slopes, 0);
    const { downstream, height, tension } = pointOf(state);
    const [tz, fx, fz, tx] = [slopes[0]!, slopes[1]!, slopes[2]!, slopes[3]!];
    // the part of dT/ds across the line turns it
    const turning = tension > 0 ? (fz * tx - fx * tz) / tension : 0;
    return { at, downstream, height, tension, tx, tz, bendX: -turning * tz, bendZ: turning * tx };
  }
  function trace(driftSpeed: number, support: Support, friction: number): Trace {
    const isKept =
      keptOf.driftSpeed === driftSpeed && keptOf.support === support && keptOf.friction === friction;
    if (!isKept) steadyShot(fullTolerance)(driftSpeed, support, friction);
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
      const { at, count: numbers } = kept[i]!;
      const bends: Bend[] = [];
      for (let knot = 0; knot < numbers; knot += 5) {
        for (let j = 0; j < 4; j++) state[j] = at[knot + 1 + j]!;
        bends.push(bendOf(at[knot]!));
      }
      for (const point of evenly(bends)) points.unshift(point);
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
    steadyShot,
    shootTo,
    plainShot,
    roughShoot,
    trace,
    shots: () => shots,
  };
}

function pointOf(y: Float64Array): TracedPoint {
  return { downstream: y[3]!, height: y[0]!, tension: Math.sqrt(y[1]! * y[1]! + y[2]! * y[2]!) };
}

/** A point of the line with its direction and how that changes along it. */
interface Bend extends TracedPoint {
  readonly at: number;
  readonly tx: number;
  readonly tz: number;
  readonly bendX: number;
  readonly bendZ: number;
}

/** Points evenly spaced over one section, interpolated between the steps taken. */
function evenly(bends: readonly Bend[]): readonly TracedPoint[] {
  const last = bends.length - 1;
  const points: TracedPoint[] = [];
  let from = 0;
  for (let i = 0; i <= tracePieces; i++) {
    const at = (bends[last]!.at * i) / tracePieces;
    while (from + 1 < last && bends[from + 1]!.at < at) from++;
    points.push(hermite(bends[from]!, bends[Math.min(from + 1, last)]!, at));
  }
  return points;
}

/** The point `at` so far along the line by quintic Hermite interpolation: places, directions and bends of both ends. */
function hermite(a: Bend, b: Bend, at: number): TracedPoint {
  const span = b.at - a.at;
  if (!(span > 0)) return b;
  const t = (at - a.at) / span;
  const s = 1 - t;
  const [t3, s3] = [t * t * t, s * s * s];
  const [placeA, placeB] = [s3 * (1 + 3 * t + 6 * t * t), t3 * (1 + 3 * s + 6 * s * s)];
  const [wayA, wayB] = [span * s3 * t * (1 + 3 * t), -span * t3 * s * (1 + 3 * s)];
  const [bendA, bendB] = [0.5 * span * span * s3 * t * t, 0.5 * span * span * t3 * s * s];
  return {
    downstream:
      placeA * a.downstream +
      wayA * a.tx +
      bendA * a.bendX +
      placeB * b.downstream +
      wayB * b.tx +
      bendB * b.bendX,
    height:
      placeA * a.height + wayA * a.tz + bendA * a.bendZ + placeB * b.height + wayB * b.tz + bendB * b.bendZ,
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
