/** setup: candidates, judgement, ranking, reasons. */
export * from "./judge.js";
export * from "./rank.js";
export * from "./stop.js";
