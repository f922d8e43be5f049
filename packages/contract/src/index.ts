/** What may be said to Plumbdrift over HTTP. */

export { canonical, footingOf, nonFinite } from "./answer.js";
export {
  type BatchItem,
  BatchRequestSchema,
  BatchResponseSchema,
  type BatchResult,
  idOf,
  itemOf,
  itemsOf,
} from "./batch.js";
export { MAX_WORK, WORK_PER_CALL } from "./cost.js";
export { type Deprecation, deprecationHeaders } from "./deprecation.js";
export { openApiDocument, openApiDocument30 } from "./document.js";
export { HealthSchema, type Ready, ReadySchema, renderings } from "./document-service.js";
export type { FieldError } from "./field-errors.js";
export { MAX_ERRORS } from "./field-errors.js";
export { BATCH, MAX_BODY_BYTES, STREAM } from "./limits.js";
export type { Answer, Described, Example, Operation, Understood } from "./operation.js";
export * from "./operations/index.js";
export { EXPLAIN, type Parameters, parameterErrors } from "./parameters.js";
export { type OperationId, operationIds, paths } from "./paths.js";
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
export { type Reference, references } from "./reference/index.js";
export { problemOf, RefusedError, within } from "./refusal.js";
export { repeatedKeys } from "./repeated-keys.js";
export { meant, nearest } from "./spelling.js";
export { CONTRACT_VERSION, ENGINE_VERSION } from "./version.js";
