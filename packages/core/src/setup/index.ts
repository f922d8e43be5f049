/** setup: candidates, judgement, ranking, reasons. */
export * from "./judge.js";
export * from "./rank.js";
export { changeBetween, standingCautions } from "./reasons.js";
export * from "./stop.js";
