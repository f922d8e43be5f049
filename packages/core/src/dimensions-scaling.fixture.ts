/** What a kernel is when the units of length, mass and time change: the sizes of the units, and what is measured in them. */
import {
  type CubicMetresPerSecond,
  celsius,
  cubicMetresPerSecond,
  explicitWater,
  kilogramsPerCubicMetre,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  newtonsPerMetre,
  squareMetresPerSecond,
  type Water,
} from "./index.js";

/** What one unit of length, mass and time is worth. */
export interface Scale {
  readonly L: number;
  readonly M: number;
  readonly T: number;
}

/** One number that an exported function gives, and how it goes with the units. */
export interface Kernel {
  readonly run: (...given: never[]) => unknown;
  readonly title: string;
  readonly exponents: Partial<Scale>;
  readonly value: (scale: Scale) => number;
}

/** Kernels of one exported function, which each of them is handed. */
export function kernels<F extends Kernel["run"]>(
  run: F,
  ...rows: readonly (readonly [of: string, exponents: Partial<Scale>, value: (run: F, s: Scale) => number])[]
): readonly Kernel[] {
  return rows.map(([of, exponents, value]) => ({
    run,
    title: `${run.name}: ${of}`,
    exponents,
    value: (s) => value(run, s),
  }));
}

export const length: Partial<Scale> = { L: 1 };
export const speed: Partial<Scale> = { L: 1, T: -1 };
export const discharge: Partial<Scale> = { L: 3, T: -1 };
export const force: Partial<Scale> = { L: 1, M: 1, T: -2 };
export const stress: Partial<Scale> = { L: -1, M: 1, T: -2 };
/** Manning's n of V = R^(2/3) √S/n. */
export const manning: Partial<Scale> = { L: -1 / 3, T: 1 };
export const none: Partial<Scale> = {};

export const one: Scale = { L: 1, M: 1, T: 1 };

export const lengthOf = ({ L }: Scale, value: number): Metres => metres(value * L);
export const speedOf = ({ L, T }: Scale, value: number): MetresPerSecond => metresPerSecond((value * L) / T);
export const dischargeOf = ({ L, T }: Scale, value: number): CubicMetresPerSecond =>
  cubicMetresPerSecond((value * L ** 3) / T);
export const gravityOf = ({ L, T }: Scale): number => (9.81 * L) / T ** 2;
export const waterOf = ({ L, M, T }: Scale): Water =>
  explicitWater({
    density: kilogramsPerCubicMetre((999 * M) / L ** 3),
    kinematicViscosity: squareMetresPerSecond((1.2e-6 * L * L) / T),
    temperature: celsius(12),
    surfaceTension: newtonsPerMetre((0.074 * M) / T ** 2),
  });
