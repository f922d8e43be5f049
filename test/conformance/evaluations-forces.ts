/** Drag and settling, as the cases ask for them. */
import {
  celsius,
  cubicMetres,
  cylinderDrag,
  explicitWater,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  type Sinker,
  sphereDrag,
  squareMetresPerSecond,
  terminalSpeed,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number } from "./inputs.js";

/** A grain is a sinker that is only a bead. Plain data: grains are lighter than the lightest sinker that `sinker()` accepts. */
function settlingSpeed(i: Inputs): number {
  const diameter = number(i, "diameter");
  const volume = (Math.PI * diameter ** 3) / 6;
  const grain: Sinker = {
    mass: kilograms(number(i, "grainDensity") * volume),
    volume: cubicMetres(volume),
    bead: metres(diameter),
    dressing: 1,
    knot: "tight",
    beadDrag: "standard",
    bodyDrag: "standard",
  };
  const fluid = explicitWater({
    density: kilogramsPerCubicMetre(number(i, "density")),
    kinematicViscosity: squareMetresPerSecond(number(i, "viscosity") / number(i, "density")),
    temperature: celsius(20),
  });
  return terminalSpeed(grain, fluid);
}

export const forceEvaluations = {
  "drag coefficient of a sphere": (i: Inputs): number => sphereDrag(number(i, "reynolds")),
  "drag coefficient of a cylinder": (i: Inputs): number => cylinderDrag(number(i, "reynolds")),
  "settling speed of a sphere, m/s": (i: Inputs): number => settlingSpeed(i),
  "settling speed of a sphere, ft/s": (i: Inputs): number => settlingSpeed(i) / 0.3048,
} as const;
