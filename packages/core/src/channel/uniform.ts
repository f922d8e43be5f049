/** Uniform flow: depth, speed and discharge where friction and slope balance. */

import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type KilogramsPerCubicMetre,
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  type Pascals,
  pascals,
  QuantityError,
  requirePositive,
  standardGravity,
} from "../units/index.js";
import { type Carrying, carrying } from "./conveyance.js";
import { type DepthsFor, depthsFor, turningPieces } from "./every-root.js";
import type { Friction } from "./friction.js";
import { type CrossSection, requireDepth } from "./section.js";
import { wetAt } from "./wet.js";

/** A section that runs down a slope. */
export interface Channel {
  readonly section: CrossSection;
  readonly friction: Friction;
  /** Sine of the bed's angle: fall over length along the bed. */
  readonly slope: number;
  /** m/s², standard gravity unless given: books take 9.81, 32.2 ft/s² and more. */
  readonly gravity?: number;
}

/** A level or rising bed has no normal depth: `no-slope`. */
export type NormalDepth = DepthsFor | { readonly kind: "no-slope" };

/** Discharge of uniform flow at a depth. Throws QuantityError for a slope or depth not above 0, or a depth above the section.
 *  @example uniformDischarge({ section: rectangularSection(metres(5)), friction: { law: "manning", n: 0.015 }, slope: 0.0025 }, metres(0.8)) // => 9.5488 */
export function uniformDischarge(channel: Channel, depth: Metres): CubicMetresPerSecond {
  requireDepth(channel.section, depth);
  return cubicMetresPerSecond(carryingOf(channel).dischargeAt(depth, channel.slope));
}

/** Mean speed of uniform flow at a depth. */
export function uniformVelocity(channel: Channel, depth: Metres): MetresPerSecond {
  return metresPerSecond(uniformDischarge(channel, depth) / wetAt(channel.section, depth).area);
}

export interface Conveyance {
  /** Discharge over the root of slope, m³/s. Of a smooth bed it is that at the slope of the channel. */
  readonly conveyance: CubicMetresPerSecond;
  /** Its derivative against depth, m²/s. */
  readonly perDepth: number;
}

/** Conveyance K = Q/√S at a depth. Throws QuantityError as `uniformDischarge` does, and at the crown of a pipe, where K has no derivative. */
export function conveyance(channel: Channel, depth: Metres): Conveyance {
  const value = uniformDischarge(channel, depth) / Math.sqrt(channel.slope);
  const { rise, bandOf } = carryingOf(channel);
  const relative = rise(bandOf(depth), depth, channel.slope);
  if (!Number.isFinite(relative))
    throw new QuantityError("depth", "below the crown, for a derivative", depth);
  return {
    conveyance: cubicMetresPerSecond(value),
    perDepth: value * relative,
  };
}

/** The slope that friction takes from a flow at a depth, whatever the bed does. */
export function frictionSlope(
  channel: Omit<Channel, "slope">,
  depth: Metres,
  discharge: CubicMetresPerSecond,
): number {
  requireDepth(channel.section, depth);
  return carryingOf(channel).slopeAt(depth, discharge);
}

/** Every depth at which the channel carries a discharge. In a pipe above full flow there are two.
 *  Throws QuantityError for a discharge not above 0.
 *  @example normalDepth({ section: rectangularSection(metres(3)), friction: { law: "manning", n: 0.025 }, slope: 0.002 }, cubicMetresPerSecond(5)).depth // => 1.2152 */
export function normalDepth(channel: Channel, discharge: CubicMetresPerSecond): NormalDepth {
  requirePositive("discharge", discharge, "m³/s");
  const { section, slope } = channel;
  const carries = carryingOf(channel);
  if (!(slope > 0)) return { kind: "no-slope" };
  const pieces = turningPieces(section, (band, y) => carries.rise(band, y, slope));
  return depthsFor((band, y) => carries.discharge(band, y, slope), discharge, pieces);
}

function carryingOf({ section, friction, gravity = standardGravity }: Omit<Channel, "slope">): Carrying {
  requirePositive("gravity", gravity, "m/s²");
  return carrying(section, friction, gravity);
}

export interface BedShear {
  /** Mean over the wetted perimeter, ρ g R S. */
  readonly mean: Pascals;
  /** At the deepest point, ρ g y S. */
  readonly greatest: Pascals;
  /** √(g R S). */
  readonly shearVelocity: MetresPerSecond;
}

/** Shear of uniform flow on the bed. */
export function bedShear(channel: Channel, depth: Metres, density: KilogramsPerCubicMetre): BedShear {
  requireDepth(channel.section, depth);
  const { slope, gravity = standardGravity } = channel;
  requirePositive("slope", slope);
  requirePositive("gravity", gravity, "m/s²");
  requirePositive("density", density, "kg/m³");
  const { area, perimeter } = wetAt(channel.section, depth);
  const perMetre = gravity * slope;
  return {
    mean: pascals(density * perMetre * (area / perimeter)),
    greatest: pascals(density * perMetre * depth),
    shearVelocity: metresPerSecond(Math.sqrt((perMetre * area) / perimeter)),
  };
}
