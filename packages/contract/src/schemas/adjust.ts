/** What was seen of a rig on the water, as a request says it, and what it revises, as an answer does. */

import { z } from "@hono/zod-openapi";
import type {
  Metres,
  MetresPerSecond,
  Radians,
  RevisedQuantities,
  Revision,
  RigSighting,
  RigUncertainty,
  SightingScales,
  Spread,
} from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { plain, type Strict, strict, tag, type Wire } from "../quantity/wire.js";

type Of<K> = Extract<RigSighting, { readonly kind: K }>;

export const SightingSchema: z.ZodType<Wire<RigSighting>> = z
  .discriminatedUnion("kind", [
    strict<Of<"ticks">>({
      kind: tag("ticks"),
      drifts: z.number().int().min(1).max(1000).openapi({ description: "Drifts that were watched." }),
      ticks: z
        .number()
        .int()
        .min(0)
        .max(10_000)
        .openapi({ description: "Ticks in all of them; 0 for no touch." }),
    }).openapi("SightingTicks", { description: "How often the nymph ticked the bed." }),
    strict<Wire<Of<"dry">>>({
      kind: tag("dry"),
      outcome: z.enum(["drowned", "floated"]).openapi({ description: "What it did." }),
      after: quantity(
        "time",
        "Since it landed: when it went under, or how long it was watched.",
        0.1,
        600,
        "s",
      ),
    }).openapi("SightingDry", { description: "The dry went under, or floated." }),
    strict<Wire<Of<"lean">>>({
      kind: tag("lean"),
      lean: quantity(
        "angle",
        "Of the dropper from the vertical, by eye; positive with the nymph upstream of the dry.",
        -90,
        90,
        "deg",
      ),
    }).openapi("SightingLean", { description: "How far the dropper leaned." }),
    strict<Of<"nymph">>({
      kind: tag("nymph"),
      rides: z.enum(["ahead", "under", "behind"]).openapi({ description: "Ahead is downstream of the dry." }),
    }).openapi("SightingNymph", { description: "Whether the nymph overtook the dry or trailed it." }),
    strict<Wire<Of<"drift-time">>>({
      kind: tag("drift-time"),
      distance: quantity("length", "That the dry drifted.", 0.1, 1000, "m"),
      time: quantity("time", "That it took.", 0.1, 3600, "s"),
    }).openapi("SightingDriftTime", { description: "How fast the dry drifted." }),
  ])
  .openapi("Sighting", { description: "One thing that a person saw." });

const spread = (what: string): z.ZodOptional<z.ZodNumber> =>
  z
    .number()
    .min(0)
    .max(2)
    .optional()
    .openapi({ description: `${what} 0 holds it fixed.` });

export const UncertaintySchema: Strict<Wire<RigUncertainty>> = strict<Wire<RigUncertainty>>({
  depth: spread("Of the depth; 0.1 unless given."),
  surfaceSpeed: spread("Of the surface speed; that of the timed floats, else 0.1 unless given."),
  profile: spread(
    "Of the parameter of the law: roughness length 0.7, exponent 0.3, stone size 0.35 unless given.",
  ),
  drag: spread("Of the drag of the dressed nymph; 0.3 unless given."),
  treatment: spread("Of the exponent on the treatment of the dry; 0.7 unless given."),
}).openapi("RigUncertainty", {
  description: "Relative spreads (of the logarithm) of what is uncertain beforehand.",
});

const scale = (what: string, min: number, max: number): z.ZodOptional<z.ZodNumber> =>
  z.number().min(min).max(max).optional().openapi({ description: what });

export const ScalesSchema: Strict<Wire<Partial<SightingScales>>> = strict<Wire<Partial<SightingScales>>>({
  ticksAtBed: scale("Ticks per drift of a nymph that just touches; 3 unless given.", 0.1, 100),
  tickHeight: quantity(
    "length",
    "Height in which they fall by e; 5 cm unless given.",
    0.5,
    100,
    "cm",
  ).optional(),
  strayTicks: scale("Ticks per drift that are none; 0.02 unless given.", 0.0001, 1),
  drowningTime: quantity(
    "time",
    "Mean time afloat with a reserve that is just the load; 5 s unless given.",
    0.1,
    600,
    "s",
  ).optional(),
  drowningMargin: scale("Float margin in which it grows by e; 0.25 unless given.", 0.01, 10),
  leanError: quantity(
    "angle",
    "Standard error of an angle by eye; 8 deg unless given.",
    0.5,
    45,
    "deg",
  ).optional(),
  underWithin: quantity(
    "angle",
    "Angle within which a nymph is said to ride under the dry; 5 deg unless given.",
    0.5,
    45,
    "deg",
  ).optional(),
  underError: quantity("angle", "How softly that ends; 3 deg unless given.", 0.5, 45, "deg").optional(),
  misread: scale("Share of such statements that are random; 0.05 unless given.", 0.001, 1),
  speedError: scale("Standard error of a timed drift, by the stated surface speed; 0.05 unless given.", 0, 1),
  speedFloor: quantity("speed", "What adds to it; 0.02 m/s unless given.", 0.001, 1, "m/s").optional(),
}).openapi("SightingScales", { description: "What a sighting is worth: assumptions, each to be replaced." });

function four<S>(field: (what: string) => S): Record<keyof Spread, S> {
  return {
    mean: field("Mean."),
    lower: field("A twentieth lies below it."),
    median: field("As likely above as below."),
    upper: field("A twentieth lies above it."),
  };
}

const inMetres = four((what) => quantity("length", what));
const spreads = {
  length: strict<Wire<Spread<Metres>>>(inMetres).openapi("LengthSpread", { description: "Of a length." }),
  speed: strict<Wire<Spread<MetresPerSecond>>>(four((what) => quantity("speed", what))).openapi(
    "SpeedSpread",
    {
      description: "Of a speed.",
    },
  ),
  angle: strict<Wire<Spread<Radians>>>(four((what) => quantity("angle", what))).openapi("AngleSpread", {
    description: "Of an angle.",
  }),
  plain: strict<Spread>(four(plain)).openapi("PlainSpread", { description: "Of a number." }),
};

const when = { before: "Beforehand.", now: "With what was seen." } as const;
const lengthRevision = strict<Wire<Revision<Metres>>>({
  before: spreads.length.openapi({ description: when.before }),
  now: spreads.length.openapi({ description: when.now }),
}).openapi("LengthRevision", { description: "A length, before and now." });
const speedRevision = strict<Wire<Revision<MetresPerSecond>>>({
  before: spreads.speed.openapi({ description: when.before }),
  now: spreads.speed.openapi({ description: when.now }),
}).openapi("SpeedRevision", { description: "A speed, before and now." });
const angleRevision = strict<Wire<Revision<Radians>>>({
  before: spreads.angle.openapi({ description: when.before }),
  now: spreads.angle.openapi({ description: when.now }),
}).openapi("AngleRevision", { description: "An angle, before and now." });
const plainRevision = strict<Revision>({
  before: spreads.plain.openapi({ description: when.before }),
  now: spreads.plain.openapi({ description: when.now }),
}).openapi("PlainRevision", { description: "A number without dimension, before and now." });

export const QuantitiesSchema: Strict<Wire<RevisedQuantities>> = strict<Wire<RevisedQuantities>>({
  depth: lengthRevision.openapi({ description: "Depth of the water." }),
  surfaceSpeed: speedRevision.openapi({ description: "Speed of the surface." }),
  speedBelow: plainRevision.openapi({
    description: "Speed at a fifth of the depth over that of the surface.",
  }),
  drag: plainRevision.openapi({ description: "Factor on the drag of the dressed nymph." }),
  treatment: plainRevision.openapi({
    description: "How well the dry repels water: 0 soaked, 1 dressed anew.",
  }),
  nymphHeight: lengthRevision.openapi({ description: "Of the settled nymph above the bed." }),
  lean: angleRevision.openapi({
    description: "Of the dropper from the vertical, positive when the nymph trails.",
  }),
}).openapi("RevisedQuantities", { description: "What was uncertain, before and with what was seen." });
