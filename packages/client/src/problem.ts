/** What a call throws: a problem that the API states, or an answer that did not come from it. */

import type { ProblemStatuses } from "./generated/tables.js";
import type { Schemas } from "./types.js";

export type ProblemCode = keyof ProblemStatuses;

/** A problem document (RFC 9457). Its `code` tells the kinds apart. */
export type Problem = {
  readonly [C in ProblemCode]: Omit<Schemas["Problem"], "code" | "status"> & {
    readonly code: C;
    readonly status: ProblemStatuses[C];
  };
}[ProblemCode];

/** Thrown when the API says what was wrong. A physical "no" (drowned, on the bed) is an answer and is not thrown. */
export class ProblemError extends Error {
  override readonly name = "ProblemError";
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.detail);
    this.problem = problem;
  }
}

/** Thrown for an answer that is none of the API's: the page of a proxy, a wrong address. */
export class ForeignAnswerError extends Error {
  override readonly name = "ForeignAnswerError";
  readonly status: number;

  constructor(status: number) {
    super(
      `status ${status} with a body that is no problem document: is this the address of a Plumbdrift API?`,
    );
    this.status = status;
  }
}

/** Whether a body is a problem document of this API. */
export function isProblem(body: unknown): body is Problem {
  if (typeof body !== "object" || body === null) return false;
  return "code" in body && "detail" in body && "status" in body && "errors" in body;
}
