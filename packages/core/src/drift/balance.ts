/** The drift speed and support at which every force of a rig balances: a safeguarded Newton, and a nested bracket where it fails. */

import { findRoot } from "../numerics/index.js";
import { fullTolerance, type Hang, type Shot, type Support } from "./hang.js";

/** The world around a rig in plain numbers: upstream pull held on the float, N, and wind over the ground, m/s, or none. */
export interface Surroundings {
  readonly held: number;
  readonly wind: number | null;
}

export interface Balance {
  readonly driftSpeed: number;
  readonly support: Support;
  /** Bed friction over its greatest value, positive downstream. */
  readonly friction: number;
  /** Pull of the float on the line, downstream and up, N. */
  readonly tow: number;
  readonly load: number;
  readonly forceResidual: number;
  readonly lengthResidual: number;
}

/** Friction turns over within this drift speed's breadth of the solver's own variable: a device of the bracket, not of the physics. */
const stickBand = 0.01;

/** Force left over at the float: tow − drag − windage + held, N. */
export function forceAtFloat(
  hang: Hang,
  around: Surroundings,
  driftSpeed: number,
  tow: number,
  load: number,
): number {
  const { float, surfaceSpeed } = hang;
  const draft = float.draft(load);
  const windage = around.wind === null ? 0 : float.windageAt(around.wind - driftSpeed, draft);
  return tow - float.dragAt(surfaceSpeed - driftSpeed, draft) - windage + around.held;
}

/** The greatest speed that matters to a rig: the stream's, and what the held force could pull the float to. */
function speedScale(hang: Hang, around: Surroundings): number {
  const drag = hang.float.dragAt(1, hang.float.draft(hang.weight));
  return hang.surfaceSpeed + Math.sqrt(around.held / drag) + 0.01;
}

function tolerances(hang: Hang, around: Surroundings): { readonly force: number; readonly length: number } {
  const drag = hang.float.dragAt(hang.surfaceSpeed, hang.float.draft(hang.weight)) + around.held;
  return {
    force: Math.min(5e-10, 2e-9 * drag + 1e-12 * hang.weight),
    length: Math.min(9e-10, 2e-9 * hang.length),
  };
}

/** A hanging balance by Newton: rough shots, then full ones with the Jacobian those left. Null where that does not end clear of the bed. */
export function hangingByNewton(hang: Hang, around: Surroundings): Balance | null {
  const start: Iterate = { ...plumbGuess(hang, around), jacobian: null };
  const rough = newton(hang, around, start, hangingView, hang.roughShoot, 3e5);
  const near = rough && newton(hang, around, rough, hangingView, hang.steadyShot(looseTolerance), 1e3, true);
  const far = near ?? newton(hang, around, start, hangingView, hang.shootTo(1e-5), 1e4, true);
  const found = far && byFullShots(hang, around, far, hangingView);
  return found === null || found.second < 0 ? null : balanceOf(found, hangingView);
}

/** Error per step of the loose shots: an estimate, far above their error. */
const looseTolerance = 0.1;

/** Newton on full shots. Their steps are laid out where it starts: where it ends far from there, again from there. */
function byFullShots(hang: Hang, around: Surroundings, start: Iterate, view: View): Converged | null {
  let from = start;
  for (let tries = 0; tries < 5; tries++) {
    const found = newton(hang, around, from, view, hang.steadyShot(fullTolerance), 1);
    if (found === null) return null;
    const moved = Math.abs(found.first - from.first) / speedScale(hang, around);
    if (moved + Math.abs(found.second - from.second) / hang.length < stepsHold) return found;
    from = found;
  }
  return null;
}

/** How far the solution may be from where the steps were laid out, relative: the kink of the drag moves with it. */
const stepsHold = 1e-3;

/** What the solver's first variable means: the drift speed itself, or on the bed a number that also says how far friction is used up. */
interface View {
  readonly speedOf: (variable: number) => number;
  readonly frictionOf: (variable: number) => number;
}

const hangingView: View = { speedOf: (speed) => speed, frictionOf: () => 0 };

const bedView: View = {
  speedOf: (stick) => (Math.abs(stick) <= stickBand ? 0 : stick - Math.sign(stick) * stickBand),
  frictionOf: (stick) => -Math.max(-1, Math.min(1, stick / stickBand)),
};

interface Iterate {
  readonly first: number;
  readonly second: Support;
  /** dr0/dfirst, dr0/dsecond, dr1/dfirst, dr1/dsecond in scaled residuals, null where unknown. */
  readonly jacobian: Float64Array | null;
}

interface Converged extends Iterate {
  readonly tow: number;
  readonly load: number;
  readonly forceResidual: number;
  readonly lengthResidual: number;
}

function balanceOf({ first, second, jacobian, ...found }: Converged, { speedOf, frictionOf }: View): Balance {
  return { driftSpeed: speedOf(first), support: second, friction: frictionOf(first), ...found };
}

/** Newton with a difference Jacobian, Broyden's updates, and steps that shrink until they help: at most 20 iterations, or null.
 *  It ends when both residuals are within `loose` times the tolerance, with a `refresh`ed Jacobian if it is to be used again. */
function newton(
  hang: Hang,
  around: Surroundings,
  start: Iterate,
  view: View,
  shot: Shot,
  loose: number,
  refresh = false,
): Converged | null {
  const tolerance = tolerances(hang, around);
  const firstStep = 1e-6 * speedScale(hang, around);
  const secondStep = 1e-6 * Math.min(hang.length, hang.depth);
  let r0 = 0;
  let r1 = 0;
  let tow = 0;
  let load = 0;
  const residual = (a: number, b: number): void => {
    const speed = view.speedOf(a);
    const top = shot(speed, b, view.frictionOf(a));
    tow = top.tow;
    load = top.load;
    r0 = (top.height - hang.depth) / tolerance.length;
    r1 = forceAtFloat(hang, around, speed, tow, load) / tolerance.force;
  };
  let a = start.first;
  let b = start.second;
  const jacobian = start.jacobian ?? new Float64Array(4);
  let known = start.jacobian !== null;
  residual(a, b);
  let f0 = r0;
  let f1 = r1;
  const differences = (): void => {
    residual(a + firstStep, b);
    jacobian[0] = (r0 - f0) / firstStep;
    jacobian[2] = (r1 - f1) / firstStep;
    residual(a, b + secondStep);
    jacobian[1] = (r0 - f0) / secondStep;
    jacobian[3] = (r1 - f1) / secondStep;
  };
  for (let iteration = 0; iteration < 20; iteration++) {
    if (Math.abs(f0) <= loose && Math.abs(f1) <= loose) {
      if (refresh) differences();
      return {
        first: a,
        second: b,
        jacobian,
        tow,
        load,
        lengthResidual: f0 * tolerance.length,
        forceResidual: f1 * tolerance.force,
      };
    }
    if (!known) differences();
    const det = jacobian[0]! * jacobian[3]! - jacobian[1]! * jacobian[2]!;
    let da = (-f0 * jacobian[3]! + f1 * jacobian[1]!) / det;
    let db = (-f1 * jacobian[0]! + f0 * jacobian[2]!) / det;
    if (!Number.isFinite(da) || !Number.isFinite(db)) return null;
    const cut = Math.max(
      1,
      Math.abs(da) / (0.5 * speedScale(hang, around)),
      Math.abs(db) / (0.5 * hang.length),
    );
    da /= cut;
    db /= cut;
    const merit = f0 * f0 + f1 * f1;
    residual(a + da, b + db);
    for (let shrink = 0; !(r0 * r0 + r1 * r1 < merit) && shrink < 4; shrink++) {
      da /= 3;
      db /= 3;
      residual(a + da, b + db);
    }
    const after = r0 * r0 + r1 * r1;
    if (!(after < merit)) {
      if (!known) return null;
      known = false;
      continue;
    }
    broyden(jacobian, { da, db, e0: r0 - f0, e1: r1 - f1, firstStep, secondStep });
    known = after < 0.05 * merit;
    a += da;
    b += db;
    f0 = r0;
    f1 = r1;
  }
  return null;
}

interface Secant {
  readonly da: number;
  readonly db: number;
  readonly e0: number;
  readonly e1: number;
  readonly firstStep: number;
  readonly secondStep: number;
}

/** Broyden's update: the least change that explains the residuals along the step taken. */
function broyden(jacobian: Float64Array, { da, db, e0, e1, firstStep, secondStep }: Secant): void {
  const miss0 = e0 - (jacobian[0]! * da + jacobian[1]! * db);
  const miss1 = e1 - (jacobian[2]! * da + jacobian[3]! * db);
  const size = (da / firstStep) ** 2 + (db / secondStep) ** 2;
  const ga = da / (firstStep * firstStep * size);
  const gb = db / (secondStep * secondStep * size);
  jacobian[0] = jacobian[0]! + miss0 * ga;
  jacobian[1] = jacobian[1]! + miss0 * gb;
  jacobian[2] = jacobian[2]! + miss1 * ga;
  jacobian[3] = jacobian[3]! + miss1 * gb;
}

/** A first guess: the rig plumb, drifting at seven tenths of the way from its lowest water to the surface, slower where it is held.
 *  Where there is one balance alone, a line that reaches to the foot of the stream begins higher up: such a line slants, and there the speed is not steep. */
function plumbGuess(hang: Hang, around: Surroundings): { readonly first: number; readonly second: Support } {
  const { held } = around;
  const bottom = hang.depth - Math.min(hang.length, (isPlain(hang, around) ? 0.7 : 0.999) * hang.depth);
  const pulled = held > 0 ? 0.5 * Math.sqrt(held / hang.float.dragAt(1, hang.float.draft(hang.weight))) : 0;
  return { first: 0.3 * hang.speedAt(bottom) + 0.7 * hang.surfaceSpeed - pulled, second: bottom };
}

/** A balance by nested brackets, the highest support first: hanging if there is one, else on the bed. Null only where rounding defeats it.
 *  For each support the force at the float changes sign between two drift speeds (all drags reverse), so the inner bracket always closes;
 *  the height of the top less the depth is positive with the sinker at the surface and negative with the rig laid down, so the outer one does too. */
export function byBrackets(hang: Hang, around: Surroundings): Balance | null {
  return (
    bracketed(hang, around, (reach) => highestCrossing(hang, reach) ?? bedCrossing(hang, reach)) ??
    bySubdivision(hang, around)
  );
}

/** The bed balance of a rig whose line is longer than the water is deep, null where there is none. */
export function onBedByBrackets(hang: Hang, around: Surroundings): Balance | null {
  return bracketed(hang, around, (reach) => bedCrossing(hang, reach));
}

/** Whether a rig certainly has a bed balance too: with its sinker just touching, the top would rise above the surface. */
export function alsoOnBed(hang: Hang, around: Surroundings): boolean {
  return hang.length > hang.depth && reachBy(hang, around, looseSearch)(0) > 0;
}

/** Height of the top above the surface at a support, at the drift speed that balances the forces there. */
type Reach = (support: Support) => number;

interface Crossing {
  /** The reach is negative here, */
  readonly low: Support;
  /** and positive here. */
  readonly high: Support;
}

/** Brackets on loose shots, polished by Newton on full ones: from the bracket itself, and where that leads out of it from its root; where that
 *  fails too, brackets again on the finest. */
function bracketed(
  hang: Hang,
  around: Surroundings,
  find: (reach: Reach) => Crossing | null,
): Balance | null {
  for (const search of [looseSearch, fineSearch]) {
    const reach = reachBy(hang, around, search);
    const crossing = find(reach);
    if (crossing === null) return null;
    const { low, high } = crossing;
    const view = high <= 0 ? bedView : hangingView;
    const quick = isPlain(hang, around) ? insideByNewton(hang, around, crossing, view) : null;
    if (quick !== null) return quick;
    const support = findRoot(reach, low, high, search.width).root;
    const { first, height, ...found } = topAt(hang, around, support, search);
    if (
      search.width === 0 &&
      Math.max(Math.abs(found.lengthResidual), Math.abs(found.forceResidual)) <= 9e-10
    )
      return { ...found, support };
    const polished = byFullShots(hang, around, { first, second: support, jacobian: null }, view);
    const [floor, ceiling] = high <= 0 ? [-2 * hang.sections, 0] : [0, hang.depth];
    if (polished !== null && polished.second >= floor && polished.second <= ceiling)
      return balanceOf(polished, view);
  }
  return null;
}

/** The balance within a bracket by Newton from its middle, null where that leads out of it. */
function insideByNewton(
  hang: Hang,
  around: Surroundings,
  { low, high }: Crossing,
  view: View,
): Balance | null {
  const second = (low + high) / 2;
  const { first } = topAt(hang, around, second, coarseSearch);
  const shot = hang.steadyShot(looseTolerance);
  const near = newton(hang, around, { first, second, jacobian: null }, view, shot, 1e3, true);
  const found = near && byFullShots(hang, around, near, view);
  return found !== null && found.second >= low && found.second <= high ? balanceOf(found, view) : null;
}

/** Error per step of the shots, and how near the drift speed is found, as a share of its scale. */
interface Search {
  readonly relative: number;
  readonly width: number;
}

const coarseSearch: Search = { relative: 1e-3, width: 1e-4 };
const looseSearch: Search = { relative: 1e-5, width: 1e-7 };
const fineSearch: Search = { relative: 1e-12, width: 0 };

/** The reach to a search. Of a plain one only the sign counts where it is large: a coarse look from the last drift speed tells that. */
function reachBy(hang: Hang, around: Surroundings, search: Search): Reach {
  if (!isPlain(hang, around)) return (support) => topAt(hang, around, support, search).lengthResidual;
  let last: number | null = null;
  return (support) => {
    const seen = topAt(hang, around, support, coarseSearch, last);
    last = seen.first;
    if (Math.abs(seen.lengthResidual) > plainReach * hang.length) return seen.lengthResidual;
    return topAt(hang, around, support, search, last).lengthResidual;
  };
}

/** Water that runs no slower higher up, and neither hold nor wind: one drift speed alone balances at a support. */
function isPlain({ depth, speedAt }: Hang, { held, wind }: Surroundings): boolean {
  if (held !== 0 || wind !== null) return false;
  for (let i = 0; i < 16; i++) if (speedAt((depth * i) / 16) > speedAt((depth * (i + 1)) / 16)) return false;
  return true;
}

/** A coarse reach beyond this share of the length has the sign of the exact one. */
const plainReach = 0.02;

/** Walks down from the surface to the first support whose top stays under it. */
function highestCrossing({ depth, length }: Hang, reach: Reach): Crossing | null {
  const floor = Math.max(0, depth - length);
  const samples = length > depth ? 16 : 1;
  let high = depth;
  for (let i = 1; i <= samples; i++) {
    // a plumb line reaches the surface exactly: a hair below it the reach is negative for certain
    const low = length > depth ? depth + ((floor - depth) * i) / samples : floor - 1e-6 * length;
    if (reach(low) <= 0) return { low, high };
    high = low;
  }
  return null;
}

/** Lays the rig down part by part until its top stays under the surface. */
function bedCrossing({ depth, length, sections }: Hang, reach: Reach): Crossing | null {
  if (length <= depth || reach(0) <= 0) return null;
  for (let stage = 1; stage <= 2 * sections; stage++) {
    if (reach(-stage) <= 0) return { low: -stage, high: 1 - stage };
  }
  return null;
}

/** For streams so uneven that a support has several drift speeds: cells of speed and support in which both residuals change sign, the
 *  highest first, each tried by Newton and else divided again. The sides of the first cell carry opposite signs (Poincare and Miranda). */
function bySubdivision(hang: Hang, around: Surroundings): Balance | null {
  const shot = hang.shootTo(fineSearch.relative);
  const floor = hang.length > hang.depth ? -2 * hang.sections : hang.depth - (1 + 1e-6) * hang.length;
  const residuals = (stick: number, support: Support): Residuals => {
    const speed = bedView.speedOf(stick);
    const { height, tow, load } = shot(speed, support, bedView.frictionOf(stick));
    return { length: height - hang.depth, force: forceAtFloat(hang, around, speed, tow, load) };
  };
  const search = (cell: Cell, n: number, levels: number): Balance | null => {
    const firstAt = (i: number): number => cell.first + (cell.width * i) / n;
    const secondAt = (j: number): Support => cell.second - (cell.height * j) / n;
    const rows = Array.from({ length: n + 1 }, (_, j) =>
      Array.from({ length: n + 1 }, (_, i) => residuals(firstAt(i), secondAt(j))),
    );
    const at = (i: number, j: number): Residuals => rows[j]?.[i] ?? { length: Number.NaN, force: Number.NaN };
    for (let j = 0; j < n; j++) {
      for (let i = 0; i < n; i++) {
        const corners = [at(i, j), at(i + 1, j), at(i, j + 1), at(i + 1, j + 1)];
        if (!mixed(corners.map((c) => c.length)) || !mixed(corners.map((c) => c.force))) continue;
        const start = { first: firstAt(i + 0.5), second: secondAt(j + 0.5), jacobian: null };
        const found = newton(hang, around, start, bedView, shot, 1);
        if (found !== null && found.second <= hang.depth && found.second >= floor)
          return balanceOf(found, bedView);
        const inner = {
          first: firstAt(i),
          second: secondAt(j),
          width: cell.width / n,
          height: cell.height / n,
        };
        const deeper = levels > 0 ? search(inner, 4, levels - 1) : null;
        if (deeper !== null) return deeper;
      }
    }
    return null;
  };
  const { low, high } = signChange(
    (stick) => residuals(stick, hang.depth).force,
    hang.surfaceSpeed,
    speedScale(hang, around),
  );
  return search({ first: low, second: hang.depth, width: high - low, height: hang.depth - floor }, 48, 8);
}

interface Cell {
  readonly first: number;
  readonly second: Support;
  readonly width: number;
  readonly height: number;
}

interface Residuals {
  readonly length: number;
  readonly force: number;
}

function mixed(values: readonly number[]): boolean {
  return Math.min(...values) <= 0 && Math.max(...values) >= 0;
}

/** Values of the solver's variable between which the force at the float changes sign: all drags push downstream at the low end, upstream at the high end. */
function signChange(
  force: (variable: number) => number,
  surfaceSpeed: number,
  scale: number,
): { readonly low: number; readonly high: number } {
  let low = -2 * stickBand;
  for (let step = scale; force(low) > 0 && step < 1e6; step *= 2) low -= step;
  let high = surfaceSpeed + 2 * stickBand;
  for (let step = scale; force(high) < 0 && step < 1e6; step *= 2) high += step;
  return { low, high };
}

/** A root near one that is nearly it, by secants; null where eight do not come to it. */
function secant(f: (x: number) => number, near: number, step: number, tolerance: number): number | null {
  let [a, b] = [near, near + step];
  let [fa, fb] = [f(a), f(b)];
  for (let i = 0; i < 8; i++) {
    const move = (-fb * (b - a)) / (fb - fa);
    if (!(Math.abs(move) < 100 * step)) return null;
    if (Math.abs(move) <= tolerance) return b + move;
    [a, fa] = [b, fb];
    b += move;
    fb = f(b);
  }
  return null;
}

interface TopAtSupport extends Omit<Balance, "support"> {
  readonly height: number;
  /** The solver's own variable at this support. */
  readonly first: number;
}

/** The top of the line at a support, at the drift speed that balances the forces there; `near` is about where that is, if known. */
function topAt(
  hang: Hang,
  around: Surroundings,
  support: Support,
  { relative, width }: Search,
  near: number | null = null,
): TopAtSupport {
  const { speedOf, frictionOf } = support < 0 ? bedView : hangingView;
  const shot = hang.shootTo(relative);
  const force = (variable: number): number => {
    const speed = speedOf(variable);
    const top = shot(speed, support, frictionOf(variable));
    return forceAtFloat(hang, around, speed, top.tow, top.load);
  };
  const scale = speedScale(hang, around);
  const bracket = (): number => {
    const { low, high } = signChange(force, hang.surfaceSpeed, scale);
    return findRoot(force, low, high, width * scale).root;
  };
  const first = (near === null ? null : secant(force, near, 1e-3 * scale, width * scale)) ?? bracket();
  const forceResidual = force(first);
  const { height, tow, load } = shot(speedOf(first), support, frictionOf(first));
  const lengthResidual = height - hang.depth;
  return {
    first,
    height,
    tow,
    load,
    driftSpeed: speedOf(first),
    friction: frictionOf(first),
    forceResidual,
    lengthResidual,
  };
}
