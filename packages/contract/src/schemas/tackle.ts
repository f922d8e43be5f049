/** Flies, shot and tippet as a person names them. */

import { z } from "@hono/zod-openapi";
import {
  buildDry,
  buildNymph,
  buildTippet,
  type Dry,
  metres,
  type Nymph,
  nymphName,
  type Shot,
  type Tippet,
  tippetDiameter,
} from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Said, type Strict, strict, tag, type Wire } from "../quantity/wire.js";
import { at, RefusedError } from "../refusal.js";
import { FloatBodySchema, SinkerBodySchema } from "./bodies.js";

/** A dry fly; described unless it is named. */
export interface WireDry extends Omit<Wire<Dry>, "name"> {
  readonly name?: string | undefined;
}

/** A nymph; described unless it is named. */
export interface WireNymph extends Omit<Wire<Nymph>, "name"> {
  readonly name?: string | undefined;
}

/** A tippet by X rating or diameter. */
export interface WireTippet extends Omit<Wire<Tippet>, "diameter"> {
  readonly diameter?: Said<"length"> | undefined;
  readonly x?: number | undefined;
}

export interface WireShot extends Omit<Wire<Shot>, "measured"> {
  readonly kind: "shot";
}

const hookSize = z.number().int().min(6).max(20).openapi({ description: "Hook size: even, from 6 to 20." });
// The control characters of Unicode one by one: not every reader of the document knows \p{Cc}. The pattern is given again,
// because on its way into the document a regular expression would take its flags along.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what it keeps out
export const printable: RegExp = /^[^\u0000-\u001f\u007f-\u009f]{1,80}$/u;
const name = z
  .string()
  .regex(printable)
  .openapi({
    description: "What you call it, up to 80 characters; described unless given.",
    pattern: printable.source,
  })
  .optional();

const { kind: _, length, width, height, mass: floatMass, ...shares } = FloatBodySchema.shape;
const DryMeasured = strict<NonNullable<WireDry["measured"]>>({
  length: z.optional(length),
  width: z.optional(width),
  height: z.optional(height),
  mass: z.optional(floatMass),
  ...shares,
}).openapi("DryMeasured", { description: "Measured values, each in place of the tabulated one." });

const { mass, volume, bead, body, dressing } = SinkerBodySchema.shape;
const NymphMeasured = strict<NonNullable<WireNymph["measured"]>>({
  mass: z.optional(mass),
  volume: z.optional(volume),
  bead,
  body,
  dressing,
}).openapi("NymphMeasured", { description: "Measured values, each in place of the tabulated one." });

export const DrySchema: Strict<WireDry> = strict<WireDry>({
  name,
  size: hookSize,
  style: z
    .enum(["foam", "yarn", "hair", "hackle", "low-profile"])
    .openapi({ description: "What floats it." }),
  measured: DryMeasured.optional(),
}).openapi("Dry", {
  description: "A dry fly. Its size and style give the body by tables of common practice.",
});

const BeadSchema = strict<NonNullable<WireNymph["bead"]>>({
  diameter: quantity("length", "Diameter.", 1, 8, "mm"),
  material: z
    .enum(["tungsten", "brass", "glass"])
    .openapi({ description: "What it is made of: its density." }),
  cut: z
    .enum(["slotted", "drilled"])
    .optional()
    .openapi({ description: "Slotted for tungsten, else drilled." }),
}).openapi("Bead", { description: "A bead behind the eye of the hook." });

const UnderbodySchema = strict<NonNullable<WireNymph["underbody"]>>({
  diameter: quantity("length", "Diameter of the wire.", 0.1, 1, "mm"),
  turns: z.number().min(0).max(50).openapi({ description: "How many." }),
  material: z.enum(["lead", "tin"]).openapi({ description: "What it is made of: its density." }),
}).openapi("Underbody", {
  description: "Turns of wire under the dressing. Some waters forbid lead: ask the local rules.",
});

export const NymphSchema: Strict<WireNymph> = strict<WireNymph>({
  name,
  size: hookSize,
  bead: BeadSchema.optional(),
  underbody: UnderbodySchema.optional(),
  knot: z.enum(["loop", "tight"]).optional().openapi({ description: "Tight unless given." }),
  measured: NymphMeasured.optional(),
}).openapi("Nymph", {
  description: "A nymph. Its hook, bead and wire give the body by tables of common practice.",
});

export const ShotSchema: Strict<WireShot> = strict<WireShot>({
  kind: tag("shot"),
  diameter: quantity("length", "Diameter.", 1, 12, "mm"),
  material: z.enum(["lead", "tin"]).openapi({ description: "What it is made of: its density." }),
}).openapi("Shot", {
  description: "A split shot pinched on the line. Some waters forbid lead: ask the local rules.",
});

export const TippetSchema: Strict<WireTippet> = strict<WireTippet>({
  name,
  material: z
    .enum(["nylon", "fluorocarbon"])
    .openapi({ description: "What it is made of: its density and strength." }),
  x: z.number().min(0).max(8).optional().openapi({ description: "X rating. Give this or the diameter." }),
  diameter: quantity("length", "Diameter.", 0.03, 1, "mm").optional(),
  breakingForce: quantity("force", "As tested or printed on the spool.", 0.1, 1000, "N").optional(),
}).openapi("Tippet", { description: "A tippet by material and X rating or diameter." });

/** A dry of the core, tried out: `path` is to blame when it cannot be built. */
export function dryOf(given: Decoded<WireDry>, path: string): Dry {
  const dry = { ...given, name: given.name ?? `${given.style} dry ${given.size}` };
  at(path, () => buildDry(dry));
  return dry;
}

export function nymphOf(given: Decoded<WireNymph>, path: string): Nymph {
  const nymph = { ...given, name: given.name ?? nymphName(given) };
  at(path, () => buildNymph(nymph));
  return nymph;
}

export function tippetOf(given: Decoded<WireTippet>, path: string): Tippet {
  const { x, diameter = x === undefined ? undefined : tippetDiameter(x), ...rest } = given;
  if (diameter === undefined || (x !== undefined && given.diameter !== undefined)) {
    throw new RefusedError("impossible", "A tippet has an X rating or a diameter, one of the two.", {
      path: `${path}/diameter`,
      expected: "x or diameter, one of the two",
      received: x === undefined ? "neither" : "both",
    });
  }
  const tippet = { ...rest, diameter };
  at(path, () => buildTippet(tippet, metres(1)));
  return tippet;
}
