/** The unsteady drift, as the cases ask for it: what it tends to, how it starts, and the wind. */
import {
  addedMass,
  celsius,
  cubicMetres,
  drift,
  explicitWater,
  type Float,
  float,
  floatKernel,
  kilograms,
  kilogramsPerCubicMetre,
  line,
  metres,
  metresPerSecond,
  millimetres,
  newtonsPerMetre,
  rig,
  type Sinker,
  seconds,
  settle,
  sinker,
  squareMetresPerSecond,
  type Water,
  waterColumn,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number } from "./inputs.js";

/** 1000 kg/m³, 1e-6 m²/s. */
export const water: Water = explicitWater({
  density: kilogramsPerCubicMetre(1000),
  kinematicViscosity: squareMetresPerSecond(1e-6),
  temperature: celsius(15),
});
/** A float of 1 g, 40 by 20 by 20 mm. */
export const raft: Float = float({
  length: millimetres(40),
  width: millimetres(20),
  height: millimetres(20),
  mass: kilograms(1e-3),
  treatment: 0,
});

/** Excess of the lowest sinker at the end of a long drift over that of the settled rig. */
function endOverSettled(i: Inputs): number {
  const hung = rig(raft, {
    line: line({
      length: metres(0.5),
      diameter: millimetres(0.3),
      density: kilogramsPerCubicMetre(1780),
      tangentialDrag: number(i, "skinFriction"),
    }),
    sinker: sinker({ mass: kilograms(3e-4), volume: cubicMetres(3e-8), bead: millimetres(3) }),
  });
  const column = waterColumn({
    depth: metres(0.9),
    surfaceSpeed: metresPerSecond(0.9),
    bed: { d84: metres(0.45) },
    water,
  });
  const settled = settle(hung, column);
  const options = { segments: 64, timeStep: seconds(0.05), runLength: metres(40), settled };
  const end = drift(hung, column, options).path.at(-1);
  return (end?.excess ?? Number.NaN) / (settled.sinkers[0]?.excess ?? Number.NaN);
}

/** How far the sinker is from its settled depth at the moment that counts as settled, over that depth. */
function leftAtSettling(): number {
  const hung = rig(raft, {
    line: line({ length: metres(0.5), diameter: millimetres(0.15), density: kilogramsPerCubicMetre(1780) }),
    sinker: sinker({ mass: kilograms(3e-4), volume: cubicMetres(3e-8), bead: millimetres(3) }),
  });
  const column = waterColumn({ depth: metres(0.9), surfaceSpeed: metresPerSecond(0.9), exponent: 6, water });
  const { settling, settled, path } = drift(hung, column, { duration: seconds(5), instants: 1000 });
  const time = settling.settles ? settling.time : Number.NaN;
  const after = path.findIndex((instant) => instant.time > time);
  const heightAt = (k: number): number => path[k]?.sinkers[0]?.heightAboveBed ?? Number.NaN;
  const [from, to] = [path[after - 1]?.time ?? Number.NaN, path[after]?.time ?? Number.NaN];
  const share = (time - from) / (to - from);
  const height = (1 - share) * heightAt(after - 1) + share * heightAt(after);
  const rest = settled.sinkers[0]?.heightAboveBed ?? Number.NaN;
  return Math.abs(height - rest) / (0.9 - rest);
}

/** A bead and a stout slack line let go in still water: how far the bead has come in a time too short for drag, over a t²/2. */
function fall(i: Inputs): number {
  const bead: Sinker = sinker({ mass: kilograms(2e-3), volume: cubicMetres(1e-7), bead: millimetres(5.8) });
  const stout = line({
    length: metres(1),
    diameter: millimetres(number(i, "lineDiameter")),
    density: kilogramsPerCubicMetre(1780),
    normalDrag: { coefficient: 0 },
    tangentialDrag: 0,
  });
  const column = waterColumn({ depth: metres(2), surfaceSpeed: metresPerSecond(0), exponent: 6, water });
  const step = 1e-6;
  const steps = 1000;
  const path = drift(rig(raft, { line: stout, sinker: { ...bead, beadDrag: { coefficient: 0 } } }), column, {
    cast: { sinkerDownstream: metres(-0.5), entrySpeed: metresPerSecond(0) },
    segments: 1,
    timeStep: seconds(step),
    duration: seconds(steps * step),
    stationary: metresPerSecond(0),
  }).path;
  const fallen = 2 - (path.at(-1)?.sinkers[0]?.heightAboveBed ?? Number.NaN);
  // backward Euler: n (n + 1)/2 steps' worth of a Δt²
  return fallen / ((step * step * steps * (steps + 1)) / 2);
}

const ball = sinker({ mass: kilograms(1e-3), volume: cubicMetres(1e-7), bead: metres(0.01) });
const rod = sinker({
  mass: kilograms(1e-3),
  volume: cubicMetres(1e-7),
  body: { length: metres(0.02), diameter: metres(0.01) },
});

export const unsteadyEvaluations = {
  "excess at the end of a drift over the settled one": (i: Inputs): number => endOverSettled(i),
  "distance left when settled, over the settled depth": (_: Inputs): number => leftAtSettling(),
  "first acceleration of a sinker on a slack line, m/s²": (i: Inputs): number => fall(i),
  "treatment of a float by default": (_: Inputs): number =>
    float({ length: metres(0.04), width: metres(0.02), height: metres(0.02), mass: kilograms(1e-3) })
      .treatment,
  "added mass of a sphere, g": (_: Inputs): number => 1e3 * addedMass(ball, water),
  "added mass of a cylinder, g": (_: Inputs): number => 1e3 * addedMass(rod, water),
  "windage on a dry float, N": (i: Inputs): number =>
    floatKernel(raft, water).windageAt(number(i, "wind"), 0),
  "film support of a float, N": (i: Inputs): number => {
    const surfaceTension = newtonsPerMetre(number(i, "surfaceTension"));
    return floatKernel({ ...raft, treatment: 1 }, { ...water, surfaceTension }).film;
  },
  "drag coefficient of a float by default": (_: Inputs): number => raft.drag,
} as const;
