/** Air-free liquid water at atmospheric pressure: density, viscosity and surface tension from its temperature. */

import { raise } from "../elementary/index.js";
import { caveatFor, type Grounds, type Validity } from "../sources/index.js";
import {
  type Celsius,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type NewtonsPerMetre,
  newtonsPerMetre,
  type PascalSeconds,
  pascalSeconds,
  requirePositive,
  requireWithin,
  type SquareMetresPerSecond,
  squareMetresPerSecond,
} from "../units/index.js";

export interface Water {
  readonly temperature: Celsius;
  readonly density: KilogramsPerCubicMetre;
  readonly dynamicViscosity: PascalSeconds;
  readonly kinematicViscosity: SquareMetresPerSecond;
  readonly surfaceTension: NewtonsPerMetre;
  readonly grounds: Grounds;
}

/** Everything the project needs to know of water at a temperature from -20 to 110 °C.
 *  Dissolved solids and air are ignored (density less than 0.1 % in a trout stream).
 *  Throws QuantityError outside -20 to 110 °C: past it the substance is no liquid water.
 *  @example waterAt(celsius(15)).density // => 999.10 */
export function waterAt(temperature: Celsius): Water {
  requireWithin("water temperature", temperature, -20, 110, "°C");
  const density = waterDensity(temperature);
  const dynamicViscosity = waterViscosity(temperature);
  return {
    temperature,
    density,
    dynamicViscosity,
    kinematicViscosity: squareMetresPerSecond(dynamicViscosity / density),
    surfaceTension: waterSurfaceTension(temperature),
    grounds: {
      relations: ["IAPWS2011", "IAPWS1994"],
      assumptions: [],
      caveats: caveatFor(surfaceTensionValidity, temperature),
    },
  };
}

/** Water whose properties are given, for checks against books that state their own. Surface tension defaults to that of water at 15 °C, 0.0735 N/m. */
export function explicitWater(given: {
  readonly density: KilogramsPerCubicMetre;
  readonly kinematicViscosity: SquareMetresPerSecond;
  readonly temperature: Celsius;
  readonly surfaceTension?: NewtonsPerMetre;
}): Water {
  requirePositive("density", given.density, "kg/m³");
  requirePositive("kinematic viscosity", given.kinematicViscosity, "m²/s");
  return {
    ...given,
    dynamicViscosity: pascalSeconds(given.density * given.kinematicViscosity),
    surfaceTension: given.surfaceTension ?? waterSurfaceTension(given.temperature),
    grounds: { relations: [], assumptions: [], caveats: [] },
  };
}

const densityAlpha = [
  [6.74458446e3, 4],
  [-2.22521604e5, 5],
  [1.00231247e8, 7],
  [-1.63552118e9, 8],
  [8.32299658e9, 9],
] as const;
const densityBeta = [
  [5.78545292e-3, 1],
  [-1.53195665e-2, 2],
  [3.11337859e-2, 3],
  [-4.23546241e-2, 4],
  [3.38713507e-2, 5],
  [-1.19946761e-2, 6],
] as const;

/** Density at 0.1 MPa: 1/v, v = (R 10 K / p0) (a5 + Σ a_i α^n_i + Σ b_i β^m_i), α = 10/(593 − T), β = 10/(T − 232), T in K.
 *  Valid -20 to 110 °C. [IAPWS2011] eq. 2.
 *  @example waterDensity(celsius(25)) // => 997.0470 */
export function waterDensity(temperature: Celsius): KilogramsPerCubicMetre {
  const T = temperature + 273.15;
  const alpha = 10 / (593 - T);
  const beta = 10 / (T - 232);
  let sum = 1.93763157e-2;
  for (const [a, n] of densityAlpha) sum += a * raise(alpha, n);
  for (const [b, m] of densityBeta) sum += b * raise(beta, m);
  return kilogramsPerCubicMetre(1e5 / (461.51805 * 10 * sum));
}

/** Dynamic viscosity at 0.1 MPa: 1e-6 Σ a_i (T/300 K)^b_i Pa s. Valid -20 to 110 °C, uncertainty 1 %. [IAPWS2011] eq. 7.
 *  @example waterViscosity(celsius(25)) // => 0.00088999677 */
export function waterViscosity(temperature: Celsius): PascalSeconds {
  const t = (temperature + 273.15) / 300;
  return pascalSeconds(
    1e-6 *
      (280.68 * raise(t, -1.9) +
        511.45 * raise(t, -7.7) +
        61.131 * raise(t, -19.6) +
        0.45903 * raise(t, -40)),
  );
}

/** Surface tension against air: 0.2358 τ^1.256 (1 − 0.625 τ) N/m, τ = 1 − T/647.096 K.
 *  Valid 248 to 647 K (surfaceTensionValidity). [IAPWS1994] eq. 1.
 *  @example waterSurfaceTension(celsius(20)) // => 0.07274 */
export function waterSurfaceTension(temperature: Celsius): NewtonsPerMetre {
  const tau = 1 - (temperature + 273.15) / 647.096;
  return newtonsPerMetre(0.2358 * raise(tau, 1.256) * (1 - 0.625 * tau));
}

export const surfaceTensionValidity: Validity = {
  relation: "IAPWS1994",
  quantity: "water temperature, °C",
  min: -25,
  max: 373.946,
};
