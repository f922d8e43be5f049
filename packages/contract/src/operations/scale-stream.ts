/** scaleStream: how wide, deep and fast is this stream at other discharges? */

import { z } from "@hono/zod-openapi";
import {
  type CubicMetresPerSecond,
  type GeometryPower,
  type HydraulicGeometry,
  joinGrounds,
  type Metres,
  type MetresPerSecond,
  type StationMeasurement,
  type StreamState,
  type StreamValue,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { geometryExamples } from "../examples-channel.js";
import { type Operation, operation } from "../operation.js";
import { encode } from "../quantity/encode.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { RefusedError } from "../refusal.js";
import { channelFields, resting } from "../schemas/channel.js";

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

type Power = Pick<GeometryPower, "exponent" | "exponentStandardError" | "scatter">;

interface State extends Omit<StreamState, "caveats"> {
  readonly discharge: CubicMetresPerSecond;
}

interface LengthInterval {
  readonly min: Metres;
  readonly max: Metres;
}

interface SpeedInterval {
  readonly min: MetresPerSecond;
  readonly max: MetresPerSecond;
}

interface Answered {
  readonly exponents: { readonly width: Power; readonly meanDepth: Power; readonly meanSpeed: Power };
  readonly states: readonly State[];
}

const PowerSchema = strict<Wire<Power>>({
  exponent: z.number(),
  exponentStandardError: z.number().optional(),
  scatter: z.number().optional().openapi({ description: "Standard deviation of the natural logarithm." }),
}).openapi("GeometryPower", {
  description: "How one of them goes with discharge. Errors are those of a fit.",
});

const LengthSchema = strict<Wire<StreamValue<Metres>>>({
  value: q.length,
  interval: strict<Wire<LengthInterval>>({ min: q.length, max: q.length })
    .openapi("LengthInterval", { description: "Where one more measurement should lie." })
    .optional(),
}).openapi("StreamLength", { description: "A length, with its interval where the powers were fitted." });

const SpeedSchema = strict<Wire<StreamValue<MetresPerSecond>>>({
  value: q.speed,
  interval: strict<Wire<SpeedInterval>>({ min: q.speed, max: q.speed })
    .openapi("SpeedInterval", { description: "Where one more measurement should lie." })
    .optional(),
}).openapi("StreamSpeed", { description: "A speed, with its interval where the powers were fitted." });

const AnswerFields = {
  exponents: strict<Wire<Answered["exponents"]>>({
    width: PowerSchema,
    meanDepth: PowerSchema,
    meanSpeed: PowerSchema,
  }).openapi("GeometryPowers", { description: "The three exponents add up to 1." }),
  states: z.array(
    strict<Wire<State>>({
      discharge: q.discharge,
      width: LengthSchema,
      meanDepth: LengthSchema,
      meanSpeed: SpeedSchema,
    }).openapi("StreamState", { description: "The stream at one discharge." }),
  ),
};

const Response = strict<Wire<Answered> & Footing>({ ...AnswerFields, ...footing }).openapi(
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

export const scaleStream: Operation<Input, Result, Wire<Answered>> = operation<
  Wire<Requested>,
  Input,
  Result,
  Wire<Answered>
>({
  id: "scaleStream",
  path: "/v1/channels/geometries",
  summary: "How wide, deep and fast is this stream at other discharges?",
  description:
    "Hydraulic geometry: powers of discharge through one measurement with published exponents, or fitted to three and more with their prediction intervals.",
  request: Request,
  response: Response,
  examples: geometryExamples,
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
      strict<Wire<Answered>>(AnswerFields),
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
});
