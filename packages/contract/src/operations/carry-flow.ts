/** carryFlow: what does this channel carry at a depth? */

import {
  type BedShear,
  type CubicMetresPerSecond,
  type FlowClass,
  joinGrounds,
  type Metres,
  type MetresPerSecond,
  type SectionGeometry,
  type VelocityCoefficients,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { carryExamples } from "../examples-channel.js";
import { shearSteps, uniformSteps } from "../explanations/channel.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import { plain, type Said, strict, type Wire } from "../quantity/wire.js";
import {
  type AskedChannel,
  channelFields,
  channelOf,
  channelPlaces,
  type Understood,
} from "../schemas/channel.js";
import { FlowClassSchema } from "../schemas/depths.js";
import { surveyPoints } from "../schemas/section.js";

interface Asked extends AskedChannel {
  readonly depth: Said<"length">;
}

const { section, friction, slope, depth, temperature, units } = channelFields;

const Request = strict<Asked>({ section, friction, slope, depth, temperature, units }).openapi(
  "CarryFlowRequest",
);

/** What the water fills, without its derivatives. */
type Filled = Omit<SectionGeometry, "perDepth">;

interface Zones extends VelocityCoefficients {
  readonly n: number;
}

interface Carried {
  readonly geometry: Filled;
  readonly discharge: CubicMetresPerSecond;
  readonly speed: MetresPerSecond;
  readonly froude: number;
  readonly flow: FlowClass;
  readonly shear: BedShear;
  readonly zones: Zones | null;
}

const AnswerFields = {
  geometry: strict<Wire<Filled>>({
    depth: quantity("length", "Above the lowest point of the bed."),
    area: quantity("area", "Of the water, across the stream."),
    wettedPerimeter: quantity("length", "Length of bed and banks under water, across the stream."),
    topWidth: quantity("length", "Of the surface, across the stream."),
    hydraulicRadius: quantity("length", "Area over wetted perimeter."),
    hydraulicDepth: quantity("length", "Area over top width: the mean depth."),
    firstMoment: quantity(
      "volume",
      "Of the area about the surface: area times the depth of its centroid.",
      "m3",
    ),
  }).openapi("SectionGeometry", { description: "What the water fills of the section." }),
  discharge: quantity("discharge", "Through the section."),
  speed: quantity("speed", "Mean over the section."),
  froude: plain("Froude number: 1 is critical."),
  flow: FlowClassSchema,
  shear: strict<Wire<BedShear>>({
    mean: quantity("stress", "Over the wetted perimeter."),
    greatest: quantity("stress", "At the deepest point."),
    shearVelocity: quantity("speed", "Root of the mean shear over density."),
  }).openapi("BedShear", { description: "How hard the water rubs on the bed." }),
  zones: strict<Wire<Zones>>({
    n: plain("One n for the whole section."),
    energy: plain("α of the kinetic energy."),
    momentum: plain("β of the momentum."),
  })
    .openapi("ZonesAtDepth", {
      description: "What the zones of roughness come to; present with manning-zones.",
    })
    .optional(),
};

const Response = strict<Wire<Carried> & Footing>({ ...AnswerFields, ...footing }).openapi(
  "CarryFlowResponse",
);

interface Input extends Understood {
  readonly depth: Metres;
}

export const carryFlow: Operation<Input, Carried, Wire<Carried>> = operation<
  Asked,
  Input,
  Carried,
  Wire<Carried>
>({
  id: "carryFlow",
  path: paths.carryFlow,
  summary: "What does this channel carry at a depth?",
  description:
    "The section that the water fills and its uniform flow: friction and slope in balance over a long even reach.",
  request: Request,
  response: Response,
  examples: carryExamples,
  cost: { lessAt: "/section", terms: [surveyPoints] },
  places: channelPlaces,
  toInput: ({ depth: asked, units: _, ...channel }) => ({ ...channelOf(channel), depth: asked }),
  encode: (carried, system, { grounds, waterGrounds }) => ({
    answer: encode(strict<Wire<Carried>>(AnswerFields), carried, system),
    grounds: joinGrounds(grounds, waterGrounds),
  }),
  explain: ({ discharge, geometry, shear }, { section, friction, slope, depth, water: { density } }) => [
    ...uniformSteps({ flow: { section, discharge }, depth, friction, slope }),
    ...shearSteps(shear.mean, shear.shearVelocity, { density, slope, radius: geometry.hydraulicRadius }),
  ],
});
