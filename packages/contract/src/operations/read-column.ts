/** readColumn: how fast does the water run at each height? */

import { z } from "@hono/zod-openapi";
import { type Column, heightAboveBed, type Observation, speedAt, times } from "@plumbdrift/core";
import { footing, type Say } from "../answer.js";
import { columnExamples } from "../examples.js";
import { operation } from "../operation.js";
import { quantitySchemas as q } from "../quantity/schema.js";
import { ColumnSchema, columnOf } from "../schemas/column.js";
import { observationOf, UnitsSchema, WaterSchema } from "../schemas/water.js";

const Request = z
  .strictObject({
    water: WaterSchema,
    layers: z
      .number()
      .int()
      .min(1)
      .max(200)
      .optional()
      .openapi({ description: "Into how many equal layers the answer divides the depth; 10 unless given." }),
    units: UnitsSchema.optional(),
  })
  .openapi("ReadColumnRequest");

const Speed = z
  .strictObject({
    heightAboveBed: q.length,
    depthBelowSurface: q.length,
    speed: q.speed,
  })
  .openapi("SpeedAtHeight", { description: "The speed of the water at one height." });

const Response = z
  .strictObject({
    column: ColumnSchema,
    speeds: z.array(Speed).openapi({ description: "From the surface down to the bed." }),
    ...footing,
  })
  .openapi("ReadColumnResponse");

interface Input {
  readonly observation: Observation;
  readonly layers: number;
}

export type ReadColumnResponse = z.output<typeof Response>;

export const readColumn = operation({
  id: "readColumn",
  path: "/v1/columns",
  summary: "How fast does the water run at each height?",
  description:
    "From depth, a surface speed (or timed floats, or measured points), the bed and the temperature to the speed at every height over one spot.",
  request: Request,
  response: Response,
  examples: columnExamples,
  toInput: ({ water, layers = 10 }): Input => ({ observation: observationOf(water), layers }),
  encode: (column: Column, say: Say, { layers }: Input) => ({
    answer: {
      column: columnOf(column, say),
      speeds: Array.from({ length: layers + 1 }, (_, i) => {
        const relative = (layers - i) / layers;
        const height = heightAboveBed(relative * column.depth);
        return {
          heightAboveBed: say.length(height),
          depthBelowSurface: say.length(times(column.depth, 1 - relative)),
          speed: say.speed(speedAt(column, height)),
        };
      }),
    },
    grounds: column.grounds,
  }),
});
