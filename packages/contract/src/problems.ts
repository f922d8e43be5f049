/** One table of problems: from it come the statuses, the schema, the document and the pages that explain them. */

import { z } from "@hono/zod-openapi";
import { type FieldError, MAX_ERRORS } from "./field-errors.js";
import { type Strict, strict } from "./quantity/wire.js";

export type ProblemCode =
  | "malformed-request"
  | "malformed-json"
  | "invalid-request"
  | "unauthorised"
  | "not-found"
  | "method-not-allowed"
  | "not-acceptable"
  | "too-slow"
  | "too-large"
  | "unsupported-media-type"
  | "impossible"
  | "over-budget"
  | "too-many-requests"
  | "headers-too-large"
  | "internal"
  | "unavailable";

interface ProblemKind {
  readonly status: 400 | 401 | 404 | 405 | 406 | 408 | 413 | 415 | 422 | 429 | 431 | 500 | 503;
  readonly title: string;
  /** What it means and what to do about it. */
  readonly meaning: string;
}

export const problemKinds: Readonly<Record<ProblemCode, ProblemKind>> = {
  "malformed-request": {
    status: 400,
    title: "What came is no HTTP request",
    meaning: "What came is no HTTP request: the host answers before there is a path.",
  },
  "malformed-json": {
    status: 400,
    title: "The body is not JSON",
    meaning:
      "The body is not UTF-8, cannot be read as JSON, or is empty. `NaN` and `Infinity` are no JSON numbers.",
  },
  "invalid-request": {
    status: 400,
    title: "The request does not fit the schema",
    meaning:
      "A key or a query parameter is missing, unknown or given twice, a unit belongs to another dimension, a value is out of range. `errors` says where.",
  },
  unauthorised: {
    status: 401,
    title: "This host asks for a key",
    meaning: "This host asks for a key: send `Authorization: Bearer` and the key.",
  },
  "not-found": {
    status: 404,
    title: "Nothing lives at this path",
    meaning: "The path does not exist. The detail names the nearest one that does.",
  },
  "method-not-allowed": {
    status: 405,
    title: "This path does not answer this method",
    meaning: "The header `Allow` lists the methods of this path.",
  },
  "not-acceptable": {
    status: 406,
    title: "Nothing here is of a type that is accepted",
    meaning: "The header `Accept` leaves out everything that this path can answer.",
  },
  "too-slow": {
    status: 408,
    title: "The request did not come whole in its time",
    meaning: "The request did not come whole in the time that the host gives it. Send it again.",
  },
  "too-large": {
    status: 413,
    title: "The body is too large",
    meaning: "The body has more bytes than `/v1/limits` allows.",
  },
  "unsupported-media-type": {
    status: 415,
    title: "The body is not sent as JSON",
    meaning:
      "Send `Content-Type: application/json`, not compressed; a batch may also come as `application/x-ndjson`.",
  },
  impossible: {
    status: 422,
    title: "The values cannot hold together",
    meaning:
      "Each value is in range and they still cannot hold together: a measured point above the surface, a law without what it needs, a bead too large for its hook.",
  },
  "over-budget": {
    status: 422,
    title: "The request asks for more work than one call may do",
    meaning: "The request asks for more units of work than `/v1/limits` allows. Nothing was computed.",
  },
  "too-many-requests": {
    status: 429,
    title: "Too much was asked in too short a time",
    meaning: "Too much was asked in too short a time. `Retry-After` says how many seconds to wait.",
  },
  "headers-too-large": {
    status: 431,
    title: "The headers are too large",
    meaning: "The headers have more bytes than the host reads. Send fewer.",
  },
  internal: {
    status: 500,
    title: "Something failed on our side",
    meaning: "A failure of ours. `instance` names it in the log.",
  },
  unavailable: {
    status: 503,
    title: "The service cannot answer now",
    meaning: "The service is starting, stopping or not fit to answer. Nothing was computed: try again.",
  },
};

export const problemCodes: readonly ProblemCode[] = Object.keys(problemKinds) as ProblemCode[];

/** Problem details, RFC 9457. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance?: string | undefined;
  readonly code: ProblemCode;
  readonly errors: readonly FieldError[];
}

const FieldErrorSchema = strict<FieldError>({
  path: z.string().openapi({
    description: "JSON pointer into the body, empty for the body itself; a query parameter as ?name.",
  }),
  expected: z.string().openapi({ description: "What would fit, with unit and range." }),
  received: z.string().openapi({ description: "What came, clipped." }),
  suggestion: z.string().optional().openapi({ description: "What was probably meant." }),
}).openapi("FieldError", { description: "One thing wrong with the request." });

export const ProblemSchema: Strict<Problem> = strict<Problem>({
  type: z.string().openapi({ description: "URI reference of the kind of problem." }),
  title: z.string().openapi({ description: "What kind of problem it is, in words." }),
  status: z.number().int().min(400).max(599).openapi({ description: "The status of the response." }),
  detail: z.string().openapi({ description: "What is wrong with this request." }),
  instance: z.string().optional().openapi({ description: "Names this occurrence: quote it in a report." }),
  code: z.enum(problemCodes).openapi({ description: "Stable: to act on and to translate from." }),
  errors: z
    .array(FieldErrorSchema)
    .max(MAX_ERRORS)
    .openapi({ description: `What is wrong where; at most ${MAX_ERRORS} are listed.` }),
}).openapi("Problem", { description: "Problem details (RFC 9457). Sent as application/problem+json." });

/** A problem of a kind, ready to send. */
export function problem(
  code: ProblemCode,
  detail: string,
  more: Partial<Pick<Problem, "errors" | "instance">> = {},
): Problem {
  const { status, title } = problemKinds[code];
  const { errors = [], instance } = more;
  return {
    type: `/v1/problems/${code}`,
    title,
    status,
    detail,
    ...(instance === undefined ? {} : { instance }),
    code,
    errors: errors.slice(0, MAX_ERRORS),
  };
}
