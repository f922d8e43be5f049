/** A stream at other discharges, as an answer says it. */

import { z } from "@hono/zod-openapi";
import type {
  CubicMetresPerSecond,
  GeometryPower,
  Metres,
  MetresPerSecond,
  StreamState,
  StreamValue,
} from "@plumbdrift/core";
import { quantitySchemas as q } from "../quantity/schema.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

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

export interface StreamAnswer {
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

export const StreamAnswerSchema: Strict<Wire<StreamAnswer>> = strict<Wire<StreamAnswer>>({
  exponents: strict<Wire<StreamAnswer["exponents"]>>({
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
});
