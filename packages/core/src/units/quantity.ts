/** Branded SI numbers: a quantity is a number that remembers its dimension at compile time and costs nothing at run time. */

declare const dimension: unique symbol;
declare const datum: unique symbol;

/** A finite number in SI units whose dimension is `D`. Made only by the constructors of this room. */
export type Quantity<D extends string> = number & { readonly [dimension]: D };

export type Metres = Quantity<"length">;
export type SquareMetres = Quantity<"area">;
export type CubicMetres = Quantity<"volume">;
export type CubicMetresPerSecond = Quantity<"discharge">;
/** Flow per width of a stream, which is also depth times mean speed, m²/s. */
export type UnitDischarge = Quantity<"unit-discharge">;
export type Seconds = Quantity<"time">;
export type PerSecond = Quantity<"rate">;
export type MetresPerSecond = Quantity<"speed">;
export type Kilograms = Quantity<"mass">;
export type KilogramsPerCubicMetre = Quantity<"density">;
export type Newtons = Quantity<"force">;
export type Pascals = Quantity<"stress">;
export type Watts = Quantity<"power">;
export type NewtonsPerMetre = Quantity<"surface-tension">;
export type PascalSeconds = Quantity<"dynamic-viscosity">;
export type SquareMetresPerSecond = Quantity<"kinematic-viscosity">;
export type Celsius = Quantity<"temperature">;
export type Radians = Quantity<"angle">;

/** A length measured upwards from the bed, m. */
export type HeightAboveBed = Metres & { readonly [datum]: "bed" };
/** A length measured downwards from the surface, m. */
export type DepthBelowSurface = Metres & { readonly [datum]: "surface" };

/** The sum of two quantities of one dimension. @example plus(feet(1), inches(6)) // => 0.4572 */
export function plus<Q extends number>(a: Q, b: NoInfer<Q>): Q {
  return (a + b) as Q;
}

/** The difference of two quantities of one dimension. @example minus(metres(1), metres(0.25)) // => 0.75 */
export function minus<Q extends number>(a: Q, b: NoInfer<Q>): Q {
  return (a - b) as Q;
}

/** A quantity times a plain number. @example times(metres(2), 1.5) // => 3 */
export function times<Q extends number>(a: Q, factor: number): Q {
  return (a * factor) as Q;
}

/** The plain ratio of two quantities of one dimension. @example ratio(feet(1), inches(1)) // => 12 */
export function ratio<Q extends number>(a: Q, b: NoInfer<Q>): number {
  return a / b;
}

/** Whether `a` is at least `b`, both of one dimension. @example atLeast(feet(1), inches(12)) // => true */
export function atLeast<Q extends number>(a: Q, b: NoInfer<Q>): boolean {
  return a >= b;
}
