/** Quantities as examples say them. */

import type { Example } from "./operation.js";
import type { Said } from "./quantity/wire.js";

export type Examples = Readonly<Record<string, Example>>;

export const m = (value: number): Said<"length"> => ({ value, unit: "m" });
export const ft = (value: number): Said<"length"> => ({ value, unit: "ft" });
export const mm = (value: number): Said<"length"> => ({ value, unit: "mm" });
export const cumecs = (value: number): Said<"discharge"> => ({ value, unit: "m3/s" });
export const cfs = (value: number): Said<"discharge"> => ({ value, unit: "ft3/s" });
