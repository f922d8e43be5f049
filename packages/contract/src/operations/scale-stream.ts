/** scaleStream: how wide, deep and fast is this stream at other discharges? */

import { z } from "@hono/zod-openapi";
import {
  type CubicMetresPerSecond,
  type HydraulicGeometry,
  joinGrounds,
  type StationMeasurement,
  type StreamState,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { geometryExamples } from "../examples-measured.js";
import { streamSteps } from "../explanations/measured.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { RefusedError } from "../refusal.js";
import { channelFields } from "../schemas/channel.js";
import { resting } from "../schemas/friction.js";
import { type StreamAnswer, StreamAnswerSchema } from "../schemas/stream.js";

const MAX_MEASUREMENTS = 300;
const MAX_DISCHARGES = 200;

type Exponents = "at a station" | "downstream";

interface Requested {
  readonly measurements: readonly StationMeasurement[];
  readonly exponents?: Exponents;
  readonly discharges: readonly CubicMetresPerSecond[];
  readonly confidence?: number;
  readonly units?: Units;
}

const Request = strict<Wire<Requested>>({
  measurements: z
    .array(
      strict<Wire<StationMeasurement>>({
        discharge: channelFields.discharge,
        width: quantity("length", "Width of the water.", 0.001, 10_000, "m"),
        meanDepth: quantity("length", "Mean over the width.", 0.001, 1000, "m"),
      }).openapi("StationMeasurement", { description: "What was measured on one day at one station." }),
    )
    .min(1)
    .max(MAX_MEASUREMENTS)
    .openapi({ description: `One, or 3 to ${MAX_MEASUREMENTS} to be fitted.` }),
  exponents: z.enum(["at a station", "downstream"]).optional().openapi({
    description: "Published mean exponents through one measurement; at a station unless given.",
  }),
  discharges: z
    .array(channelFields.discharge)
    .min(1)
    .max(MAX_DISCHARGES)
    .openapi({ description: `At most ${MAX_DISCHARGES}.` }),
  confidence: channelFields.confidence,
  units: channelFields.units,
}).openapi("ScaleStreamRequest");

const Response = strict<Wire<StreamAnswer> & Footing>({ ...StreamAnswerSchema.shape, ...footing }).openapi(
  "ScaleStreamResponse",
);

interface Input {
  readonly measurements: readonly StationMeasurement[];
  readonly exponents: Exponents | undefined;
  readonly discharges: readonly CubicMetresPerSecond[];
  readonly confidence: number | undefined;
}

interface Result {
  readonly geometry: HydraulicGeometry;
  readonly states: readonly StreamState[];
}

export const scaleStream: Operation<Input, Result, Wire<StreamAnswer>> = operation<
  Wire<Requested>,
  Input,
  Result,
  Wire<StreamAnswer>
>({
  id: "scaleStream",
  path: paths.scaleStream,
  summary: "How wide, deep and fast is this stream at other discharges?",
  description:
    "Hydraulic geometry: powers of discharge through one measurement with published exponents, or fitted to three and more with their prediction intervals.",
  request: Request,
  response: Response,
  examples: geometryExamples,
  cost: {
    lessAt: "/measurements",
    terms: [
      { counts: "measurements", each: 50, of: ({ measurements }) => measurements.length },
      { counts: "discharges", each: 50, of: ({ discharges }) => discharges.length },
    ],
  },
  places: [["measurements", "/measurements"]],
  toInput: ({ measurements, exponents, discharges, confidence }) => {
    if (exponents !== undefined && measurements.length > 1) {
      throw new RefusedError("impossible", "Published exponents go through one measurement.", {
        path: "/exponents",
        expected: "nothing, or one measurement",
        received: `"${exponents}" and ${measurements.length} measurements`,
      });
    }
    return { measurements, exponents, discharges, confidence };
  },
  encode: ({ geometry, states }, units, { discharges }) => ({
    answer: encode(
      StreamAnswerSchema,
      {
        exponents: geometry,
        states: states.map((state, i) => ({ ...state, discharge: discharges[i] ?? geometry.discharges.min })),
      },
      units,
    ),
    grounds: joinGrounds(
      { ...resting(geometry.relation), assumptions: geometry.assumptions },
      ...states.map(({ caveats }) => ({ ...resting(), caveats })),
    ),
  }),
  explain: ({ geometry, states }, { discharges }) => streamSteps(geometry, states, discharges),
});
