/** From what a person can see at the water to the speed at every height over one spot. */

import { type Assumption, type Grounds, joinGrounds, type SourceKey } from "../sources/index.js";
import {
  celsius,
  type HeightAboveBed,
  heightAboveBed,
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  standardGravity,
} from "../units/index.js";
import { type Water, waterAt } from "../water/index.js";
import { chooseProfile, defaulted, lawAssumptions, lawCaveats } from "./choice.js";
import { checkObservation, type Observation, stoneSize, surfaceSpeedOf } from "./observation.js";
import { lawSource, type Profile, type Shape, shapeOf } from "./profile.js";

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
