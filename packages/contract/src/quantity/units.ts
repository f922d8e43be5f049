/** The units that may be said over HTTP, one table per dimension, and what each is in SI. */

import {
  celsius,
  centimetres,
  cubicMetres,
  cubicMillimetres,
  degrees,
  fahrenheit,
  feet,
  feetPerSecond,
  grains,
  grams,
  inches,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  milligrams,
  millimetres,
  millinewtons,
  newtons,
  perSecond,
  poundsForce,
  radians,
  seconds,
} from "@plumbdrift/core";

/** Unit symbols are ASCII, after UCUM where it has one. Every symbol belongs to one dimension only. */
export const dimensions = {
  length: { m: metres, cm: centimetres, mm: millimetres, ft: feet, in: inches },
  speed: {
    "m/s": metresPerSecond,
    "cm/s": (value: number) => metresPerSecond(value / 100),
    "ft/s": feetPerSecond,
    // a statute mile is 5280 ft
    mph: (value: number) => feetPerSecond((value * 5280) / 3600),
    "km/h": (value: number) => metresPerSecond(value / 3.6),
  },
  time: { s: seconds, min: (value: number) => seconds(value * 60) },
  mass: { kg: kilograms, g: grams, mg: milligrams, gr: grains },
  force: { N: newtons, mN: millinewtons, lbf: poundsForce },
  temperature: { degC: celsius, degF: fahrenheit },
  angle: { deg: degrees, rad: radians },
  density: { "kg/m3": kilogramsPerCubicMetre },
  rate: { "1/s": perSecond },
  volume: { mm3: cubicMillimetres, m3: cubicMetres },
} as const;

export type Dimension = keyof typeof dimensions;
export type Unit<D extends Dimension = Dimension> = {
  [K in D]: keyof (typeof dimensions)[K] & string;
}[D];

/** The branded SI number that a quantity in unit `U` becomes. */
export type SiOf<U> = {
  [D in Dimension]: U extends keyof (typeof dimensions)[D]
    ? (typeof dimensions)[D][U] extends (value: number) => infer Q
      ? Q
      : never
    : never;
}[Dimension];

/** The units of a dimension, the SI one first. */
export function unitsOf(dimension: Dimension): readonly string[] {
  return Object.keys(dimensions[dimension]);
}

/** The dimension a unit belongs to, or nothing for a symbol we do not know. */
export function dimensionOf(unit: unknown): Dimension | undefined {
  const found = Object.entries(dimensions).find(([, units]) => Object.hasOwn(units, String(unit)));
  return found?.[0] as Dimension | undefined;
}

/** A value in a unit as a number in SI. */
export function toSi(dimension: Dimension, value: number, unit: string): number {
  return converter(dimension, unit)(value);
}

/** A number in SI as a value in a unit: the inverse of `toSi`, which is linear. */
export function fromSi(dimension: Dimension, si: number, unit: string): number {
  const convert = converter(dimension, unit);
  const zero = convert(0);
  const value = (si - zero) / (convert(1) - zero);
  return Number.isFinite(value) ? Number(value.toPrecision(12)) : value;
}

function converter(dimension: Dimension, unit: string): (value: number) => number {
  const units: Readonly<Record<string, (value: number) => number>> = dimensions[dimension];
  const convert = Object.hasOwn(units, unit) ? units[unit] : undefined;
  if (convert === undefined) throw new TypeError(`${unit} is no unit of ${dimension}`);
  return convert;
}
