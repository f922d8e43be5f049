/** The settled drift: where a rig hangs, how fast it drifts, and what holds it there. Model §4. */

import type { Column } from "../column/index.js";
import { atan2 } from "../elementary/index.js";
import { cylinderDragValidity, sphereDragValidity } from "../forces/index.js";
import type { Rig } from "../rig/index.js";
import {
  type Assumption,
  type Caveat,
  caveatFor,
  type Grounds,
  joinGrounds,
  type SourceKey,
} from "../sources/index.js";
import {
  depthBelowSurface,
  heightAboveBed,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  type Newtons,
  newtons,
  radians,
  requireWithin,
} from "../units/index.js";
import {
  alsoOnBed,
  type Balance,
  byBrackets,
  forceAtFloat,
  hangingByNewton,
  onBedByBrackets,
  type Surroundings,
} from "./balance.js";
import { bedFriction } from "./bed-friction.js";
import { fullTolerance, type Hang, hang, type Trace } from "./hang.js";
import type { Regime, Settled } from "./state.js";

export interface SettleOptions {
  /** Steady upstream pull held on the float, N; 0 unless given. */
  readonly held?: Newtons;
  /** Wind over the ground at the float, positive downstream; none acts unless given (0 is still air, which brakes). */
  readonly wind?: MetresPerSecond;
  /** Does not look for another steady state: a sixth quicker, and `alternative` stays null where it hangs. */
  readonly alone?: boolean;
}

/** The most integrations of the line that settling takes. Usual: 10 to 30 where Newton ends clear of the bed (two rigs in three), 300 to 1,000
 *  where brackets have to, thousands where several drift speeds balance in a very uneven measured stream. An observed bound with room
 *  to spare, not a proved one: `pnpm run slow` holds 10,000 seeded rigs to it. */
export const mostIterations = 50_000;

/** The steady state of a rig in a column. Every rig has one: `regime` names it, and what is physically impossible is a regime, not an error.
 *  Forces on each element of line by the cross-flow principle [Hoerner1965]; drags [BrownLawler2003], [SuckerBrauer1975].
 *  The line's ride in the film, bending and turbulence are left out.
 *  Throws QuantityError for a sinker that floats, a line lighter than the water, a held force outside 0 to 10 N or wind above 40 m/s. */
export function settle(rig: Rig, column: Column, options: SettleOptions = {}): Settled {
  const around = surroundings(options);
  const compiled = hang(rig, column);
  return describe(rig, column, compiled, around, solve(compiled, around, options.alone));
}

export function surroundings({ held, wind }: SettleOptions): Surroundings {
  requireWithin("held force", held ?? 0, 0, 10, "N");
  requireWithin("wind", wind ?? 0, -40, 40, "m/s");
  return { held: held ?? 0, wind: wind ?? null };
}

export interface Solution {
  readonly balance: Balance;
  readonly regime: Regime;
  readonly alternative: Regime | null;
}

/** The balance of a compiled rig and the regime it belongs to. */
export function solve(compiled: Hang, around: Surroundings, alone = false): Solution {
  if (isSlack(compiled, around)) return slackWater(compiled, around);
  const balance = hangingByNewton(compiled, around) ?? byBrackets(compiled, around);
  if (balance === null) throw new Error("no balance found: please report the input");
  const reserve = reserveOf(compiled);
  if (balance.support < 0)
    return { balance, regime: balance.load > reserve ? "drowned" : "on-bed", alternative: null };
  if (alone && balance.load <= reserve) return { balance, regime: "hanging", alternative: null };
  const alternative = alsoOnBed(compiled, around) ? "on-bed" : null;
  if (balance.load <= reserve) return { balance, regime: "hanging", alternative };
  const onBed = alternative === null ? null : onBedByBrackets(compiled, around);
  if (onBed !== null && onBed.load <= reserve)
    return { balance: onBed, regime: "on-bed", alternative: "drowned" };
  return { balance, regime: "drowned", alternative };
}

export function reserveOf({ float }: Hang): number {
  return Math.max(0, float.buoyantReserve + float.film);
}

/** No shear anywhere the rig could be, nothing held and no wind: it drifts with the water. */
function isSlack({ depth, length, speedAt, surfaceSpeed }: Hang, { held, wind }: Surroundings): boolean {
  if (held !== 0 || (wind !== null && wind !== surfaceSpeed)) return false;
  const reach = Math.min(length, depth);
  for (let i = 0; i <= 16; i++) {
    if (Math.abs(speedAt(depth - (reach * i) / 16) - surfaceSpeed) > 1e-12) return false;
  }
  return true;
}

function slackWater(compiled: Hang, around: Surroundings): Solution {
  const { depth, length, surfaceSpeed } = compiled;
  if (length > depth) {
    const balance = onBedByBrackets(compiled, around);
    if (balance !== null)
      return {
        balance,
        regime: balance.load > reserveOf(compiled) ? "drowned" : "on-bed",
        alternative: null,
      };
  }
  const top = compiled.steadyShot(fullTolerance)(surfaceSpeed, depth - length, 0);
  const balance: Balance = {
    driftSpeed: surfaceSpeed,
    support: depth - length,
    friction: 0,
    tow: top.tow,
    load: top.load,
    forceResidual: forceAtFloat(compiled, around, surfaceSpeed, top.tow, top.load),
    lengthResidual: top.height - depth,
  };
  return { balance, regime: top.load > reserveOf(compiled) ? "drowned" : "slack-water", alternative: null };
}

function describe(
  rig: Rig,
  column: Column,
  compiled: Hang,
  around: Surroundings,
  solution: Solution,
): Settled {
  const { balance, regime, alternative } = solution;
  const { driftSpeed, support, friction, tow, load } = balance;
  const trace = compiled.trace(driftSpeed, support, friction);
  const topX = trace.points[0]?.downstream ?? 0;
  const lowest = trace.sinkers.at(-1);
  const reserve = reserveOf(compiled);
  return {
    regime,
    driftSpeed: metresPerSecond(driftSpeed),
    slip: metresPerSecond(driftSpeed - column.surfaceSpeed),
    lean: radians(atan2(topX - (lowest?.downstream ?? 0), column.depth - (lowest?.height ?? 0))),
    sinkers: trace.sinkers.map((s) => ({
      heightAboveBed: heightAboveBed(s.height),
      depthBelowSurface: depthBelowSurface(column.depth - s.height),
      downstreamOfFloat: metres(s.downstream - topX),
      excess: metresPerSecond(s.relativeSpeed),
      tension: newtons(s.tension),
    })),
    shape: trace.points.map((p) => ({
      downstreamOfFloat: metres(p.downstream - topX),
      heightAboveBed: heightAboveBed(p.height),
      tension: newtons(p.tension),
    })),
    load: newtons(load),
    tow: newtons(tow),
    draft: metres(compiled.float.draft(load)),
    reserve: newtons(reserve),
    floatMargin: reserve / load,
    bed: support < 0 ? bedContact(balance, trace) : null,
    alternative,
    residual: { force: newtons(balance.forceResidual), length: metres(balance.lengthResidual) },
    iterations: compiled.shots(),
    grounds: joinGrounds(column.grounds, groundsOf(rig, column, around, regime, trace)),
  };
}

function bedContact({ driftSpeed, friction }: Balance, { reaction, lyingLine }: Trace): Settled["bed"] {
  return {
    reaction: newtons(reaction),
    friction: newtons(friction * bedFriction * reaction),
    anchored: driftSpeed === 0,
    lyingLine: metres(lyingLine),
  };
}

const relations: readonly SourceKey[] = ["BrownLawler2003", "SuckerBrauer1975", "Hoerner1965", "CGPM1901"];

function groundsOf(rig: Rig, column: Column, around: Surroundings, regime: Regime, trace: Trace): Grounds {
  const assumptions: Assumption[] = [
    { name: "drag coefficient of the float", value: String(rig.float.drag), basis: "assumption" },
    { name: "film treatment of the float", value: String(rig.float.treatment), basis: "assumption" },
  ];
  if (regime === "on-bed")
    assumptions.push({ name: "bed friction", value: String(bedFriction), basis: "assumption" });
  if (around.wind === null) assumptions.push({ name: "wind", value: "none acts", basis: "default" });
  const nu = column.water.kinematicViscosity;
  const caveats: readonly Caveat[] = trace.sinkers.flatMap((s, i) => {
    const sinker = rig.sections[i]?.sinker;
    const w = Math.abs(s.relativeSpeed);
    if (sinker === undefined || w === 0) return [];
    const bead = sinker.bead === undefined ? [] : caveatFor(sphereDragValidity, (w * sinker.bead) / nu);
    const body =
      sinker.body === undefined ? [] : caveatFor(cylinderDragValidity, (w * sinker.body.diameter) / nu);
    return [...bead, ...body];
  });
  return { relations, assumptions, caveats };
}
