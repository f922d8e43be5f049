/** What pulls on the float besides its line. */

import { quantity } from "../quantity/schema.js";

export const pulls = {
  held: quantity("force", "Steady upstream pull on the float: the mend.", 0, 1, "N").optional(),
  wind: quantity("speed", "Wind at the surface, positive downstream.", -40, 40, "m/s").optional(),
} as const;
