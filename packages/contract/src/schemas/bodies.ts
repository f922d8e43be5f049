/** Bodies measured on a scale and with a gauge, as a request says them. */

import { z } from "@hono/zod-openapi";
import { type DragLaw, type Float, float, type Line, line, type Sinker, sinker } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Strict, strict, tag, type Wire } from "../quantity/wire.js";

export interface WireFloatBody extends Wire<Parameters<typeof float>[0]> {
  readonly kind: "body";
}

export interface WireLineBody extends Omit<Wire<Parameters<typeof line>[0]>, "normalDrag"> {
  readonly kind: "body";
  readonly normalDrag?: number | undefined;
}

export interface WireSinkerBody extends Omit<Wire<Parameters<typeof sinker>[0]>, "beadDrag" | "bodyDrag"> {
  readonly kind: "body";
  readonly beadDrag?: number | undefined;
  readonly bodyDrag?: number | undefined;
}

/** A constant drag coefficient in place of the published law. */
const drag = (what: string): z.ZodOptional<z.ZodNumber> =>
  z
    .number()
    .min(0)
    .max(100)
    .optional()
    .openapi({ description: `Constant drag coefficient of ${what}; the published law unless given.` });

export const FloatBodySchema: Strict<WireFloatBody> = strict<WireFloatBody>({
  kind: tag("body"),
  length: quantity("length", "Length of the box that the water touches.", 0.1, 1000, "mm"),
  width: quantity("length", "Width of that box.", 0.1, 1000, "mm"),
  height: quantity("length", "Height of that box.", 0.1, 1000, "mm"),
  mass: quantity("mass", "Mass.", 0, 1000, "g"),
  fill: z
    .number()
    .min(0.01)
    .max(1)
    .optional()
    .openapi({ description: "Share of the box that is filled; π/4 unless given." }),
  buoyantShare: z
    .number()
    .min(0.001)
    .max(1)
    .optional()
    .openapi({ description: "Share of the filled volume that keeps water out; 1 unless given." }),
  treatment: z
    .number()
    .min(0)
    .max(1)
    .optional()
    .openapi({ description: "Dressing: 0 soaked, 1 fresh; 1 unless given." }),
  drag: z
    .number()
    .min(0.01)
    .max(100)
    .optional()
    .openapi({ description: "Drag coefficient of the wetted side; 1.1 unless given." }),
}).openapi("FloatBody", { description: "A dry fly as a measured body." });

export const LineBodySchema: Strict<WireLineBody> = strict<WireLineBody>({
  kind: tag("body"),
  length: quantity("length", "Length.", 0.001, 100, "m"),
  diameter: quantity("length", "Diameter.", 0.001, 10, "mm"),
  density: quantity(
    "density",
    "Density; a line lighter than water floats and is not modelled.",
    900,
    3000,
    "kg/m3",
  ),
  normalDrag: drag("the line across the stream"),
  tangentialDrag: z
    .number()
    .min(0)
    .max(10)
    .optional()
    .openapi({ description: "Skin friction coefficient; 0.02 unless given." }),
}).openapi("LineBody", { description: "A length of line as a measured body." });

export const SinkerBodySchema: Strict<WireSinkerBody> = strict<WireSinkerBody>({
  kind: tag("body"),
  mass: quantity("mass", "Mass.", 0.0001, 1000, "g"),
  volume: quantity("volume", "Volume.", 0, 1e6, "mm3"),
  bead: quantity("length", "Diameter of the bead.", 0.01, 100, "mm").optional(),
  body: z
    .strictObject({
      length: quantity("length", "Length of the dressed body.", 0.01, 1000, "mm"),
      diameter: quantity("length", "Diameter of the dressed body.", 0.01, 100, "mm"),
    })
    .openapi("DressedBody", { description: "The dressed body as a cylinder." })
    .optional(),
  dressing: z
    .number()
    .min(0)
    .max(20)
    .optional()
    .openapi({ description: "Drag of tails and dubbing over that of the bare shapes; 1 unless given." }),
  knot: z.enum(["loop", "tight"]).optional().openapi({ description: "How it hangs; tight unless given." }),
  beadDrag: drag("the bead"),
  bodyDrag: drag("the body"),
}).openapi("SinkerBody", {
  description: "A nymph or a split shot as a measured body: a bead, a body, or both.",
});

export function floatOf({ kind: _, ...body }: Decoded<WireFloatBody>): Float {
  return float(body);
}

export function lineOf({ kind: _, normalDrag, ...body }: Decoded<WireLineBody>): Line {
  return line({ ...body, normalDrag: law(normalDrag) });
}

export function sinkerOf(given: Decoded<WireSinkerBody>): Sinker {
  const { kind: _, beadDrag, bodyDrag, ...body } = given;
  return sinker({ ...body, beadDrag: law(beadDrag), bodyDrag: law(bodyDrag) });
}

function law(coefficient: number | undefined): DragLaw {
  return coefficient === undefined ? "standard" : { coefficient };
}
