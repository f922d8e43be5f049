/** The only places where a plain number becomes a quantity. Factors are definitions, never rounded reciprocals. */

import { raise } from "../elementary/index.js";
import { QuantityError } from "./errors.js";
import type {
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  DepthBelowSurface,
  HeightAboveBed,
  Kilograms,
  KilogramsPerCubicMetre,
  Metres,
  MetresPerSecond,
  Newtons,
  NewtonsPerMetre,
  PascalSeconds,
  Pascals,
  PerSecond,
  Radians,
  Seconds,
  SquareMetres,
  SquareMetresPerSecond,
  UnitDischarge,
  Watts,
} from "./quantity.js";

type Constructor<Q> = (value: number) => Q;

/* @__NO_SIDE_EFFECTS__ */
function scaled<Q extends number>(unit: string, factor: number, divisor = 1): Constructor<Q> {
  return (value) => {
    if (!Number.isFinite(value)) throw new QuantityError(unit, "finite", value);
    return ((value * factor) / divisor) as Q;
  };
}

export const metres: Constructor<Metres> = scaled("metres", 1);
export const centimetres: Constructor<Metres> = scaled("centimetres", 1, 100);
export const millimetres: Constructor<Metres> = scaled("millimetres", 1, 1000);
/** International feet, 0.3048 m exactly. @example feet(3) // => 0.9144 */
export const feet: Constructor<Metres> = scaled("feet", 0.3048);
/** Inches, 0.0254 m exactly. @example inches(18) // => 0.4572 */
export const inches: Constructor<Metres> = scaled("inches", 0.0254);
export const squareMetres: Constructor<SquareMetres> = scaled("square metres", 1);
export const cubicMetres: Constructor<CubicMetres> = scaled("cubic metres", 1);
export const cubicMillimetres: Constructor<CubicMetres> = scaled("cubic millimetres", 1, 1e9);
export const cubicMetresPerSecond: Constructor<CubicMetresPerSecond> = scaled("cubic metres per second", 1);
/** Cubic feet per second, 0.3048³ m³/s exactly. @example cubicFeetPerSecond(100) // => 2.8316847 */
export const cubicFeetPerSecond: Constructor<CubicMetresPerSecond> = scaled(
  "cubic feet per second",
  raise(0.3048, 3),
);
/** Square feet per second of flow over a width, 0.3048² m²/s exactly. @example squareFeetPerSecond(10) // => 0.9290304 */
export const squareFeetPerSecond: Constructor<UnitDischarge> = scaled(
  "square feet per second of flow",
  raise(0.3048, 2),
);
/** m²/s. */
export const unitDischarge: Constructor<UnitDischarge> = scaled("square metres per second of flow", 1);
export const seconds: Constructor<Seconds> = scaled("seconds", 1);
export const perSecond: Constructor<PerSecond> = scaled("per second", 1);
export const metresPerSecond: Constructor<MetresPerSecond> = scaled("metres per second", 1);
/** @example feetPerSecond(3) // => 0.9144 */
export const feetPerSecond: Constructor<MetresPerSecond> = scaled("feet per second", 0.3048);
export const kilograms: Constructor<Kilograms> = scaled("kilograms", 1);
export const grams: Constructor<Kilograms> = scaled("grams", 1, 1000);
export const milligrams: Constructor<Kilograms> = scaled("milligrams", 1, 1e6);
/** Grains, 64.79891 mg exactly. @example grains(140) // => 0.0090718474 */
export const grains: Constructor<Kilograms> = scaled("grains", 64.79891, 1e6);
export const kilogramsPerCubicMetre: Constructor<KilogramsPerCubicMetre> = scaled(
  "kilograms per cubic metre",
  1,
);
export const newtons: Constructor<Newtons> = scaled("newtons", 1);
export const millinewtons: Constructor<Newtons> = scaled("millinewtons", 1, 1000);
/** Pounds-force, 0.45359237 kg times standard gravity. @example poundsForce(1) // => 4.4482216 */
export const poundsForce: Constructor<Newtons> = scaled("pounds-force", 0.45359237 * 9.80665);
export const pascals: Constructor<Pascals> = scaled("pascals", 1);
export const watts: Constructor<Watts> = scaled("watts", 1);
export const newtonsPerMetre: Constructor<NewtonsPerMetre> = scaled("newtons per metre", 1);
export const pascalSeconds: Constructor<PascalSeconds> = scaled("pascal seconds", 1);
export const squareMetresPerSecond: Constructor<SquareMetresPerSecond> = scaled(
  "square metres per second",
  1,
);
export const celsius: Constructor<Celsius> = scaled("degrees Celsius", 1);
/** Degrees Fahrenheit as Celsius. @example fahrenheit(50) // => 10 */
export const fahrenheit: Constructor<Celsius> = (value) =>
  celsius((scaled<Celsius>("degrees Fahrenheit", 1)(value) - 32) / 1.8);
export const radians: Constructor<Radians> = scaled("radians", 1);
/** @example degrees(180) // => 3.141592653589793 */
export const degrees: Constructor<Radians> = scaled("degrees", Math.PI, 180);
export const heightAboveBed: Constructor<HeightAboveBed> = scaled("height above bed", 1);
export const depthBelowSurface: Constructor<DepthBelowSurface> = scaled("depth below surface", 1);

/** Standard gravity, 9.80665 m/s² exactly. [CGPM1901] */
export const standardGravity = 9.80665;
