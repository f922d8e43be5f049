/** The units that may be said over HTTP, one table per dimension, and what each is in SI. */

import {
  type Celsius,
  type CubicMetres,
  type CubicMetresPerSecond,
  celsius,
  centimetres,
  cubicFeetPerSecond,
  cubicMetres,
  cubicMetresPerSecond,
  cubicMillimetres,
  degrees,
  fahrenheit,
  feet,
  feetPerSecond,
  grains,
  grams,
  inches,
  type Kilograms,
  type KilogramsPerCubicMetre,
  kilograms,
  kilogramsPerCubicMetre,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  milligrams,
  millimetres,
  millinewtons,
  type Newtons,
  newtons,
  type Pascals,
  type PerSecond,
  pascals,
  perSecond,
  poundsForce,
  type Radians,
  radians,
  type Seconds,
  type SquareMetres,
  seconds,
  squareFeetPerSecond,
  squareMetres,
  type UnitDischarge,
  unitDischarge,
  type Watts,
  watts,
} from "@plumbdrift/core";

/** Each unit with the constructor of the SI number that a value in it is. */
type In<U extends string, Q> = Readonly<Record<U, (value: number) => Q>>;

/** Unit symbols are ASCII, after UCUM where it has one. Every symbol belongs to one dimension only. */
export interface Dimensions {
  readonly length: In<"m" | "cm" | "mm" | "ft" | "in", Metres>;
  readonly speed: In<"m/s" | "cm/s" | "ft/s" | "mph" | "km/h", MetresPerSecond>;
  readonly time: In<"s" | "min", Seconds>;
  readonly mass: In<"kg" | "g" | "mg" | "gr", Kilograms>;
  readonly force: In<"N" | "mN" | "lbf", Newtons>;
  readonly temperature: In<"degC" | "degF", Celsius>;
  readonly angle: In<"deg" | "rad", Radians>;
  readonly density: In<"kg/m3", KilogramsPerCubicMetre>;
  readonly rate: In<"1/s", PerSecond>;
  readonly area: In<"m2" | "ft2", SquareMetres>;
  readonly volume: In<"mm3" | "m3" | "ft3", CubicMetres>;
  readonly discharge: In<"m3/s" | "L/s" | "ft3/s", CubicMetresPerSecond>;
  readonly unitDischarge: In<"m2/s" | "ft2/s", UnitDischarge>;
  readonly stress: In<"Pa" | "lbf/ft2", Pascals>;
  readonly power: In<"W" | "hp", Watts>;
}

const foot = 0.3048;
const poundForce = 0.45359237 * 9.80665;

export const dimensions: Dimensions = {
  length: { m: metres, cm: centimetres, mm: millimetres, ft: feet, in: inches },
  speed: {
    "m/s": metresPerSecond,
    "cm/s": (value) => metresPerSecond(value / 100),
    "ft/s": feetPerSecond,
    // a statute mile is 5280 ft
    mph: (value) => feetPerSecond((value * 5280) / 3600),
    "km/h": (value) => metresPerSecond(value / 3.6),
  },
  time: { s: seconds, min: (value) => seconds(value * 60) },
  mass: { kg: kilograms, g: grams, mg: milligrams, gr: grains },
  force: { N: newtons, mN: millinewtons, lbf: poundsForce },
  temperature: { degC: celsius, degF: fahrenheit },
  angle: { deg: degrees, rad: radians },
  density: { "kg/m3": kilogramsPerCubicMetre },
  rate: { "1/s": perSecond },
  area: { m2: squareMetres, ft2: (value) => squareMetres(value * foot ** 2) },
  volume: { mm3: cubicMillimetres, m3: cubicMetres, ft3: (value) => cubicMetres(value * foot ** 3) },
  discharge: {
    "m3/s": cubicMetresPerSecond,
    "L/s": (value) => cubicMetresPerSecond(value / 1000),
    "ft3/s": cubicFeetPerSecond,
  },
  unitDischarge: { "m2/s": unitDischarge, "ft2/s": squareFeetPerSecond },
  stress: { Pa: pascals, "lbf/ft2": (value) => pascals((value * poundForce) / foot ** 2) },
  // a horsepower is 550 foot-pounds of force a second
  power: { W: watts, hp: (value) => watts(value * 550 * foot * poundForce) },
};

export type Dimension = keyof Dimensions;
export type Unit<D extends Dimension = Dimension> = { [K in D]: keyof Dimensions[K] & string }[D];

/** The system an answer speaks. */
export type Units = "si" | "us";

/** What the other system says in place of an SI unit. Millinewtons stay: no everyday US unit is that small. */
const usUnits: Readonly<Record<string, Unit>> = {
  m: "ft",
  cm: "in",
  mm: "in",
  "m/s": "ft/s",
  g: "gr",
  N: "lbf",
  degC: "degF",
  m2: "ft2",
  m3: "ft3",
  "m3/s": "ft3/s",
  "m2/s": "ft2/s",
  Pa: "lbf/ft2",
  W: "hp",
};

/** The unit that a system says in place of an SI unit. */
export function unitIn(units: Units, si: string): string {
  return units === "us" ? (usUnits[si] ?? si) : si;
}

/** The units of a dimension. */
export function unitsOf<D extends Dimension>(dimension: D): readonly Unit<D>[] {
  return Object.keys(dimensions[dimension]) as Unit<D>[];
}

/** The unit of a dimension that a value in SI is in. */
export function siUnit(dimension: Dimension): Unit {
  return unitsOf(dimension).find((unit) => toSi(dimension, 1, unit) === 1 && toSi(dimension, 0, unit) === 0)!;
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
