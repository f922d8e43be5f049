/** The problems of the document: a response for each status, which names the codes that it can carry. */

import type { ReferenceObject, ResponseObject } from "openapi3-ts/oas31";
import { type HeaderName, headersOf, metered, preflight, type Registry } from "./document-headers.js";
import { type ProblemCode, ProblemSchema, problemCodes, problemKinds } from "./problems.js";

/** What any path can answer, whoever asks: the host, where what came is no whole request, and a failure of ours. */
const anyone: readonly ProblemCode[] = ["malformed-request", "too-slow", "headers-too-large", "internal"];

/** What a path that is guarded can answer beside that. */
export const guarded: readonly ProblemCode[] = ["unauthorised", "too-many-requests"];

/** What a computation can answer besides its result. */
export const computationProblems: readonly ProblemCode[] = problemCodes.filter(
  (code) => !["not-found", "method-not-allowed", "not-acceptable"].includes(code),
);

/** The responses of an operation that can fail in these ways, and in those of any. */
export function problemResponses(codes: readonly ProblemCode[]): Record<string, ReferenceObject> {
  const statuses = new Set([...codes, ...anyone].map((code) => problemKinds[code].status));
  return Object.fromEntries([...statuses].sort().map((status) => [String(status), responseOf(status)]));
}

function responseOf(status: number): ReferenceObject {
  return { $ref: `#/components/responses/Problem${status}` };
}

/** What a path or method that the document does not list is answered with, and a browser that asks before it sends. */
export const unlisted: Readonly<Record<string, ReferenceObject | ResponseObject>> = {
  "204": { description: "What a page may send.", headers: preflight },
  ...problemResponses(["not-found", "method-not-allowed", ...guarded]),
};

/** What a problem of a status says in headers of its own. */
const own: Readonly<Record<number, readonly HeaderName[]>> = {
  401: ["WWW-Authenticate"],
  405: ["Allow"],
  429: ["Retry-After"],
};

export function registerProblems(registry: Registry): void {
  registry.register("Problem", ProblemSchema);
  for (const status of new Set(problemCodes.map((code) => problemKinds[code].status))) {
    const says = problemCodes
      .filter((code) => problemKinds[code].status === status)
      .map((code) => `\`${code}\`: ${problemKinds[code].title}.`);
    const response: ResponseObject = {
      description: says.join(" "),
      headers: headersOf(["Cache-Control", "Accept-Query", ...metered, ...(own[status] ?? [])]),
      content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
    };
    registry.registerComponent("responses", `Problem${status}`, response);
  }
}
