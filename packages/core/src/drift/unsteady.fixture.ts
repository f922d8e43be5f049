/** Rigs and waters for the tests of the unsteady drift. */

import { type Column, waterColumn } from "../column/index.js";
import { float, line, type Sinker, sinker } from "../forces/index.js";
import { type Rig, rig, type Section } from "../rig/index.js";
import {
  celsius,
  cubicMetres,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  squareMetresPerSecond,
  standardGravity,
} from "../units/index.js";
import { explicitWater, type Water } from "../water/index.js";

export type Uniform = (low: number, high: number) => number;

/** Mulberry32, public domain: the same numbers on every run. */
export function generator(seed: number): Uniform {
  let state = seed >>> 0;
  return (low, high) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return low + ((high - low) * ((t ^ (t >>> 14)) >>> 0)) / 4294967296;
  };
}

export const water: Water = explicitWater({
  density: kilogramsPerCubicMetre(999.1),
  kinematicViscosity: squareMetresPerSecond(1.138e-6),
  temperature: celsius(15),
});

/** Sinker, line and float of rows K-20 to K-23 of the check values. */
export const nymph: Sinker = sinker({
  mass: kilograms(1.5e-3 / standardGravity + 999.1 * 20e-9),
  volume: cubicMetres(20e-9),
  bead: metres(2.8e-3),
  body: { length: metres(6e-3), diameter: metres(1.8e-3) },
});

export function hung(...sinkers: readonly Sinker[]): Rig {
  const tippet = line({
    length: metres(0.4572),
    diameter: metres(0.1524e-3),
    density: kilogramsPerCubicMetre(1780),
  });
  const dry = float({
    length: metres(0.022),
    width: metres(0.005),
    height: metres(0.0045),
    mass: kilograms(1e-3 / standardGravity),
    treatment: 0,
  });
  return rig(dry, ...sinkers.map((body): Section => ({ line: tippet, sinker: body })));
}

/** Columns of rows K-20, K-21 and K-22. */
export const logWater: Column = waterColumn({
  depth: metres(0.9144),
  surfaceSpeed: metresPerSecond(0.9144),
  law: "log",
  roughnessLength: metres(0.005),
  water,
});
export const boulderWater: Column = waterColumn({
  depth: metres(0.9144),
  surfaceSpeed: metresPerSecond(0.9144),
  law: "mixing-layer",
  bed: { d84: metres(0.4572) },
  water,
});
export const powerWater: Column = waterColumn({
  depth: metres(0.9144),
  surfaceSpeed: metresPerSecond(1.2),
  law: "power",
  exponent: 6,
  water,
});

export function stillWater(depth: number): Column {
  return waterColumn({ depth: metres(depth), surfaceSpeed: metresPerSecond(0), exponent: 6, water });
}

/** A bead on a hook, mass 5 mg to 3 g whatever is asked. */
export function someSinker(uniform: Uniform, mass: number): Sinker {
  const volume = mass / uniform(2500, 16000);
  const side = Math.cbrt(volume);
  const body = { length: metres(2 * side), diameter: metres(0.7 * side) };
  return sinker({
    mass: kilograms(mass),
    volume: cubicMetres(volume),
    bead: metres(side),
    ...(uniform(0, 1) < 0.7 ? { body } : {}),
    dressing: uniform(1, 2),
    knot: uniform(0, 1) < 0.5 ? "loop" : "tight",
  });
}

/** A free rig of one to three sections, its line shorter than the water is deep, so that it hangs clear of the bed. */
export function hangingRig(seed: number): { readonly rig: Rig; readonly column: Column } {
  const uniform = generator(seed);
  const depth = uniform(0.3, 3);
  const laws = ["log", "power", "mixing-layer"] as const;
  const law = laws[Math.floor(uniform(0, 3))] ?? "log";
  const column = waterColumn({
    depth: metres(depth),
    surfaceSpeed: metresPerSecond(uniform(0.1, 2)),
    law,
    bed: { d84: metres(depth * (law === "mixing-layer" ? uniform(0.2, 0.6) : uniform(0.02, 0.1))) },
  });
  const count = Math.floor(uniform(1, 4));
  const total = depth * uniform(0.4, 0.9);
  const sections = Array.from({ length: count }, () => ({
    line: line({
      length: metres(total / count),
      diameter: metres(uniform(0.1e-3, 0.25e-3)),
      density: kilogramsPerCubicMetre(uniform(0, 1) < 0.5 ? 1140 : 1780),
    }),
    sinker: someSinker(uniform, uniform(0.05e-3, 0.5e-3)),
  }));
  return { rig: rig(bigFloat, ...sections), column };
}

/** A float that carries whatever hangs below. */
export const bigFloat: ReturnType<typeof float> = float({
  length: metres(0.06),
  width: metres(0.03),
  height: metres(0.03),
  mass: kilograms(1e-3),
});

/** Anything that the ranges of model §4 allow, bed, drowning and a held force included. */
export function anyRig(seed: number): {
  readonly rig: Rig;
  readonly column: Column;
  readonly uniform: Uniform;
} {
  const uniform = generator(seed);
  const log = (low: number, high: number): number => Math.exp(uniform(Math.log(low), Math.log(high)));
  const depth = log(0.2, 4);
  const laws = ["log", "log-wake", "dip", "power", "mixing-layer"] as const;
  const law = laws[Math.floor(uniform(0, 5))] ?? "log";
  const column = waterColumn({
    depth: metres(depth),
    surfaceSpeed: metresPerSecond(uniform(0, 1) < 0.1 ? 0 : uniform(0, 3)),
    law,
    bed: { d84: metres(depth * (law === "mixing-layer" ? uniform(0.2, 0.6) : uniform(0.005, 0.08))) },
    channelWidth: metres(depth * uniform(2, 8)),
    water,
  });
  const sections = Array.from({ length: Math.floor(uniform(1, 4)) }, () => ({
    line: line({
      length: metres(log(0.1, 3)),
      diameter: metres(log(0.08e-3, 0.5e-3)),
      density: kilogramsPerCubicMetre(uniform(0, 1) < 0.5 ? 1140 : 1780),
    }),
    sinker: someSinker(uniform, log(5e-6, 3e-3)),
  }));
  const dry = float({
    length: metres(uniform(0.008, 0.03)),
    width: metres(uniform(0.003, 0.01)),
    height: metres(uniform(0.003, 0.01)),
    mass: kilograms(log(1e-5, 3e-4)),
    treatment: uniform(0, 1),
  });
  return { rig: rig(uniform(0, 1) < 0.5 ? bigFloat : dry, ...sections), column, uniform };
}
