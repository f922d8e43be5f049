/** How a rig lands, as a request says it. */

import type { Cast } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

export const CastSchema: Strict<Wire<Partial<Cast>>> = strict<Wire<Partial<Cast>>>({
  sinkerDownstream: quantity(
    "length",
    "Where the lowest sinker lands from the float, positive downstream; 0.6 of the line upstream unless given.",
    -100,
    100,
    "m",
  ).optional(),
  sinkerAcross: quantity(
    "length",
    "Where it lands across the stream, positive away from the angler; 0 unless given.",
    -100,
    100,
    "m",
  ).optional(),
  entrySpeed: quantity(
    "speed",
    "Downward speed of the sinkers at the surface; 0.5 m/s unless given.",
    0,
    20,
    "m/s",
  ).optional(),
  laneGradient: quantity(
    "rate",
    "Surface speed gained per length across, away from the angler; 0 unless given.",
    -10,
    10,
    "1/s",
  ).optional(),
}).openapi("Cast", { description: "Where and how the flies land." });
