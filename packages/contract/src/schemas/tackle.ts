/** Flies, shot and tippet as a person names them. */

import { z } from "@hono/zod-openapi";
import {
  buildDry,
  buildNymph,
  buildTippet,
  type Dry,
  metres,
  type Nymph,
  type Tippet,
  tippetDiameter,
} from "@plumbdrift/core";
import type { Decoded } from "../quantity/decode.js";
import { quantity } from "../quantity/schema.js";
import { at, RefusedError } from "../refusal.js";
import { FloatBodySchema, SinkerBodySchema } from "./bodies.js";

const hookSize = z.number().int().min(6).max(20).openapi({ description: "Hook size: even, from 6 to 20." });
// The pattern is given again: on its way into the document a regular expression would take its flags along.
const printable = /^\P{Cc}{1,80}$/u;
const name = z
  .string()
  .regex(printable)
  .openapi({
    description: "What you call it, up to 80 characters; described unless given.",
    pattern: printable.source,
  })
  .optional();

const { kind: _float, ...floatBody } = FloatBodySchema.partial().shape;
const {
  kind: _sinker,
  knot: _knot,
  beadDrag: _bead,
  bodyDrag: _body,
  ...sinkerBody
} = SinkerBodySchema.partial().shape;
const DryMeasured = z
  .strictObject(floatBody)
  .openapi("DryMeasured", { description: "Measured values, each in place of the tabulated one." });
const NymphMeasured = z
  .strictObject(sinkerBody)
  .openapi("NymphMeasured", { description: "Measured values, each in place of the tabulated one." });

export const DrySchema = z
  .strictObject({
    name,
    size: hookSize,
    style: z
      .enum(["foam", "yarn", "hair", "hackle", "low-profile"])
      .openapi({ description: "What floats it." }),
    measured: DryMeasured.optional(),
  })
  .openapi("Dry", {
    description: "A dry fly. Its size and style give the body by tables of common practice.",
  });

const BeadSchema = z
  .strictObject({
    diameter: quantity("length", "Diameter.", 1, 8, "mm"),
    material: z.enum(["tungsten", "brass", "glass"]),
    cut: z
      .enum(["slotted", "drilled"])
      .optional()
      .openapi({ description: "Slotted for tungsten, else drilled." }),
  })
  .openapi("Bead", { description: "A bead behind the eye of the hook." });

const UnderbodySchema = z
  .strictObject({
    diameter: quantity("length", "Diameter of the wire.", 0.1, 1, "mm"),
    turns: z.number().min(0).max(50),
    material: z.enum(["lead", "tin"]),
  })
  .openapi("Underbody", {
    description: "Turns of wire under the dressing. Some waters forbid lead: ask the local rules.",
  });

export const NymphSchema = z
  .strictObject({
    name,
    size: hookSize,
    bead: BeadSchema.optional(),
    underbody: UnderbodySchema.optional(),
    knot: z.enum(["loop", "tight"]).optional().openapi({ description: "Tight unless given." }),
    measured: NymphMeasured.optional(),
  })
  .openapi("Nymph", {
    description: "A nymph. Its hook, bead and wire give the body by tables of common practice.",
  });

export const ShotSchema = z
  .strictObject({
    kind: z.enum(["shot"]),
    diameter: quantity("length", "Diameter.", 1, 12, "mm"),
    material: z.enum(["lead", "tin"]),
  })
  .openapi("Shot", {
    description: "A split shot pinched on the line. Some waters forbid lead: ask the local rules.",
  });

export const TippetSchema = z
  .strictObject({
    name,
    material: z.enum(["nylon", "fluorocarbon"]),
    x: z.number().min(0).max(8).optional().openapi({ description: "X rating. Give this or the diameter." }),
    diameter: quantity("length", "Diameter.", 0.03, 1, "mm").optional(),
    breakingForce: quantity("force", "As tested or printed on the spool.", 0.1, 1000, "N").optional(),
  })
  .openapi("Tippet", { description: "A tippet by material and X rating or diameter." });

/** A dry of the core, tried out: `path` is to blame when it cannot be built. */
export function dryOf(given: Decoded<z.output<typeof DrySchema>>, path: string): Dry {
  const dry = { ...given, name: given.name ?? `${given.style} dry ${given.size}` };
  at(path, () => buildDry(dry));
  return dry;
}

export function nymphOf(given: Decoded<z.output<typeof NymphSchema>>, path: string): Nymph {
  const { size, bead } = given;
  const bare = `plain nymph ${size}`;
  const beaded = bead && `${bead.material} nymph ${size}, ${(1000 * bead.diameter).toFixed(1)} mm`;
  const nymph = { ...given, name: given.name ?? beaded ?? bare };
  at(path, () => buildNymph(nymph));
  return nymph;
}

export function tippetOf(given: Decoded<z.output<typeof TippetSchema>>, path: string): Tippet {
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
