/** From what a person can see at the water to the speed at every height over one spot. */

import {
  type Assumption,
  type Caveat,
  caveatFor,
  type Grounds,
  joinGrounds,
  type SourceKey,
} from "../sources/index.js";
import {
  type Celsius,
  celsius,
  type HeightAboveBed,
  heightAboveBed,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  QuantityError,
  requirePositive,
  requireWithin,
  type Seconds,
  standardGravity,
} from "../units/index.js";
import { type Water, waterAt } from "../water/index.js";
import { type BedClass, bedClassLimits } from "./bed.js";
import {
  type ColumnLaw,
  dipValidity,
  lawSource,
  type MeasuredPoint,
  mixingLayerValidity,
  type Profile,
  powerValidity,
  type Shape,
  shapeOf,
  vonKarman,
} from "./profile.js";

export interface TimedFloat {
  readonly distance: Metres;
  readonly time: Seconds;
}

/** What a person at the river can give. Only depth and some speed are needed; the rest sharpens the answer. */
export interface Observation {
  readonly depth: Metres;
  /** Speed of the surface over the spot. */
  readonly surfaceSpeed?: MetresPerSecond;
  /** Runs of something drifting on the surface over a distance: an alternative to `surfaceSpeed`. */
  readonly timedFloats?: readonly TimedFloat[];
  /** Speeds measured at heights above the bed, two or more: used as they are. */
  readonly points?: readonly MeasuredPoint[];
  /** Grade of the bed, or its measured D84 (the size that 84 % of the stones stay below). */
  readonly bed?: BedClass | { readonly d84: Metres };
  /** Equivalent sand roughness ks; 3.5 D84 unless given. */
  readonly roughness?: Metres;
  /** Height z0 at which the log law reaches zero; overrides `roughness`. */
  readonly roughnessLength?: Metres;
  /** Coles wake strength Π of the log-wake law. */
  readonly wake?: number;
  /** m of the power law, 6 unless given. */
  readonly exponent?: number;
  /** Width of the channel: tells whether the fastest water is under the surface. */
  readonly channelWidth?: Metres;
  /** Slope of the water surface: gives the shear velocity in place of the law. */
  readonly slope?: number;
  /** Water temperature, 12 °C unless given. */
  readonly temperature?: Celsius;
  /** Water of stated properties, in place of `temperature`. */
  readonly water?: Water;
  /** Forces a law in place of the choice by h/D84. */
  readonly law?: ColumnLaw;
}

/** The water over one spot. Plain data: `speedAt` and `speedProfile` read it. */
export interface Column {
  readonly depth: Metres;
  readonly surfaceSpeed: MetresPerSecond;
  /** Standard uncertainty of the surface speed where it came from several timed floats, else null. */
  readonly surfaceSpeedUncertainty: MetresPerSecond | null;
  readonly meanSpeed: MetresPerSecond;
  /** Depth mean over surface speed, a property of the law. */
  readonly surfaceRatio: number;
  /** Height at which the water runs at the depth mean (the highest, where there are two). */
  readonly heightOfMean: HeightAboveBed;
  readonly shearVelocity: MetresPerSecond;
  /** Depth mean over √(g h). */
  readonly froude: number;
  /** Depth over D84, null when the bed is unknown. */
  readonly relativeSubmergence: number | null;
  readonly profile: Profile;
  readonly water: Water;
  readonly grounds: Grounds;
}

/** The column over a spot. The law is chosen from what is known: measured points, else dip in channels narrower than five depths,
 *  else log (log-wake with Π given) above h/D84 = 7, mixing layer down to it, power law when the bed is unknown; `law` forces one.
 *  The law is scaled so that its surface speed is the measured one.
 *  Throws QuantityError naming the quantity for impossible or missing input.
 *  @example waterColumn({ depth: feet(3), surfaceSpeed: feetPerSecond(3), exponent: 6 }).surfaceRatio // => 0.8571 */
export function waterColumn(observation: Observation): Column {
  checkObservation(observation);
  const { depth } = observation;
  const water = observation.water ?? waterAt(observation.temperature ?? celsius(12));
  const surface = surfaceSpeedOf(observation);
  const stone = stoneSize(observation);
  const profile = chooseProfile(observation, water, surface.speed, stone.d84);
  const shape = shapeOf(profile, depth);
  const scale = surface.speed / shape.surface;
  const meanSpeed = metresPerSecond(scale * shape.mean);
  const shear = shearVelocity(observation, profile, shape, scale);
  const submergence = stone.d84 === null ? null : depth / stone.d84;
  const given: Grounds = {
    relations: [lawSource[profile.law], ...surface.relations, ...shear.relations, ...stone.relations],
    assumptions: [
      ...(observation.temperature === undefined && !observation.water
        ? [defaulted("water temperature", "12 °C")]
        : []),
      ...stone.assumptions,
      ...shear.assumptions,
      ...lawAssumptions(observation, profile),
    ],
    caveats: [...lawCaveats(profile, observation, submergence)],
  };
  return {
    depth,
    surfaceSpeed: surface.speed,
    surfaceSpeedUncertainty: surface.uncertainty,
    meanSpeed,
    surfaceRatio: shape.mean / shape.surface,
    heightOfMean: heightAboveBed(heightOf(shape, depth)),
    shearVelocity: shear.value,
    froude: meanSpeed / Math.sqrt(standardGravity * depth),
    relativeSubmergence: submergence,
    profile,
    water,
    grounds: joinGrounds(water.grounds, given),
  };
}

/** The speed at a height above the bed; above the surface the surface speed, below the bed zero.
 *  @example speedAt(waterColumn({ depth: metres(1), surfaceSpeed: metresPerSecond(1), exponent: 6 }), heightAboveBed(0.5)) // => 0.8909 */
export function speedAt(column: Column, height: HeightAboveBed): MetresPerSecond {
  return metresPerSecond(speedProfile(column)(Math.min(height, column.depth)));
}

/** The speed against height above the bed as a plain function, m and m/s, for kernels that ask many times; it continues the law above the surface. */
export function speedProfile(column: Column): (heightAboveBed: number) => number {
  const shape = shapeOf(column.profile, column.depth);
  const scale = column.surfaceSpeed / shape.surface;
  const { at } = shape;
  return (z) => scale * at(z);
}

function checkObservation(o: Observation): void {
  requireWithin("depth", o.depth, 0.01, 50, "m");
  if (o.surfaceSpeed !== undefined) requireWithin("surface speed", o.surfaceSpeed, 0, 10, "m/s");
  if (o.roughness !== undefined) requireWithin("roughness", o.roughness, 0, 10, "m");
  if (o.roughnessLength !== undefined) requirePositive("roughness length", o.roughnessLength, "m");
  if (o.wake !== undefined) requireWithin("wake strength", o.wake, -0.5, 2);
  if (o.exponent !== undefined) requireWithin("exponent of the power law", o.exponent, 1, 100);
  if (o.channelWidth !== undefined) requirePositive("channel width", o.channelWidth, "m");
  if (o.slope !== undefined) requireWithin("slope", o.slope, 0, 1);
  if (typeof o.bed === "object") requireWithin("D84", o.bed.d84, 1e-6, 10, "m");
  for (const run of o.timedFloats ?? []) {
    requirePositive("distance of a timed float", run.distance, "m");
    requirePositive("time of a timed float", run.time, "s");
  }
  for (const point of o.points ?? []) {
    requireWithin("height above the bed of a measured point", point.heightAboveBed, 0, o.depth, "m");
    requireWithin("speed of a measured point", point.speed, 0, 10, "m/s");
  }
}

interface SurfaceSpeed {
  readonly speed: MetresPerSecond;
  readonly uncertainty: MetresPerSecond | null;
  readonly relations: readonly SourceKey[];
}

function surfaceSpeedOf(o: Observation): SurfaceSpeed {
  if (o.surfaceSpeed !== undefined) return { speed: o.surfaceSpeed, uncertainty: null, relations: [] };
  if (o.timedFloats !== undefined && o.timedFloats.length > 0) return meanOfFloats(o.timedFloats);
  const top = o.points?.reduce((a, b) => (b.heightAboveBed > a.heightAboveBed ? b : a));
  if (top !== undefined) return { speed: top.speed, uncertainty: null, relations: [] };
  throw new QuantityError("surface speed", "given, or timed floats, or measured points", undefined);
}

/** Mean speed of the runs and its standard uncertainty s/√n. [ISO748], [JCGM100] 4.2.3 */
function meanOfFloats(runs: readonly TimedFloat[]): SurfaceSpeed {
  const speeds = runs.map((run) => run.distance / run.time);
  const n = speeds.length;
  const mean = speeds.reduce((a, b) => a + b, 0) / n;
  requireWithin("speed of the timed floats", mean, 0, 10, "m/s");
  const variance = speeds.reduce((a, v) => a + (v - mean) ** 2, 0) / (n - 1);
  return {
    speed: metresPerSecond(mean),
    uncertainty: n > 1 ? metresPerSecond(Math.sqrt(variance / n)) : null,
    relations: n > 1 ? ["ISO748", "JCGM100"] : ["ISO748"],
  };
}

interface StoneSize {
  readonly d84: Metres | null;
  readonly relations: readonly SourceKey[];
  readonly assumptions: readonly Assumption[];
}

function stoneSize({ bed }: Observation): StoneSize {
  if (bed === undefined) return { d84: null, relations: [], assumptions: [] };
  if (typeof bed === "object") return { d84: bed.d84, relations: [], assumptions: [] };
  const limits = bedClassLimits[bed];
  const d84 = metres(Math.sqrt(limits.min * limits.max));
  const value = `${(d84 * 1000).toPrecision(3)} mm, the geometric middle of ${bed}`;
  return { d84, relations: ["Wentworth1922"], assumptions: [{ name: "D84", value, basis: "assumption" }] };
}

function chooseProfile(o: Observation, water: Water, surfaceSpeed: number, d84: Metres | null): Profile {
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
  return 1.3 * Math.exp(-o.channelWidth / 2 / o.depth);
}

interface ShearVelocity {
  readonly value: MetresPerSecond;
  readonly relations: readonly SourceKey[];
  readonly assumptions: readonly Assumption[];
}

function shearVelocity(o: Observation, profile: Profile, shape: Shape, scale: number): ShearVelocity {
  if (o.slope !== undefined) {
    const value = metresPerSecond(Math.sqrt(standardGravity * o.depth * o.slope));
    return {
      value,
      relations: [],
      assumptions: [{ name: "shear velocity", value: "√(g h S), wide channel", basis: "assumption" }],
    };
  }
  if (Number.isNaN(shape.perShear)) {
    const value = metresPerSecond(0.1 * scale * shape.mean);
    return {
      value,
      relations: [],
      assumptions: [{ name: "shear velocity", value: "a tenth of the mean speed", basis: "assumption" }],
    };
  }
  const relations: readonly SourceKey[] = profile.law === "power" ? ["ZimmermannKennedy1978"] : [];
  return { value: metresPerSecond(scale * shape.perShear), relations, assumptions: [] };
}

function lawAssumptions(o: Observation, profile: Profile): readonly Assumption[] {
  if (profile.law === "power" && o.exponent === undefined)
    return [defaulted("exponent of the power law", "6")];
  if (profile.law === "log-wake" && o.wake === undefined) return [defaulted("wake strength", "0.2")];
  const ksTaken =
    "roughnessLength" in profile && o.roughness === undefined && o.roughnessLength === undefined;
  return ksTaken ? [{ name: "roughness ks", value: "3.5 D84", basis: "practice" }] : [];
}

function defaulted(name: string, value: string): Assumption {
  return { name, value, basis: "default" };
}

function lawCaveats(profile: Profile, o: Observation, submergence: number | null): readonly Caveat[] {
  if (profile.law === "mixing-layer" && submergence !== null)
    return caveatFor(mixingLayerValidity, submergence);
  if (profile.law === "dip") return caveatFor(dipValidity, (o.channelWidth ?? Number.NaN) / o.depth);
  if (profile.law === "power") return caveatFor(powerValidity, profile.exponent);
  return [];
}

/** The highest height at which the shape has its depth mean: down from the surface in steps, then halved. */
function heightOf(shape: Shape, depth: number): number {
  if (Math.abs(shape.surface - shape.mean) <= 1e-12 * shape.mean) return depth;
  const above = (z: number): boolean => shape.at(z) >= shape.mean;
  const steps = 1000;
  let step = steps;
  // where the fastest water is under the surface the first crossing met is upwards
  const sign = above(depth);
  while (step > 1 && above((depth * (step - 1)) / steps) === sign) step--;
  let high = (depth * step) / steps;
  let low = (depth * (step - 1)) / steps;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (above(middle) === sign) high = middle;
    else low = middle;
  }
  return high;
}
