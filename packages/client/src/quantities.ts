/** Quantities as a request says them, one function for each unit: `feet(3)` is `{ value: 3, unit: "ft" }`.
 *  No symbol belongs to two dimensions, so a unit of the wrong dimension does not compile. All throw RangeError for NaN and infinities. */

import type { Schemas } from "./types.js";

/** Every unit of the document. */
export type Unit = {
  [S in keyof Schemas]: Schemas[S] extends { readonly value: number; readonly unit: infer U extends string }
    ? U
    : never;
}[keyof Schemas];

export interface Quantity<U extends Unit> {
  readonly value: number;
  readonly unit: U;
}

type Say<U extends Unit> = (value: number) => Quantity<U>;

/** The function that says values in a unit. */
function say<U extends Unit>(unit: U): Say<U> {
  return (value) => {
    if (!Number.isFinite(value)) throw new RangeError(`a value in ${unit} must be finite, got ${value}`);
    return { value, unit };
  };
}

export const metres: Say<"m"> = say("m");
export const centimetres: Say<"cm"> = say("cm");
export const millimetres: Say<"mm"> = say("mm");
export const feet: Say<"ft"> = say("ft");
export const inches: Say<"in"> = say("in");

export const metresPerSecond: Say<"m/s"> = say("m/s");
export const centimetresPerSecond: Say<"cm/s"> = say("cm/s");
export const feetPerSecond: Say<"ft/s"> = say("ft/s");
export const milesPerHour: Say<"mph"> = say("mph");
export const kilometresPerHour: Say<"km/h"> = say("km/h");

export const seconds: Say<"s"> = say("s");
export const minutes: Say<"min"> = say("min");

export const kilograms: Say<"kg"> = say("kg");
export const grams: Say<"g"> = say("g");
export const milligrams: Say<"mg"> = say("mg");
export const grains: Say<"gr"> = say("gr");

export const newtons: Say<"N"> = say("N");
export const millinewtons: Say<"mN"> = say("mN");
export const poundsForce: Say<"lbf"> = say("lbf");

export const celsius: Say<"degC"> = say("degC");
export const fahrenheit: Say<"degF"> = say("degF");

export const degrees: Say<"deg"> = say("deg");
export const radians: Say<"rad"> = say("rad");

export const kilogramsPerCubicMetre: Say<"kg/m3"> = say("kg/m3");
export const perSecond: Say<"1/s"> = say("1/s");

export const squareMetres: Say<"m2"> = say("m2");
export const squareFeet: Say<"ft2"> = say("ft2");

export const cubicMillimetres: Say<"mm3"> = say("mm3");
export const cubicMetres: Say<"m3"> = say("m3");
export const cubicFeet: Say<"ft3"> = say("ft3");

export const cubicMetresPerSecond: Say<"m3/s"> = say("m3/s");
export const litresPerSecond: Say<"L/s"> = say("L/s");
export const cubicFeetPerSecond: Say<"ft3/s"> = say("ft3/s");

export const squareMetresPerSecond: Say<"m2/s"> = say("m2/s");
export const squareFeetPerSecond: Say<"ft2/s"> = say("ft2/s");

export const pascals: Say<"Pa"> = say("Pa");
export const poundsForcePerSquareFoot: Say<"lbf/ft2"> = say("lbf/ft2");

export const watts: Say<"W"> = say("W");
export const horsepower: Say<"hp"> = say("hp");
