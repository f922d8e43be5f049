/** outing: a day on the river. */
export { adjustRig, effectiveSamplesValidity } from "./adjust.js";
export { mostChanges } from "./adjust-candidates.js";
export { sightingScales } from "./adjust-likelihood.js";
export type * from "./adjust-types.js";
export * from "./flow.js";
export {
  exponentScatter,
  type FlowEstimate,
  type FlowMethod,
  type FlowQuestion,
  type NoFlow,
  type StopPair,
  type WhyNotCarried,
} from "./flow-stop.js";
export * from "./gauge.js";
export * from "./takes.js";
export { mostFurtherTakes, mostOddsRead } from "./takes-odds.js";
export type * from "./takes-types.js";
