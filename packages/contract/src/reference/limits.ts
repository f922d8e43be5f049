/** Every ceiling, and what each operation costs. */

import { z } from "@hono/zod-openapi";
import { MAX_WORK, type Term, UNIT_OF_WORK, WORK_PER_CALL } from "../cost.js";
import { MAX_ERRORS } from "../field-errors.js";
import { BATCH, MAX_BODY_BYTES, STREAM } from "../limits.js";
import { operations } from "../operations/index.js";
import { count, plain, type Strict, strict } from "../quantity/wire.js";

interface OperationCost {
  readonly operation: string;
  readonly path: string;
  readonly lessAt: string;
  readonly terms: readonly Term[];
}

export interface Limits {
  readonly bodyBytes: number;
  readonly errorsListed: number;
  readonly work: { readonly unit: string; readonly perCall: number; readonly ceiling: number };
  readonly batch: typeof BATCH;
  readonly stream: typeof STREAM;
  readonly operations: readonly OperationCost[];
}

const TermSchema = strict<Term>({
  counts: z.string().openapi({ description: "What is counted, and how." }),
  each: plain("Units of work of each."),
}).openapi("CostTerm", { description: "Something done as often as the request says." });

const OperationCostSchema = strict<OperationCost>({
  operation: z.string().openapi({ description: "Its operationId." }),
  path: z.string().openapi({ description: "Where it is." }),
  lessAt: z.string().openapi({ description: "JSON pointer to the field by which a caller asks for less." }),
  terms: z.array(TermSchema).openapi({ description: "What its cost is made of." }),
}).openapi("OperationCost", {
  description: "Units of work of one call: those of any call, and each term times its count.",
});

export const LimitsSchema: Strict<Limits> = strict<Limits>({
  bodyBytes: count("The most bytes of a body."),
  errorsListed: count("The most errors that a problem lists."),
  work: strict<Limits["work"]>({
    unit: z.string().openapi({ description: "What a unit of work is." }),
    perCall: count("Of every call."),
    ceiling: count("The most that one computation may ask for."),
  }).openapi("WorkLimit", { description: "How work is counted: from the request, before computing." }),
  batch: strict<Limits["batch"]>({
    bytes: count("Of the body."),
    items: count("In one batch."),
    work: count("Units of all items together."),
  }).openapi("BatchLimits", { description: "Of a batch: refused as a whole before computing." }),
  stream: strict<Limits["stream"]>({
    lineBytes: count("Of one line."),
    lines: count("In one stream."),
    work: count("Units of all lines together."),
  }).openapi("StreamLimits", { description: "Of a batch in lines: it ends where one is reached." }),
  operations: z.array(OperationCostSchema).openapi({ description: "What each operation costs." }),
}).openapi("Limits", { description: "The ceilings of this service." });

export function limits(): Limits {
  return {
    bodyBytes: MAX_BODY_BYTES,
    errorsListed: MAX_ERRORS,
    work: { unit: UNIT_OF_WORK, perCall: WORK_PER_CALL, ceiling: MAX_WORK },
    batch: BATCH,
    stream: STREAM,
    operations: operations.map(({ id, path, cost }) => ({
      operation: id,
      path,
      lessAt: cost.lessAt,
      terms: cost.terms.map(({ counts, each }) => ({ counts, each })),
    })),
  };
}
