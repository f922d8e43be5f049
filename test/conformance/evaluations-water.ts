/** Water properties and interpolation, as the cases ask for them. */
import { celsius, monotoneCubic, waterDensity, waterSurfaceTension, waterViscosity } from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, numbers } from "./inputs.js";

const kelvin = (inputs: Inputs) => celsius(number(inputs, "kelvin") - 273.15);

export const waterEvaluations = {
  "density, kg/m³, at °C": (i: Inputs): number => waterDensity(celsius(number(i, "celsius"))),
  "density, kg/m³, at K": (i: Inputs): number => waterDensity(kelvin(i)),
  "viscosity, µPa s, at °C": (i: Inputs): number => 1e6 * waterViscosity(celsius(number(i, "celsius"))),
  "viscosity, µPa s, at K": (i: Inputs): number => 1e6 * waterViscosity(kelvin(i)),
  "surface tension, mN/m, at °C": (i: Inputs): number =>
    1e3 * waterSurfaceTension(celsius(number(i, "celsius"))),
  "monotone cubic at x": (i: Inputs): number =>
    monotoneCubic(numbers(i, "x"), numbers(i, "y")).at(number(i, "at")),
  "monotone cubic, integral": (i: Inputs): number => monotoneCubic(numbers(i, "x"), numbers(i, "y")).integral,
} as const;
