/** readColumn: how fast does the water run at each height? */

import { z } from "@hono/zod-openapi";
import {
  type Column,
  type DepthBelowSurface,
  depthBelowSurface,
  type HeightAboveBed,
  heightAboveBed,
  type MetresPerSecond,
  type Observation,
  speedAt,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { columnExamples } from "../examples.js";
import { columnSteps } from "../explanations/column.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { ColumnSchema, columnOf, type WireColumn } from "../schemas/column.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";

interface Asked {
  readonly water: WireWater;
  readonly layers?: number | undefined;
  readonly units?: Units | undefined;
}

const Request = strict<Asked>({
  water: WaterSchema,
  layers: z
    .number()
    .int()
    .min(1)
    .max(200)
    .optional()
    .openapi({ description: "Into how many equal layers the answer divides the depth; 10 unless given." }),
  units: UnitsSchema.optional(),
}).openapi("ReadColumnRequest");

interface SpeedAtHeight {
  readonly heightAboveBed: HeightAboveBed;
  readonly depthBelowSurface: DepthBelowSurface;
  readonly speed: MetresPerSecond;
}

interface Answered {
  readonly column: WireColumn;
  readonly speeds: readonly Wire<SpeedAtHeight>[];
}

export interface ReadColumnResponse extends Answered, Footing {}

const SpeedSchema = strict<Wire<SpeedAtHeight>>({
  heightAboveBed: quantity("length", "Height above the bed."),
  depthBelowSurface: quantity("length", "Depth below the surface."),
  speed: quantity("speed", "Of the water there, along the stream."),
}).openapi("SpeedAtHeight", { description: "The speed of the water at one height." });

const Response = strict<ReadColumnResponse>({
  column: ColumnSchema,
  speeds: z.array(SpeedSchema).openapi({ description: "From the surface down to the bed." }),
  ...footing,
}).openapi("ReadColumnResponse");

interface Input {
  readonly observation: Observation;
  readonly layers: number;
}

export const readColumn: Operation<Input, Column, Answered> = operation<Asked, Input, Column, Answered>({
  id: "readColumn",
  path: paths.readColumn,
  summary: "How fast does the water run at each height?",
  description:
    "From depth, a surface speed (or timed floats, or measured points), the bed and the temperature to the speed at every height over one spot.",
  request: Request,
  response: Response,
  examples: columnExamples,
  cost: {
    lessAt: "/layers",
    terms: [{ counts: "heights: the layers and one", each: 10, of: ({ layers = 10 }) => layers + 1 }],
  },
  toInput: ({ water, layers = 10 }) => ({ observation: observationOf(water), layers }),
  encode: (column, units, { layers }) => {
    const speeds = Array.from({ length: layers + 1 }, (_, i) => {
      const height = heightAboveBed(((layers - i) / layers) * column.depth);
      const depth = depthBelowSurface((i / layers) * column.depth);
      const said = { heightAboveBed: height, depthBelowSurface: depth, speed: speedAt(column, height) };
      return encode(SpeedSchema, said, units);
    });
    return { answer: { column: columnOf(column, units), speeds }, grounds: column.grounds };
  },
  explain: (column, { observation }) => columnSteps(column, observation),
});
