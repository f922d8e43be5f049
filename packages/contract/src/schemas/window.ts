/** Heights between which a fish takes, as a request and an answer say them. */

import { quantity } from "../quantity/schema.js";
import { type Said, type Strict, strict } from "../quantity/wire.js";

export interface WireWindow {
  readonly low: Said<"length">;
  readonly high: Said<"length">;
}

export const WindowSchema: Strict<WireWindow> = strict<WireWindow>({
  low: quantity("length", "Lower edge, a height above the bed.", 0, 50, "m"),
  high: quantity("length", "Upper edge, a height above the bed.", 0, 50, "m"),
}).openapi("Window", { description: "Heights above the bed between which the fish takes." });

export const WindowUsedSchema: Strict<WireWindow> = strict<WireWindow>({
  low: quantity("length", "Lower edge, a height above the bed."),
  high: quantity("length", "Upper edge, a height above the bed."),
}).openapi("WindowUsed", {
  description: "Heights above the bed between which a second counts.",
});
