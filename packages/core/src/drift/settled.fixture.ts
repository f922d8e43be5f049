/** Rigs and waters over the whole range that the settled solver answers for, each by a number, and a check of all that it returns. */

import { type Column, waterColumn } from "../column/index.js";
import { float, line, sinker } from "../forces/index.js";
import { type Rig, rig, type Section } from "../rig/index.js";
import {
  cubicMetres,
  heightAboveBed,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  newtons,
} from "../units/index.js";
import { mostIterations, type SettleOptions, settle } from "./settled.js";
import type { Regime, Settled } from "./state.js";
import { generator, type Uniform } from "./unsteady.fixture.js";

export interface SeededRig {
  readonly rig: Rig;
  readonly column: Column;
  readonly options: SettleOptions;
}

export const laws = ["log", "log-wake", "dip", "power", "mixing-layer", "measured"] as const;

/** Depth 0.2 to 4 m, surface speed 0 to 3 m/s (some exactly 0), every law in turn, one to three sections of 0.1 to 3 m of 0.08 to 0.5 mm
 *  line with sinkers of 5 mg to 3 g, held by 0 to 20 mN, wind to 10 m/s either way. */
export function seededRig(index: number): SeededRig {
  const uniform = generator(index);
  const log = (low: number, high: number): number => Math.exp(uniform(Math.log(low), Math.log(high)));
  const column = seededColumn(laws[index % laws.length] ?? "log", uniform);
  const sections = Array.from({ length: Math.floor(uniform(1, 4)) }, (): Section => {
    const mass = log(5e-6, 3e-3);
    const body = { length: metres(uniform(3e-3, 12e-3)), diameter: metres(uniform(1e-3, 3e-3)) };
    return {
      line: line({
        length: metres(log(0.1, 3)),
        diameter: metres(uniform(0.08e-3, 0.5e-3)),
        density: kilogramsPerCubicMetre(uniform(0, 1) < 0.5 ? 1140 : 1780),
      }),
      sinker: sinker({
        mass: kilograms(mass),
        volume: cubicMetres(mass / uniform(2000, 15000)),
        bead: metres(log(1e-3, 5e-3)),
        ...(uniform(0, 1) < 0.7 ? { body } : {}),
        dressing: uniform(1, 2),
      }),
    };
  });
  const dry = float({
    length: metres(uniform(6e-3, 40e-3)),
    width: metres(uniform(3e-3, 12e-3)),
    height: metres(uniform(2e-3, 12e-3)),
    mass: kilograms(log(1e-5, 5e-4)),
    treatment: uniform(0, 1),
  });
  const held = newtons(uniform(0, 1) < 0.5 ? 0 : uniform(0, 0.02));
  const wind = uniform(0, 1) < 0.2 ? { wind: metresPerSecond(uniform(-10, 10)) } : {};
  return { rig: rig(dry, ...sections), column, options: { held, ...wind } };
}

function seededColumn(law: (typeof laws)[number], uniform: Uniform): Column {
  const depth = uniform(0.2, 4);
  // measured points have to say that the surface moves
  const still = uniform(0, 1) < 0.05 && law !== "measured";
  const surface = still ? 0 : uniform(0, 3);
  const given = { depth: metres(depth), surfaceSpeed: metresPerSecond(surface), law };
  if (law === "measured") {
    const count = Math.floor(uniform(2, 7));
    // from a steady fall to currents that cross over each other, slack water included
    const unevenness = uniform(0, 1) ** 2;
    const points = Array.from({ length: count }, (_, i) => {
      const height = ((i + uniform(0.1, 0.9)) * depth) / count;
      const smooth = surface * (height / depth) ** (1 / 6);
      const speed = (1 - unevenness) * smooth + unevenness * surface * uniform(0, 1.3);
      return { heightAboveBed: heightAboveBed(height), speed: metresPerSecond(speed) };
    });
    return waterColumn({ ...given, points });
  }
  const stones = law === "mixing-layer" ? depth / uniform(0.4, 7) : Math.min(uniform(0.001, 0.5), depth / 4);
  return waterColumn({
    ...given,
    bed: { d84: metres(stones) },
    exponent: uniform(3, 10),
    wake: uniform(0, 0.4),
    channelWidth: metres(depth * uniform(2, 8)),
  });
}

export interface Sweep {
  /** What went wrong, by number: empty when all is well. */
  readonly faults: readonly string[];
  readonly regimes: Readonly<Record<Regime, number>>;
  readonly laws: ReadonlySet<string>;
}

/** Settles the rigs from one number to before another and looks for anything that should not be. */
export function sweep(from: number, to: number): Sweep {
  const faults: string[] = [];
  const regimes: Record<Regime, number> = { hanging: 0, "on-bed": 0, drowned: 0, "slack-water": 0 };
  const seen = new Set<string>();
  for (let index = from; index < to; index++) {
    const seeded = seededRig(index);
    seen.add(seeded.column.profile.law);
    try {
      const settled = settle(seeded.rig, seeded.column, seeded.options);
      regimes[settled.regime]++;
      faults.push(...faultsOf(settled, seeded).map((fault) => `rig ${index}: ${fault}`));
    } catch (error) {
      faults.push(`rig ${index}: ${error}`);
    }
  }
  return { faults, regimes, laws: seen };
}

/** How exactly the shape is drawn, m: it is made of longer steps than the residuals where several drift speeds balance. */
const drawn = 1e-4;

function faultsOf(settled: Settled, { rig: { sections }, column: { depth } }: SeededRig): readonly string[] {
  const { residual, iterations, sinkers, shape, regime, bed, load, reserve } = settled;
  const faults = notFinite(settled, "settled");
  const must = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };
  must(Math.abs(residual.force) <= 1e-9, `force residual ${residual.force} N`);
  must(Math.abs(residual.length) <= 1e-9, `length residual ${residual.length} m`);
  must(iterations <= mostIterations, `${iterations} iterations`);
  must(sinkers.length === sections.length, `${sinkers.length} sinkers of ${sections.length}`);
  for (const { heightAboveBed: z, depthBelowSurface: below } of sinkers) {
    must(z >= 0 && below >= 0 && Math.abs(z + below - depth) < 1e-9, `a sinker at ${z} m of ${depth} m`);
  }
  for (const { heightAboveBed: z } of shape)
    must(z > -drawn && z < depth + drawn, `line at ${z} m of ${depth} m`);
  must(
    (bed === null) === (sinkers.at(-1)?.heightAboveBed !== 0),
    `bed contact ${bed === null ? "missing" : "in mid-water"}`,
  );
  must(
    regime !== "hanging" || (bed === null && load <= reserve),
    "hangs, but not clear of the bed or beyond its reserve",
  );
  must(regime !== "drowned" || load > reserve, "drowned within its reserve");
  must(
    regime !== "on-bed" || (bed !== null && load <= reserve),
    "on the bed without contact, or beyond its reserve",
  );
  return faults;
}

/** The paths of all numbers in a value that are not finite. */
function notFinite(value: unknown, path: string): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}
