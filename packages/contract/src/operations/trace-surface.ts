/** traceSurface: how does the water surface lie down a river of several reaches? */

import { z } from "@hono/zod-openapi";
import {
  type Control,
  type Grounds,
  joinGrounds,
  type Metres,
  type Reach,
  type River,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { surfaceExamples } from "../examples-channel.js";
import { criticalSteps, surfaceSteps } from "../explanations/channel.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Decoded, type Said, strict, tag, type Wire } from "../quantity/wire.js";
import { type AskedFlow, channelFields, channelPlaces } from "../schemas/channel.js";
import { frictionOf, type WireFriction } from "../schemas/friction.js";
import { sectionOf, surveyPoints } from "../schemas/section.js";
import { type Surface, SurfaceSchema } from "../schemas/surface.js";

const MAX_REACHES = 20;

/** The most points of one reach. */
const MAX_PROFILE_POINTS = 2000;

/** A control by a word, since a union is told apart by words here. */
type SaidControl =
  | { readonly at: "depth"; readonly depth: Metres }
  | { readonly at: "normal" }
  | { readonly at: "critical" };

interface WireReach extends Wire<Omit<Reach, "friction">> {
  readonly friction: WireFriction;
}

interface Asked extends AskedFlow {
  readonly reaches: readonly WireReach[];
  readonly upstream?: Wire<SaidControl> | undefined;
  readonly downstream?: Wire<SaidControl> | undefined;
  readonly pointsPerReach?: number | undefined;
  readonly temperature?: Said<"temperature"> | undefined;
  readonly units?: Units | undefined;
}

const ControlSchema: z.ZodType<Wire<SaidControl>> = z
  .discriminatedUnion("at", [
    strict<Wire<Extract<SaidControl, { at: "depth" }>>>({
      at: tag("depth"),
      depth: channelFields.depth,
    }).openapi("ControlDepth", { description: "A gate, a weir, a pool: a depth that holds." }),
    strict<Wire<Extract<SaidControl, { at: "normal" }>>>({ at: tag("normal") }).openapi("ControlNormal", {
      description: "A long even reach goes on from there.",
    }),
    strict<Wire<Extract<SaidControl, { at: "critical" }>>>({ at: tag("critical") }).openapi(
      "ControlCritical",
      { description: "A free fall, or a crest." },
    ),
  ])
  .openapi("Control", { description: "What holds the depth at an end of the river." });

const { section, discharge, energyCoefficient, temperature, units } = channelFields;

const Request = strict<Asked>({
  section,
  discharge,
  reaches: z
    .array(
      strict<WireReach>({
        length: quantity("length", "Along the bed.", 0.1, 100_000, "m"),
        slope: channelFields.slope,
        friction: channelFields.friction,
      }).openapi("Reach", { description: "A stretch of one slope and one friction." }),
    )
    .min(1)
    .max(MAX_REACHES)
    .openapi({ description: `From upstream to downstream; at most ${MAX_REACHES}.` }),
  upstream: ControlSchema.optional().openapi({
    description: "Of shooting water: at or below critical depth.",
  }),
  downstream: ControlSchema.optional().openapi({
    description: "Of tranquil water: at or above critical depth.",
  }),
  pointsPerReach: z
    .number()
    .int()
    .min(2)
    .max(MAX_PROFILE_POINTS)
    .optional()
    .openapi({ description: "Both ends included; 41 unless given." }),
  energyCoefficient,
  temperature,
  units,
}).openapi("TraceSurfaceRequest");

interface Answered {
  readonly surface: Wire<Surface>;
}

const Response = strict<Answered & Footing>({ surface: SurfaceSchema, ...footing }).openapi(
  "TraceSurfaceResponse",
);

interface Input {
  readonly river: River;
  readonly grounds: Grounds;
}

export const traceSurface: Operation<Input, Surface, Answered> = operation<Asked, Input, Surface, Answered>({
  id: "traceSurface",
  path: paths.traceSurface,
  summary: "How does the water surface lie down a river of several reaches?",
  description:
    "Gradually varied flow between its controls, with the jumps where it changes from shooting to tranquil.",
  request: Request,
  response: Response,
  examples: surfaceExamples,
  cost: {
    lessAt: "/pointsPerReach",
    terms: [
      surveyPoints,
      {
        counts: "points: reaches times pointsPerReach and two",
        each: 400,
        of: ({ reaches, pointsPerReach = 41 }) => reaches.length * (pointsPerReach + 2),
      },
    ],
  },
  places: [
    ["upstream control", "/upstream"],
    ["depth of the upstream control", "/upstream"],
    ["downstream control", "/downstream"],
    ["depth of the downstream control", "/downstream"],
    // water that rises out of the section on its way
    ["depth", "/section"],
    ["roughness over 14.84", "/reaches"],
    ...channelPlaces,
  ],
  toInput: ({ section: shape, reaches, upstream, downstream, temperature: degrees, units: _, ...rest }) => {
    const frictions = reaches.map(({ friction }) => frictionOf(friction, degrees));
    return {
      river: {
        ...rest,
        section: sectionOf(shape),
        reaches: reaches.map(({ length, slope }, i) => ({ length, slope, friction: frictions[i]!.friction })),
        ...(upstream === undefined ? {} : { upstream: controlOf(upstream) }),
        ...(downstream === undefined ? {} : { downstream: controlOf(downstream) }),
      },
      grounds: joinGrounds(...frictions.map(({ grounds }) => grounds)),
    };
  },
  encode: (surface, system, { grounds }) => ({
    answer: { surface: encode(SurfaceSchema, surface, system) },
    grounds,
  }),
  explain: (surface, { river }) => {
    if (surface.kind !== "traced") return criticalSteps(river, surface.atDepth);
    const ends = [surface.points.at(0), surface.points.at(-1)].flatMap((point) => point?.depth ?? []);
    return surfaceSteps(river, ends, surface.jumps);
  },
});

function controlOf(said: Decoded<Wire<SaidControl>>): Control {
  return said.at === "depth" ? { depth: said.depth } : said.at;
}
