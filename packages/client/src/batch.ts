/** Many computations in one call: each item gets its own answer or its own problem, in the types of its operation. */

import type { Problem } from "./problem.js";
import type { AnswerOf, OperationId, RequestOf, Schemas } from "./types.js";

/** One computation of a batch: an operation and the body it takes. */
export type Item = {
  readonly [Id in OperationId]: {
    readonly operation: Id;
    readonly body: RequestOf<Id>;
    /** Yours; nothing reads it. */
    readonly id?: string;
  };
}[OperationId];

/** What came of an item. One that is wrong does not spoil the others, so its problem is not thrown. */
export type Outcome<Id extends OperationId> =
  | { readonly ok: true; readonly answer: AnswerOf<Id> }
  | { readonly ok: false; readonly problem: Problem };

/** The outcomes of a list of items, in their order. */
export type Outcomes<Items extends readonly Item[]> = {
  readonly [K in keyof Items]: Outcome<Items[K]["operation"]>;
};

/** The outcomes that a response of the batch states. */
export function outcomesOf<Items extends readonly Item[]>(
  response: Schemas["BatchResponse"],
): Outcomes<Items> {
  const outcomes = response.items.map(({ result, problem }) =>
    problem === undefined ? { ok: true, answer: result } : { ok: false, problem },
  );
  // the order is that of the items, which the API promises and the compiler cannot see
  return outcomes as unknown as Outcomes<Items>;
}
