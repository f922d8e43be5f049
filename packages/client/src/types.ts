/** The operations and their bodies, read off the types generated from the document. */

import type { components, operations } from "./generated/document.js";
import type { operationPaths } from "./generated/tables.js";

export type { paths } from "./generated/document.js";

/** The schemas of the document by name. */
export type Schemas = components["schemas"];

export type OperationId = keyof typeof operationPaths;

/** What an operation is asked. */
export type RequestOf<Id extends OperationId> = operations[Id]["requestBody"]["content"]["application/json"];

/** What an operation answers. */
export type AnswerOf<Id extends OperationId> =
  operations[Id]["responses"][200]["content"]["application/json"];
