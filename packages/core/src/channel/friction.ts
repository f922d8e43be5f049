/** How fast water runs down a slope against a bed: the laws of uniform flow, in plain numbers for kernels. */

import { cbrt, ln, log10 } from "../elementary/index.js";
import { type Metres, QuantityError, requirePositive, type SquareMetresPerSecond } from "../units/index.js";

/** K_u of Manning's formula as a book prints it: 1 with metres, 1.49 or 1.486 with feet. The exact factor of feet, 0.3048^(−1/3) = 1.485919, is `si`. */
export type ManningUnits = "si" | "us-1.49" | "us-1.486";

/** How the roughness of several zones becomes one. */
export type CompositeMethod = "divided" | "horton-einstein" | "pavlovskii" | "felkel";

export type Friction =
  /** V = (K_u/n) R^(2/3) √S. [Chow1959] eq. 5-6 */
  | { readonly law: "manning"; readonly n: number; readonly units?: ManningUnits }
  /** Manning with the n of each zone of a surveyed section. */
  | { readonly law: "manning-zones"; readonly method: CompositeMethod; readonly units?: ManningUnits }
  /** V = C √(R S), C in m^½/s. [Chow1959] eq. 5-2 */
  | { readonly law: "chezy"; readonly c: number }
  /** V = √(8 g R S/f). [Chow1959] eq. 1-5 */
  | { readonly law: "darcy"; readonly f: number }
  /** 1/√f = −2 log10(ks/(14.84 R)): fully rough. [ASCE1963] */
  | { readonly law: "rough"; readonly roughness: Metres }
  /** 1/√f = −2 log10(2.51/(Re √f)), Re = 4 R V/ν: smooth. [ASCE1963] */
  | { readonly law: "smooth"; readonly viscosity: SquareMetresPerSecond }
  /** 1/√f = −2 log10(ks/(14.84 R) + 2.51/(Re √f)): between the two. [ASCE1963] */
  | { readonly law: "transitional"; readonly roughness: Metres; readonly viscosity: SquareMetresPerSecond };

/** ks/d of a pipe is ks/(4 R) here, and Colebrook's 3.71 becomes 14.84. */
const roughFactor = 14.84;
const smoothFactor = 2.51;

/** K_u over 0.3048^(−1/3): what multiplies the formula in SI. @example manningFactor("us-1.49") // => 1.0027467 */
export function manningFactor(units: ManningUnits = "si"): number {
  switch (units) {
    case "si":
      return 1;
    case "us-1.49":
      return 1.49 * cbrt(0.3048);
    case "us-1.486":
      return 1.486 * cbrt(0.3048);
  }
}

/** A law of friction for one hydraulic radius, SI: speed from slope and slope from speed. */
export interface SpeedLaw {
  readonly speed: (radius: number, slope: number) => number;
  readonly slope: (radius: number, speed: number) => number;
  /** d ln V/d ln R at a slope. */
  readonly exponent: (radius: number, slope: number) => number;
}

/** Throws QuantityError for a roughness, coefficient or viscosity that is not above 0. */
export function speedLaw(friction: Exclude<Friction, { law: "manning-zones" }>, gravity: number): SpeedLaw {
  switch (friction.law) {
    case "manning":
      requirePositive("Manning n", friction.n);
      return powerLaw(manningFactor(friction.units) / friction.n, 2 / 3);
    case "chezy":
      requirePositive("Chezy C", friction.c);
      return powerLaw(friction.c, 0.5);
    case "darcy":
      requirePositive("Darcy friction factor", friction.f);
      return powerLaw(Math.sqrt((8 * gravity) / friction.f), 0.5);
    case "rough":
      requirePositive("roughness", friction.roughness, "m");
      return logLaw(friction.roughness, 0, gravity);
    case "smooth":
      requirePositive("viscosity", friction.viscosity, "m²/s");
      return logLaw(0, friction.viscosity, gravity);
    case "transitional":
      requirePositive("roughness", friction.roughness, "m");
      requirePositive("viscosity", friction.viscosity, "m²/s");
      return logLaw(friction.roughness, friction.viscosity, gravity);
  }
}

function powerLaw(factor: number, exponent: number): SpeedLaw {
  const root = exponent === 0.5 ? Math.sqrt : (x: number): number => cbrt(x) ** 2;
  return {
    speed: (radius, slope) => factor * root(radius) * Math.sqrt(slope),
    slope: (radius, speed) => (speed / (factor * root(radius))) ** 2,
    exponent: () => exponent,
  };
}

/** V = −2 √(8 g R S) log10(ks/(14.84 R) + 2.51 ν/(4 R √(8 g R S))): explicit, since Re √f holds no speed when the slope is known. */
function logLaw(roughness: number, viscosity: number, gravity: number): SpeedLaw {
  const rough = (radius: number): number => roughness / (roughFactor * radius);
  const smooth = (radius: number, slope: number): number =>
    (smoothFactor * viscosity) / (4 * radius * Math.sqrt(8 * gravity * radius * slope));
  return {
    speed: (radius, slope) =>
      -2 * Math.sqrt(8 * gravity * radius * slope) * log10(rough(radius) + smooth(radius, slope)),
    slope: (radius, speed) => {
      const x = inverseRootFriction(rough(radius), (smoothFactor * viscosity) / (4 * radius * speed));
      return (speed / x) ** 2 / (8 * gravity * radius);
    },
    exponent: (radius, slope) => {
      const [a, b] = [rough(radius), smooth(radius, slope)];
      return 0.5 - (a + 1.5 * b) / ((a + b) * ln(a + b));
    },
  };
}

/** x = 1/√f with x = −2 log10(a + b x), by Newton: the left side is convex in x, so it comes from below and cannot miss. */
function inverseRootFriction(a: number, b: number): number {
  if (!(a < 1)) throw new QuantityError("roughness over 14.84 hydraulic radii", "below 1", a);
  let x = a > 0 ? -2 * log10(a) : 8;
  for (let step = 0; step < 100; step++) {
    const u = a + b * x;
    const change = (x + 2 * log10(u)) / (1 + (2 * b) / (u * Math.LN10));
    x = Math.max(x - change, x / 8);
    if (Math.abs(change) <= 1e-15 * x) break;
  }
  return x;
}
