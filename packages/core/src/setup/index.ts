/** setup: candidates, judgement, ranking, reasons. */
export * from "./judge.js";
export * from "./rank.js";
export { standingCautions } from "./reasons.js";
export * from "./stop.js";
