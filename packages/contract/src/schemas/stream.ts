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
import { quantity } from "../quantity/schema.js";
import { plain, type Strict, strict, type Wire } from "../quantity/wire.js";

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
  exponent: plain("It goes with discharge to this exponent."),
  exponentStandardError: plain("Standard error of the exponent.").optional(),
  scatter: plain("Standard deviation of the natural logarithm.").optional(),
}).openapi("GeometryPower", {
  description: "How one of them goes with discharge. Errors are those of a fit.",
});

export const StreamLengthSchema: Strict<Wire<StreamValue<Metres>>> = strict<Wire<StreamValue<Metres>>>({
  value: quantity("length", "What is expected."),
  interval: strict<Wire<LengthInterval>>({
    min: quantity("length", "Lower end."),
    max: quantity("length", "Upper end."),
  })
    .openapi("LengthInterval", { description: "Where one more measurement should lie." })
    .optional(),
}).openapi("StreamLength", { description: "A length, with its interval where the powers were fitted." });

export const StreamSpeedSchema: Strict<Wire<StreamValue<MetresPerSecond>>> = strict<
  Wire<StreamValue<MetresPerSecond>>
>({
  value: quantity("speed", "What is expected."),
  interval: strict<Wire<SpeedInterval>>({
    min: quantity("speed", "Lower end."),
    max: quantity("speed", "Upper end."),
  })
    .openapi("SpeedInterval", { description: "Where one more measurement should lie." })
    .optional(),
}).openapi("StreamSpeed", { description: "A speed, with its interval where the powers were fitted." });

export const StreamAnswerSchema: Strict<Wire<StreamAnswer>> = strict<Wire<StreamAnswer>>({
  exponents: strict<Wire<StreamAnswer["exponents"]>>({
    width: PowerSchema,
    meanDepth: PowerSchema,
    meanSpeed: PowerSchema,
  }).openapi("GeometryPowers", { description: "The three exponents add up to 1." }),
  states: z
    .array(
      strict<Wire<State>>({
        discharge: quantity("discharge", "One that was asked for."),
        width: StreamLengthSchema,
        meanDepth: StreamLengthSchema,
        meanSpeed: StreamSpeedSchema,
      }).openapi("StreamState", { description: "The stream at one discharge." }),
    )
    .openapi({ description: "One for each discharge asked for." }),
});
