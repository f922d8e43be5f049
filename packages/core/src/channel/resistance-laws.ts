/** Published laws of resistance of stony beds: V/u* = √(8/f) against relative submergence, or Manning's n of the grains. */

import { log10, raise } from "../elementary/index.js";
import { requirePositive } from "../units/index.js";

/** Most of them were fitted as 1/√f; √8 turns that into V/u*. */
const root8 = Math.sqrt(8);

/** V/u* = √8 (1.16 + 2.0 log10(R/D84)). R over D84 from 0.9 to 69. Negative below 0.263. [Limerinos1970] as quoted.
 *  @example limerinosRatio(5) // => 7.2349 */
export function limerinosRatio(radiusOverD84: number): number {
  requirePositive("hydraulic radius over D84", radiusOverD84);
  return root8 * (1.16 + 2 * log10(radiusOverD84));
}

/** V/u* = 4 + 5.62 log10(h/D84). h/D84 below 10, slope 0.004 to 0.04. Negative below 0.194. [Bathurst1985]
 *  @example bathurstRatio(1) // => 4.0000 */
export function bathurstRatio(depthOverD84: number): number {
  requirePositive("depth over D84", depthOverD84);
  return 4 + 5.62 * log10(depthOverD84);
}

/** V/u* = √8 2.03 log10(a R/(3.5 D84)); the shape factor a runs from 11.1 to 13.46, 11.75 in a wide channel. [Hey1979]
 *  Code in the wild writes 1.02 + 2.03 log10(R/D84), which is a = 11.1: 1 to 4 % more n.
 *  @example heyRatio(5) // => 7.0332 */
export function heyRatio(radiusOverD84: number, shape = 11.75): number {
  requirePositive("hydraulic radius over D84", radiusOverD84);
  requirePositive("shape factor", shape);
  return root8 * 2.03 * log10((shape * radiusOverD84) / 3.5);
}

/** Variable power equation: V/u* = a1 a2 x/√(a1² + a2² x^(5/3)), x = R/D84, a1 = 6.5 (7 to 8 also used), a2 = 2.5 (1 to 4).
 *  Its limits are a2 x in shallow and a1 x^(1/6) in deep water. [Ferguson2007]
 *  @example fergusonRatio(5) // => 7.0288 */
export function fergusonRatio(radiusOverD84: number, deep = 6.5, shallow = 2.5): number {
  requirePositive("hydraulic radius over D84", radiusOverD84);
  requirePositive("coefficient of deep water", deep);
  requirePositive("coefficient of shallow water", shallow);
  return (
    (deep * shallow * radiusOverD84) /
    Math.sqrt(deep * deep + shallow * shallow * raise(radiusOverD84, 5 / 3))
  );
}

/** V/u* = 4.416 x^1.904 (1 + (x/1.283)^1.618)^−1.083, x = d/D84; from 2890 field measurements. [RickenmannRecking2011]
 *  Below x = 0.5 it falls under Ferguson's by more than 20 %, and it goes as x^1.904 there, not as x.
 *  @example rickenmannReckingRatio(5) // => 7.7862 */
export function rickenmannReckingRatio(depthOverD84: number): number {
  requirePositive("depth over D84", depthOverD84);
  return 4.416 * raise(depthOverD84, 1.904) * raise(1 + raise(depthOverD84 / 1.283, 1.618), -1.083);
}

/** The same from discharge: U/√(g S D84) = 1.443 Q^0.60 (1 + (Q/43.78)^0.8214)^−0.2435, Q = q/√(g S D84³). [RickenmannRecking2011]
 *  @example rickenmannReckingSpeed(100) // => 17.5436 */
export function rickenmannReckingSpeed(unitDischarge: number): number {
  requirePositive("unit discharge over √(g S D84³)", unitDischarge);
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a fitted coefficient, not log2 e
  return 1.443 * raise(unitDischarge, 0.6) * raise(1 + raise(unitDischarge / 43.78, 0.8214), -0.2435);
}

/** V/u* = 6.25 + 5.75 log10(R/ks): the log law over a rough bed averaged over a section. [Keulegan1938]
 *  @example keuleganRatio(10) // => 12 */
export function keuleganRatio(radiusOverRoughness: number): number {
  requirePositive("hydraulic radius over roughness", radiusOverRoughness);
  return 6.25 + 5.75 * log10(radiusOverRoughness);
}

/** V/u* = √8 (0.76 + 1.98 log10(R/D50)), rigid gravel beds. [Griffiths1981]
 *  @example griffithsRatio(1) // => 2.1496 */
export function griffithsRatio(radiusOverD50: number): number {
  requirePositive("hydraulic radius over D50", radiusOverD50);
  return root8 * (0.76 + 1.98 * log10(radiusOverD50));
}

/** V/u* = √8 (1.26 + 2.16 log10(R/D90)), gravel beds. [Bray1979]
 *  @example brayRatio(1) // => 3.5638 */
export function brayRatio(radiusOverD90: number): number {
  requirePositive("hydraulic radius over D90", radiusOverD90);
  return root8 * (1.26 + 2.16 * log10(radiusOverD90));
}

/** V/u* = √8 (1.0 + 2.0 log10(R/D84)). [LeopoldWolman1957]
 *  @example leopoldWolmanRatio(1) // => 2.8284 */
export function leopoldWolmanRatio(radiusOverD84: number): number {
  requirePositive("hydraulic radius over D84", radiusOverD84);
  return root8 * (1 + 2 * log10(radiusOverD84));
}

/** n of the grains alone: 0.0474 D50^(1/6), D50 in m (1/21.1; other denominators go with other sizes). [Strickler1923]
 *  @example stricklerRoughness(0.1) // => 0.03229 */
export function stricklerRoughness(d50: number): number {
  requirePositive("D50", d50, "m");
  return 0.0474 * raise(d50, 1 / 6);
}

/** n of the grains alone: 0.0431 D90^(1/6), D90 in m, from 4.57 to 134 mm. [Maynord1991]
 *  @example maynordRoughness(0.05) // => 0.02616 */
export function maynordRoughness(d90: number): number {
  requirePositive("D90", d90, "m");
  return 0.0431 * raise(d90, 1 / 6);
}

/** n of steep streams: 0.39 S^0.38 R^−0.16 with R in feet, here converted exactly (0.3225 with R in m; 0.32 and 0.323 are printed).
 *  Slope 0.002 to 0.04, R 0.15 to 2.1 m. Too high on gentler beds. [Jarrett1984]
 *  @example jarrettRoughness(0.03, 0.3) // => 0.10315 */
export function jarrettRoughness(slope: number, hydraulicRadius: number): number {
  requirePositive("slope", slope);
  requirePositive("hydraulic radius", hydraulicRadius, "m");
  return 0.39 * raise(slope, 0.38) * raise(hydraulicRadius / 0.3048, -0.16);
}
