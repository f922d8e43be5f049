/** readEnergy: in what state is this flow, and at which other depths could it run? */

import { z } from "@hono/zod-openapi";
import type {
  AlternateDepths,
  ConjugateDepths,
  CubicMetres,
  Flow,
  LeastEnergy,
  Metres,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { energyExamples } from "../examples-channel.js";
import { energySteps, stateSteps } from "../explanations/channel.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Said, strict, tag, type Wire } from "../quantity/wire.js";
import { type AskedFlow, channelFields, channelPlaces } from "../schemas/channel.js";
import { type FlowAtDepth, FlowAtDepthSchema } from "../schemas/depths.js";
import { resting } from "../schemas/friction.js";
import { sectionOf, surveyPoints } from "../schemas/section.js";

interface Asked extends AskedFlow {
  readonly depth: Said<"length">;
  readonly momentumCoefficient?: number | undefined;
  readonly units?: Units | undefined;
}

const { section, discharge, depth, energyCoefficient, momentumCoefficient, units } = channelFields;

const Request = strict<Asked>({
  section,
  discharge,
  depth,
  energyCoefficient,
  momentumCoefficient,
  units,
}).openapi("ReadEnergyRequest");

interface Energy extends FlowAtDepth {
  readonly specificEnergy: Metres;
  readonly specificForce: CubicMetres;
  readonly least: LeastEnergy;
  readonly alternates: AlternateDepths;
  readonly conjugates: ConjugateDepths;
}

const LeastSchema = strict<Wire<LeastEnergy>>({
  energy: quantity("length", "Depth and velocity head."),
  depth: quantity("length", "Above the lowest point of the bed."),
}).openapi("LeastEnergy", {
  description: "The least energy with which the section passes the discharge, and where.",
});

const depths = z.array(q.length).openapi({ description: "Shallowest first." });

const AnswerFields = {
  ...FlowAtDepthSchema.shape,
  specificEnergy: quantity("length", "Depth and velocity head."),
  specificForce: quantity("volume", "Force of the flow over the weight of a volume of water.", "m3"),
  least: LeastSchema,
  alternates: z
    .discriminatedUnion("kind", [
      strict<Wire<Extract<AlternateDepths, { kind: "found" }>>>({ kind: tag("found"), depths }).openapi(
        "AlternatesFound",
        { description: "Every depth of this energy, the one asked about among them." },
      ),
      strict<Wire<Extract<AlternateDepths, { kind: "below-minimum" }>>>({
        kind: tag("below-minimum"),
        minimum: LeastSchema,
      }).openapi("BelowLeastEnergy", { description: "No depth has so little energy." }),
      strict<Wire<Extract<AlternateDepths, { kind: "within-step" }>>>({
        kind: tag("within-step"),
        minimum: LeastSchema,
      }).openapi("EnergyWithinStep", { description: "The energy lies in a step of the section." }),
    ])
    .openapi("AlternateDepths", { description: "Depths of the same specific energy." }),
  conjugates: z
    .discriminatedUnion("kind", [
      strict<Wire<Extract<ConjugateDepths, { kind: "found" }>>>({ kind: tag("found"), depths }).openapi(
        "ConjugatesFound",
        { description: "Every other depth of this specific force." },
      ),
      strict<Extract<ConjugateDepths, { kind: "critical" }>>({ kind: tag("critical") }).openapi(
        "ConjugateCritical",
        { description: "The flow is critical: no other depth has its specific force." },
      ),
      strict<Extract<ConjugateDepths, { kind: "over-capacity" }>>({
        kind: tag("over-capacity"),
      }).openapi("ConjugateOverCapacity", { description: "The other depth is above the section." }),
    ])
    .openapi("ConjugateDepths", { description: "Depths of the same specific force." }),
};

const Response = strict<Wire<Energy> & Footing>({ ...AnswerFields, ...footing }).openapi(
  "ReadEnergyResponse",
);

interface Input {
  readonly flow: Flow;
  readonly depth: Metres;
}

export const readEnergy: Operation<Input, Energy, Wire<Energy>> = operation<
  Asked,
  Input,
  Energy,
  Wire<Energy>
>({
  id: "readEnergy",
  path: paths.readEnergy,
  summary: "In what state is this flow, and at which other depths could it run?",
  description:
    "Froude number, specific energy and specific force at a depth, the least energy, and the depths of equal energy and of equal force.",
  request: Request,
  response: Response,
  examples: energyExamples,
  cost: { lessAt: "/section", terms: [surveyPoints] },
  places: channelPlaces,
  toInput: ({ section: shape, depth: asked, units: _, ...flow }) => ({
    flow: { ...flow, section: sectionOf(shape) },
    depth: asked,
  }),
  encode: (energy, system) => ({
    answer: encode(strict<Wire<Energy>>(AnswerFields), energy, system),
    grounds: resting("Chow1959"),
  }),
  explain: (_energy, { flow, depth }) => [...stateSteps({ flow, depth }), ...energySteps({ flow, depth })],
});
