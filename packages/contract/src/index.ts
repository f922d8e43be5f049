/** What may be said to Plumbdrift over HTTP. */
export { canonical, footingOf, nonFinite, type Said, type Say, sayIn, type Units } from "./answer.js";
export { computationProblems, MAX_BODY_BYTES, openApiDocument } from "./document.js";
export type { FieldError } from "./field-errors.js";
export { MAX_ERRORS } from "./field-errors.js";
export type { Answer, Described, Example, InputOf, Operation, Understood } from "./operation.js";
export * from "./operations/index.js";
export {
  type Problem,
  type ProblemCode,
  ProblemSchema,
  problem,
  problemCodes,
  problemKinds,
} from "./problems.js";
export { type Dimension, dimensions, fromSi, toSi, type Unit } from "./quantity/units.js";
export { problemOf, RefusedError } from "./refusal.js";
export { nearest } from "./spelling.js";
export { CONTRACT_VERSION, ENGINE_VERSION } from "./version.js";
