/** What is uncertain about the water and the rig beforehand, and from a point of a standard normal to one water and one rig. */

import { type Column, type Observation, type Profile, speedProfile, waterColumn } from "../column/index.js";
import { exp, ln, raise } from "../elementary/index.js";
import type { Float, Sinker } from "../forces/index.js";
import { type Rig, rig } from "../rig/index.js";
import type { Pieces } from "../setup/index.js";
import { type Built, buildDry, buildNymph, buildTippet } from "../tackle/index.js";
import { heightAboveBed, metres, metresPerSecond, QuantityError, requireWithin } from "../units/index.js";
import type { AdjustQuestion, RigUncertainty } from "./adjust-types.js";

export type UncertainPart = keyof RigUncertainty;
const parts: readonly UncertainPart[] = ["depth", "surfaceSpeed", "profile", "drag", "treatment"];

/** Factors on what was stated; `treatment` is the exponent on it. */
export type Factors = Readonly<Record<UncertainPart, number>>;

export interface Prior {
  /** The base that the factors act on. */
  readonly column: Column;
  readonly dry: Built<Float>;
  readonly nymph: Built<Sinker>;
  readonly tippet: ReturnType<typeof buildTippet>;
  readonly spread: Factors;
  readonly dimension: number;
  readonly factorsAt: (point: readonly number[]) => Factors;
}

/** Compiles the prior: independent lognormals about what was stated.
 *  Throws QuantityError for water that stands, in which nothing drifts, for spreads outside 0 to 2, or when nothing is uncertain. */
export function priorOf({ observation, inHand, uncertainty = {} }: AdjustQuestion): Prior {
  const column = waterColumn(observation);
  requireWithin("surface speed", column.surfaceSpeed, 0.001, 10, "m/s");
  const spread: Factors = { ...defaultSpread(column), ...uncertainty };
  for (const part of parts) requireWithin(`uncertainty of ${part}`, spread[part], 0, 2);
  const active = parts.filter((part) => spread[part] > 0);
  if (active.length === 0) throw new QuantityError("uncertainty of water and rig", "above 0 somewhere", 0);
  const prior: Prior = {
    column,
    dry: buildDry(inHand.dry),
    nymph: buildNymph(inHand.nymph),
    tippet: buildTippet(inHand.tippet, inHand.dropper),
    spread,
    dimension: active.length,
    factorsAt: (point) => {
      const at = (part: UncertainPart): number => {
        const i = active.indexOf(part);
        return i < 0 ? 1 : exp(spread[part] * point[i]!);
      };
      return {
        depth: at("depth"),
        surfaceSpeed: at("surfaceSpeed"),
        profile: at("profile"),
        drag: at("drag"),
        treatment: at("treatment"),
      };
    },
  };
  const stated: Factors = { depth: 1, surfaceSpeed: 1, profile: 1, drag: 1, treatment: 1 };
  if (worldWith(prior, stated) === null)
    throw new QuantityError(
      "depth",
      "more than four roughness lengths, with a surface that runs forward",
      column.depth,
    );
  return prior;
}

function defaultSpread({ profile, surfaceSpeed, surfaceSpeedUncertainty }: Column): Factors {
  const ofLaw = { log: 0.7, "log-wake": 0.7, dip: 0.7, power: 0.3, "mixing-layer": 0.35, measured: 0 };
  const timed =
    surfaceSpeedUncertainty === null || surfaceSpeed === 0
      ? 0.1
      : Math.min(1, Math.max(0.03, surfaceSpeedUncertainty / surfaceSpeed));
  return { depth: 0.1, surfaceSpeed: timed, profile: ofLaw[profile.law], drag: 0.3, treatment: 0.7 };
}

/** A water and a rig to settle. The column has depth, speed and law; what else it says stays that of the base. */
export interface World {
  readonly column: Column;
  readonly rig: Rig;
}

/** The water and the rig with factors put in, or null where there is no such water or rig. */
export function worldWith(prior: Prior, f: Factors): World | null {
  const { column, dry, nymph, tippet } = prior;
  const depth = f.depth * column.depth;
  const surfaceSpeed = f.surfaceSpeed * column.surfaceSpeed;
  const profile = profileWith(column.profile, f);
  const dressing = nymph.body.dressing * f.drag;
  const possible = depth >= 0.01 && depth <= 50 && surfaceSpeed <= 10 && dressing <= 20;
  if (!(possible && isPossible(profile, depth))) return null;
  return {
    column: { ...column, depth: metres(depth), surfaceSpeed: metresPerSecond(surfaceSpeed), profile },
    rig: rig(
      { ...dry.body, treatment: treatmentWith(prior, f) },
      { line: tippet.body, sinker: { ...nymph.body, dressing } },
    ),
  };
}

function profileWith(profile: Profile, f: Factors): Profile {
  switch (profile.law) {
    case "power":
      return { ...profile, exponent: profile.exponent * f.profile };
    case "dip":
      // α = 1.3 exp(−width/2h): the depth that it was stated for is in it
      return {
        ...profile,
        roughnessLength: metres(profile.roughnessLength * f.profile),
        dip: 1.3 * raise(profile.dip / 1.3, 1 / f.depth),
      };
    case "mixing-layer":
      return { ...profile, stoneSize: metres(profile.stoneSize * f.profile) };
    case "measured":
      return {
        law: "measured",
        points: profile.points.map((point) => ({
          heightAboveBed: heightAboveBed(point.heightAboveBed * f.depth),
          speed: metresPerSecond(point.speed * f.surfaceSpeed),
        })),
      };
    default:
      return { ...profile, roughnessLength: metres(profile.roughnessLength * f.profile) };
  }
}

/** Exponents from 1 to 100, stones to 10 m, a roughness length under a quarter of the depth, and a surface that a dip leaves running forward. */
function isPossible(profile: Profile, depth: number): boolean {
  if (profile.law === "power") return profile.exponent >= 1 && profile.exponent <= 100;
  if (profile.law === "mixing-layer") return profile.stoneSize <= 10;
  if (profile.law === "measured") return true;
  const dip = profile.law === "dip" ? profile.dip : 0;
  return profile.roughnessLength < depth / 4 && ln(depth / profile.roughnessLength) > 5 * dip;
}

/** The observation with factors put in, its law forced: `waterColumn` gives the whole column. */
export function observationWith({ column }: Prior, given: Observation, f: Factors): Observation {
  const { timedFloats: _, roughness: __, points: ___, ...kept } = given;
  const profile = profileWith(column.profile, f);
  const water: Observation = {
    ...kept,
    depth: metres(f.depth * column.depth),
    surfaceSpeed: metresPerSecond(f.surfaceSpeed * column.surfaceSpeed),
    law: profile.law,
  };
  if (profile.law === "power") return { ...water, exponent: profile.exponent };
  if (profile.law === "mixing-layer") return { ...water, bed: { d84: profile.stoneSize } };
  if (profile.law === "measured") return { ...water, points: profile.points };
  return { ...water, roughnessLength: profile.roughnessLength };
}

export function treatmentWith({ dry }: Prior, f: Factors): number {
  return raise(dry.body.treatment, f.treatment);
}

/** Pieces with factors put in as measured values: a change of one of them is judged with the same drag and treatment. */
export function piecesWith({ dry, nymph, tippet, dropper }: Pieces, f: Factors, treatment: number): Pieces {
  const dressing = buildNymph(nymph).body.dressing * f.drag;
  return {
    dry: { ...dry, measured: { ...dry.measured, treatment } },
    nymph: { ...nymph, measured: { ...nymph.measured, dressing } },
    tippet,
    dropper,
  };
}

/** Speed at a fifth of the depth over that of the surface: the profile in one number that every law has. */
export function speedBelow(column: Column): number {
  const at = speedProfile(column);
  return at(0.2 * column.depth) / at(column.depth);
}
