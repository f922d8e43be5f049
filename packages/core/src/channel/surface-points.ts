/** A water surface as a list of points, each with how well it keeps its energy. */

import { gaussFive, gaussThree } from "../numerics/index.js";
import { type Metres, type MetresPerSecond, metres, metresPerSecond } from "../units/index.js";
import type { GradualFlow } from "./gradual.js";
import { type CurveName, curveName } from "./profile-class.js";
import type { Run } from "./surface-profile.js";

export interface SurfacePoint {
  /** From the upstream end, along the bed. */
  readonly distance: Metres;
  readonly depth: Metres;
  readonly speed: MetresPerSecond;
  readonly froude: number;
  /** Depth and velocity head. */
  readonly specificEnergy: Metres;
  readonly frictionSlope: number;
  readonly curve: CurveName;
  /** Energy that the stretch from the point before gained beyond ∫ (S0 − Sf) dx, m: 0 but for the error of the method, and of this integral where depth changes much between two points. 0 at the first point of a run. */
  readonly residual: Metres;
}

/** Points at equal distances in each reach, with the ends of its runs. */
export function pointsOf(runs: readonly Run[], perReach: number): readonly SurfacePoint[] {
  return runs.flatMap((run) => {
    const { flow, reachFrom, from, to, depthAt } = run;
    const spacing = run.reachLength / (perReach - 1);
    const inside: number[] = [];
    for (let k = Math.floor(from / spacing) + 1; k * spacing < to - 1e-9 * spacing; k++) {
      if (k * spacing > from + 1e-9 * spacing) inside.push(k * spacing);
    }
    let before: SurfacePoint | undefined;
    return [from, ...inside, to].map((x, i, all) => {
      const point = pointAt(flow, reachFrom + x, depthAt(x));
      const gained = before === undefined ? 0 : point.specificEnergy - before.specificEnergy;
      const due =
        before === undefined ? 0 : gainBetween(run, { from: all[i - 1]!, to: x, before, after: point });
      before = { ...point, residual: metres(gained - due) };
      return before;
    });
  });
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly before: { readonly froude: number };
  readonly after: { readonly froude: number };
}

/** ∫ (S0 − Sf) dx; near critical depth, where the surface turns like a root of the distance, over that root. */
function gainBetween({ flow, depthAt }: Run, { from, to, before, after }: Stretch): number {
  const span = to - from;
  const at = (x: number): number => flow.excessSlope(depthAt(x));
  const [first, last] = [Math.abs(before.froude - 1), Math.abs(after.froude - 1)];
  if (first > 0.3 && last > 0.3) return gaussThree(at, from, to);
  const place = (u: number): number => (first < last ? from + span * u * u : to - span * u * u);
  return gaussFive((u) => 2 * u * span * at(place(u)), 0, 1);
}

function pointAt(flow: GradualFlow, distance: number, depth: number): Omit<SurfacePoint, "residual"> {
  return {
    distance: metres(distance),
    depth: metres(depth),
    speed: metresPerSecond(flow.speed(depth)),
    froude: Math.sqrt(flow.froudeSquared(depth)),
    specificEnergy: metres(flow.energy(depth)),
    frictionSlope: flow.frictionSlope(depth),
    curve: curveName(flow, depth),
  };
}
