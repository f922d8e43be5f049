/** Which law a column follows, with its parameters, and what that takes for granted. */

import { exp } from "../elementary/index.js";
import { type Assumption, type Caveat, caveatFor } from "../sources/index.js";
import { heightAboveBed, type Metres, metres, QuantityError } from "../units/index.js";
import type { Water } from "../water/index.js";
import { meanOfFloats, type Observation } from "./observation.js";
import {
  type ColumnLaw,
  dipValidity,
  type MeasuredPoint,
  mixingLayerValidity,
  type Profile,
  powerValidity,
  shapeOf,
  vonKarman,
} from "./profile.js";

/** The law of an observation: the one it forces, else the one that what is known allows. */
export function chooseProfile(
  o: Observation,
  water: Water,
  surfaceSpeed: number,
  d84: Metres | null,
): Profile {
  const law = o.law ?? chooseLaw(o, d84);
  switch (law) {
    case "measured":
      if ((o.points?.length ?? 0) < 2)
        throw new QuantityError("measured points", "two or more", o.points?.length ?? 0);
      return { law, points: withSurface(o) };
    case "power":
      return { law, exponent: o.exponent ?? 6 };
    case "mixing-layer":
      if (d84 === null) throw new QuantityError("bed", "given for the mixing-layer law", undefined);
      return { law, stoneSize: d84 };
    default:
      return logFamily(law, o, water, surfaceSpeed, d84);
  }
}

function chooseLaw(o: Observation, d84: Metres | null): ColumnLaw {
  if ((o.points?.length ?? 0) >= 2) return "measured";
  if (o.roughnessLength === undefined && o.roughness === undefined) {
    if (d84 === null || o.exponent !== undefined) return "power";
    if (o.depth / d84 <= mixingLayerValidity.max) return "mixing-layer";
  }
  if (o.channelWidth !== undefined && o.channelWidth < 5 * o.depth) return "dip";
  return o.wake === undefined ? "log" : "log-wake";
}

/** The measured points, with the surface speed as one more where it was given too. */
function withSurface(o: Observation): readonly MeasuredPoint[] {
  const points = o.points ?? [];
  const speed = o.surfaceSpeed ?? (o.timedFloats?.length ? meanOfFloats(o.timedFloats).speed : undefined);
  if (speed === undefined) return points;
  return [
    ...points.filter((p) => p.heightAboveBed < o.depth),
    { heightAboveBed: heightAboveBed(o.depth), speed },
  ];
}

function logFamily(
  law: "log" | "log-wake" | "dip",
  o: Observation,
  water: Water,
  surfaceSpeed: number,
  d84: Metres | null,
): Profile {
  if (o.roughnessLength === undefined && o.roughness === undefined && d84 === null) {
    throw new QuantityError("bed", `given (or a roughness) for the ${law} law`, undefined);
  }
  const build = (z0: number): Profile => {
    const roughnessLength = metres(z0);
    if (law === "log") return { law, roughnessLength };
    if (law === "log-wake") return { law, roughnessLength, wake: o.wake ?? 0.2 };
    return { law, roughnessLength, dip: dipStrength(o) };
  };
  if (o.roughnessLength !== undefined) return build(o.roughnessLength);
  const rough = (o.roughness ?? 3.5 * (d84 ?? 0)) / 30;
  let z0 = rough > 0 ? rough : 1e-6;
  if (surfaceSpeed === 0) return build(z0);
  // z0 = ks/30 + ν/(9 u*), u* from z0: a contraction, the smooth part is a small correction
  for (let i = 0; i < 40; i++) {
    const next =
      rough +
      (water.kinematicViscosity * shapeOf(build(z0), o.depth).surface) / (9 * vonKarman * surfaceSpeed);
    if (Math.abs(next - z0) <= 1e-15 * z0) break;
    z0 = next;
  }
  return build(z0);
}

/** α = 1.3 exp(−y/h), y the distance to the nearer side wall: the middle of the channel. [Yang2004] eq. 27 */
function dipStrength(o: Observation): number {
  if (o.channelWidth === undefined)
    throw new QuantityError("channel width", "given for the dip law", undefined);
  return 1.3 * exp(-o.channelWidth / 2 / o.depth);
}

export function lawAssumptions(o: Observation, profile: Profile): readonly Assumption[] {
  if (profile.law === "power" && o.exponent === undefined)
    return [defaulted("exponent of the power law", "6")];
  if (profile.law === "log-wake" && o.wake === undefined) return [defaulted("wake strength", "0.2")];
  const ksTaken =
    "roughnessLength" in profile && o.roughness === undefined && o.roughnessLength === undefined;
  return ksTaken ? [{ name: "roughness ks", value: "3.5 D84", basis: "practice" }] : [];
}

export function defaulted(name: string, value: string): Assumption {
  return { name, value, basis: "default" };
}

export function lawCaveats(profile: Profile, o: Observation, submergence: number | null): readonly Caveat[] {
  if (profile.law === "mixing-layer" && submergence !== null)
    return caveatFor(mixingLayerValidity, submergence);
  if (profile.law === "dip") return caveatFor(dipValidity, (o.channelWidth ?? Number.NaN) / o.depth);
  if (profile.law === "power") return caveatFor(powerValidity, profile.exponent);
  return [];
}
