/** Typed client of the Plumbdrift HTTP API. */
export type { Item, Outcome, Outcomes } from "./batch.js";
export { type CallOptions, type ClientOptions, type Plumbdrift, plumbdrift } from "./client.js";
export type { Fetch, Patience } from "./patience.js";
export { ForeignAnswerError, type Problem, type ProblemCode, ProblemError } from "./problem.js";
export * from "./quantities.js";
export type { AnswerOf, OperationId, RequestOf, Schemas } from "./types.js";
