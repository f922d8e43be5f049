/** The drift speed and support at which every force of a rig balances: a safeguarded Newton, and a nested bracket where it fails. */

import { findRoot } from "../numerics/index.js";
import type { Hang, Shot, Support } from "./hang.js";

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
    force: Math.min(5e-10, 1e-9 * drag + 1e-12 * hang.weight),
    length: Math.min(5e-10, 1e-9 * hang.length),
  };
}

/** A hanging balance by Newton: rough shots first, then full ones with the Jacobian they left. Null where that does not end clear of the bed. */
export function hangingByNewton(hang: Hang, around: Surroundings): Balance | null {
  const start = { ...plumbGuess(hang, around), jacobian: null };
  const rough = newton(hang, around, start, hangingView, hang.roughShoot, 1e5);
  const found = newton(hang, around, rough ?? start, hangingView, hang.shoot, 1);
  return found === null || found.second < 0 ? null : balanceOf(found, hangingView);
}

/** A hanging balance from another one close by, with the shots to spare that a fresh start would take. */
function hangingNear(hang: Hang, around: Surroundings, first: number, second: Support): Balance | null {
  const found = newton(hang, around, { first, second, jacobian: null }, hangingView, hang.shoot, 1);
  return found === null || found.second < 0 ? null : balanceOf(found, hangingView);
}

/** A bed balance by Newton on (stick variable, support), or null. */
function bedNear(hang: Hang, around: Surroundings, stick: number, support: Support): Balance | null {
  const found = newton(
    hang,
    around,
    { first: stick, second: support, jacobian: null },
    bedView,
    hang.shoot,
    1,
  );
  return found !== null && found.second <= 0 && found.second >= -2 * hang.sections
    ? balanceOf(found, bedView)
    : null;
}

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
 *  It ends when both residuals are within `loose` times the tolerance. */
function newton(
  hang: Hang,
  around: Surroundings,
  start: Iterate,
  view: View,
  shot: Shot,
  loose: number,
): Converged | null {
  const tolerance = tolerances(hang, around);
  const firstStep = 1e-5 * speedScale(hang, around);
  const secondStep = 1e-5 * Math.min(hang.length, hang.depth);
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
  for (let iteration = 0; iteration < 20; iteration++) {
    if (Math.abs(f0) <= loose && Math.abs(f1) <= loose) {
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
    if (!known) {
      residual(a + firstStep, b);
      jacobian[0] = (r0 - f0) / firstStep;
      jacobian[2] = (r1 - f1) / firstStep;
      residual(a, b + secondStep);
      jacobian[1] = (r0 - f0) / secondStep;
      jacobian[3] = (r1 - f1) / secondStep;
    }
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

/** A first guess: the rig plumb, drifting at seven tenths of the way from its lowest water to the surface, slower where it is held. */
function plumbGuess(
  hang: Hang,
  { held }: Surroundings,
): { readonly first: number; readonly second: Support } {
  const bottom = hang.depth - Math.min(hang.length, 0.999 * hang.depth);
  const pulled = held > 0 ? 0.5 * Math.sqrt(held / hang.float.dragAt(1, hang.float.draft(hang.weight))) : 0;
  return { first: 0.3 * hang.speedAt(bottom) + 0.7 * hang.surfaceSpeed - pulled, second: bottom };
}

/** Every balance by nested brackets, the highest support first: hanging if there is one, else on the bed.
 *  For each support the force at the float changes sign between two drift speeds (all drags reverse), so the inner bracket always closes;
 *  the height of the top less the depth is positive with the sinker at the surface and negative with the rig laid down, so the outer one does too. */
export function byBrackets(hang: Hang, around: Surroundings): Balance | null {
  const ceiling = hang.depth;
  const floor = Math.max(0, hang.depth - hang.length);
  const excess = (support: Support): number => hang.depth - topAt(hang, around, support).height;
  const samples = 16;
  let above = ceiling;
  for (let i = 1; i <= samples; i++) {
    const support = ceiling + ((floor - ceiling) * i) / samples;
    if (excess(support) >= 0) return closeIn(hang, around, support, above, excess);
    above = support;
  }
  return hang.length > hang.depth
    ? onBedByBrackets(hang, around)
    : closeIn(hang, around, floor - 1e-9, above, excess);
}

/** The bed balance of a rig whose line is longer than the water is deep. */
export function onBedByBrackets(hang: Hang, around: Surroundings): Balance | null {
  const excess = (support: Support): number => hang.depth - topAt(hang, around, support).height;
  if (excess(0) > 0) return null;
  let low = 0;
  for (let stage = 1; stage <= 2 * hang.sections; stage++) {
    if (excess(-stage) > 0) return closeIn(hang, around, -stage, low, excess);
    low = -stage;
  }
  return null;
}

function closeIn(
  hang: Hang,
  around: Surroundings,
  low: Support,
  high: Support,
  excess: (q: Support) => number,
): Balance | null {
  const support = findRoot(excess, low, high, 1e-13).root;
  const at = topAt(hang, around, support);
  const top = hang.shoot(at.driftSpeed, support, at.friction);
  const balance: Balance = {
    driftSpeed: at.driftSpeed,
    support,
    friction: at.friction,
    tow: top.tow,
    load: top.load,
    lengthResidual: top.height - hang.depth,
    forceResidual: forceAtFloat(hang, around, at.driftSpeed, top.tow, top.load),
  };
  if (Math.abs(balance.lengthResidual) <= 5e-10 && Math.abs(balance.forceResidual) <= 5e-10) return balance;
  return support < 0
    ? bedNear(hang, around, at.stick, support)
    : hangingNear(hang, around, at.driftSpeed, support);
}

interface TopAtSupport {
  readonly height: number;
  readonly driftSpeed: number;
  readonly friction: number;
  readonly stick: number;
}

/** The top of the line at a support, at the drift speed that balances the forces there. */
function topAt(hang: Hang, around: Surroundings, support: Support): TopAtSupport {
  const { speedOf, frictionOf } = support < 0 ? bedView : hangingView;
  const force = (variable: number): number => {
    const speed = speedOf(variable);
    const top = hang.shoot(speed, support, frictionOf(variable));
    return forceAtFloat(hang, around, speed, top.tow, top.load);
  };
  const scale = speedScale(hang, around);
  let low = -2 * stickBand;
  for (let step = scale; force(low) > 0 && step < 1e6; step *= 2) low -= step;
  let high = hang.surfaceSpeed + 2 * stickBand;
  for (let step = scale; force(high) < 0 && step < 1e6; step *= 2) high += step;
  const stick = findRoot(force, low, high, 1e-15 * scale).root;
  const driftSpeed = speedOf(stick);
  const friction = frictionOf(stick);
  return { height: hang.shoot(driftSpeed, support, friction).height, driftSpeed, friction, stick };
}
