/** measureDischarge: how much water passes, from depths and speeds measured across the stream? */

import { z } from "@hono/zod-openapi";
import {
  type DischargeComponents,
  type DischargeUncertainty,
  type Grounds,
  joinGrounds,
  type MeasuredDischarge,
  type Vertical,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { dischargeExamples } from "../examples-measured.js";
import { dischargeSteps } from "../explanations/measured.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { channelFields } from "../schemas/channel.js";
import { resting } from "../schemas/friction.js";
import { type Measured, MeasuredSchema, type Method, MethodSchema } from "../schemas/measured.js";
import { VerticalSchema, verticalOf, type WireVertical } from "../schemas/vertical.js";

const MAX_VERTICALS = 200;

interface Stated extends DischargeComponents {
  readonly coverageFactor?: number | undefined;
}

interface Asked {
  readonly verticals: readonly WireVertical[];
  readonly method?: Method | undefined;
  readonly uncertainty?: Stated | undefined;
  readonly units?: Units | undefined;
}

const share = (of: string): z.ZodNumber =>
  z
    .number()
    .min(0)
    .max(1)
    .openapi({ description: `${of}: relative standard uncertainty, 0.01 is 1 %.` });

const Request = strict<Asked>({
  verticals: z
    .array(VerticalSchema)
    .min(3)
    .max(MAX_VERTICALS)
    .openapi({ description: `From one edge of the water to the other; 3 to ${MAX_VERTICALS}.` }),
  method: MethodSchema.optional().openapi({ description: "The first unless given." }),
  uncertainty: strict<Stated>({
    calibration: share("Of tape, sounding and meter together"),
    verticals: share("That the section is known only at so many verticals"),
    width: share("Of one width"),
    depth: share("Of one depth"),
    points: share("That a vertical is known only at so many points"),
    meter: share("Of the meter at the speed of one point"),
    exposure: share("Pulsation during the exposure at one point"),
    pointsPerVertical: z
      .number()
      .int()
      .min(1)
      .max(1000)
      .openapi({ description: "At how many points each vertical was measured." }),
    coverageFactor: z.number().min(1).max(10).optional().openapi({ description: "2 unless given." }),
  })
    .openapi("UncertaintyComponents", { description: "Stated by whoever measured: none has a default." })
    .optional(),
  units: channelFields.units,
}).openapi("MeasureDischargeRequest");

const Response = strict<Wire<Measured> & Footing>({ ...MeasuredSchema.shape, ...footing }).openapi(
  "MeasureDischargeResponse",
);

interface Input {
  readonly verticals: readonly Vertical[];
  readonly method: Method;
  readonly uncertainty?: DischargeComponents & { readonly coverageFactor?: number };
  readonly grounds: Grounds;
}

/** What the core answers: the panels and their uncertainty apart. */
interface Result {
  readonly measured: MeasuredDischarge;
  readonly uncertainty: DischargeUncertainty | null;
}

export const measureDischarge: Operation<Input, Result, Wire<Measured>> = operation<
  Asked,
  Input,
  Result,
  Wire<Measured>
>({
  id: "measureDischarge",
  path: paths.measureDischarge,
  summary: "How much water passes, from depths and speeds measured across the stream?",
  description:
    "Panels of the mid-section or the mean-section method, each speed by its own point method, and the uncertainty from stated components.",
  request: Request,
  response: Response,
  examples: dischargeExamples,
  cost: {
    lessAt: "/verticals",
    terms: [{ counts: "verticals", each: 50, of: ({ verticals }) => verticals.length }],
  },
  places: [
    ["station of vertical #", "/verticals/#/station"],
    ["depth of vertical #", "/verticals/#/depth"],
    ["speed of vertical #", "/verticals/#/speeds"],
    ["depth", "/verticals"],
    ["verticals", "/verticals"],
    ["discharge", "/verticals"],
  ],
  toInput: ({ verticals, method = "mid-section, half-spacing", uncertainty }) => {
    const all = verticals.map(verticalOf);
    return {
      verticals: all.map(({ vertical }) => vertical),
      method,
      ...(uncertainty === undefined ? {} : { uncertainty }),
      grounds: joinGrounds(...all.map(({ grounds }) => grounds)),
    };
  },
  encode: ({ measured, uncertainty }, units, { grounds }) => ({
    answer: encode(MeasuredSchema, { ...measured, uncertainty }, units),
    grounds: joinGrounds(
      resting(measured.relation, ...(uncertainty === null ? [] : (["ISO748", "JCGM100"] as const))),
      grounds,
    ),
  }),
  explain: ({ measured }) => dischargeSteps(measured),
});
