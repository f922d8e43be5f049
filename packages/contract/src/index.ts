/** What may be said to Plumbdrift over HTTP. */
export { canonical, footingOf, nonFinite } from "./answer.js";
export { computationProblems, MAX_BODY_BYTES, openApiDocument } from "./document.js";
export type { FieldError } from "./field-errors.js";
export { MAX_ERRORS } from "./field-errors.js";
export type { Answer, Described, Example, Operation, Understood } from "./operation.js";
export * from "./operations/index.js";
export {
  type Problem,
  type ProblemCode,
  ProblemSchema,
  problem,
  problemCodes,
  problemKinds,
} from "./problems.js";
export { type Dimension, dimensions, fromSi, toSi, type Unit, type Units } from "./quantity/units.js";
export type { Said } from "./quantity/wire.js";
export { problemOf, RefusedError, within } from "./refusal.js";
export { keyMeant, type Relation, relationOf, relations } from "./relations.js";
export { nearest } from "./spelling.js";
export { CONTRACT_VERSION, ENGINE_VERSION } from "./version.js";
