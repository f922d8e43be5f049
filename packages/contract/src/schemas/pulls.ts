/** What pulls on the float besides its line. */

import type { z } from "@hono/zod-openapi";
import { quantity } from "../quantity/schema.js";
import type { Said } from "../quantity/wire.js";

export interface Pulls {
  readonly held?: Said<"force"> | undefined;
  readonly wind?: Said<"speed"> | undefined;
}

export const pulls: { readonly [K in keyof Pulls]-?: z.ZodOptional<z.ZodType<NonNullable<Pulls[K]>>> } = {
  held: quantity("force", "Steady upstream pull on the float: the mend.", 0, 1, "N").optional(),
  wind: quantity("speed", "Wind at the surface, positive downstream.", -40, 40, "m/s").optional(),
};

/** How much slip spoils a second, for whoever counts effective seconds. */
export const excessScale: z.ZodOptional<z.ZodType<Said<"speed">>> = quantity(
  "speed",
  "Excess at which a second counts half; 0.3 m/s unless given.",
  0.01,
  10,
  "m/s",
).optional();
