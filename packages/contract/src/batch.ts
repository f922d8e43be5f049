/** Many computations in one call: what a batch, an item of it and a result look like. */

import { z } from "@hono/zod-openapi";
import { BATCH } from "./limits.js";
import { type OperationId, operationIds } from "./paths.js";
import { type Problem, ProblemSchema } from "./problems.js";
import { type Decoding, decodeBody } from "./quantity/decode.js";
import { isRecord } from "./quantity/walk.js";
import { count, type Strict, strict } from "./quantity/wire.js";
import { printable } from "./schemas/tackle.js";

export interface BatchItem {
  readonly id?: string | undefined;
  readonly operation: OperationId;
  readonly body: Readonly<Record<string, unknown>>;
}

export interface BatchResult {
  readonly index: number;
  readonly id?: string | undefined;
  readonly status: number;
  readonly result?: object | undefined;
  readonly problem?: Problem | undefined;
}

interface Batch<Item> {
  readonly items: readonly Item[];
}

const idSchema = z.string().regex(printable).openapi({ pattern: printable.source });
/** An object of any keys, in words that both versions of OpenAPI have. */
const anyObject = (description: string) => z.looseObject({}).openapi({ type: "object", description });

export const BatchItemSchema: Strict<BatchItem> = strict<BatchItem>({
  id: idSchema.optional().openapi({ description: "Yours, up to 80 characters: the result repeats it." }),
  operation: z.enum(operationIds).openapi({ description: "The operationId of a computation." }),
  body: anyObject("The body that this operation takes."),
}).openapi("BatchItem", { description: "One computation of a batch." });

const items = <T extends z.ZodType>(item: T): z.ZodArray<T> =>
  z
    .array(item)
    .min(1)
    .max(BATCH.items)
    .openapi({ description: `In the order of their results; 1 to ${BATCH.items}.` });

export const BatchRequestSchema: Strict<Batch<BatchItem>> = strict<Batch<BatchItem>>({
  items: items(BatchItemSchema),
}).openapi("BatchRequest");

/** As it is read: an item that does not fit must not spoil the others. */
const envelope = strict<Batch<unknown>>({ items: items(z.unknown()) });

const BatchResultSchema = strict<BatchResult>({
  index: count("Place of the item, from 0; in a stream of its line, blank ones not counted."),
  id: z.string().optional().openapi({ description: "As the item says it." }),
  status: z
    .number()
    .int()
    .min(200)
    .max(599)
    .openapi({ description: "What the operation alone would answer with." }),
  result: anyObject("The answer that the operation alone would give; present with status 200.").optional(),
  problem: ProblemSchema.optional().openapi({
    description:
      "The problem that it would give; present with any other status. Pointers go into its body, or into the item where that itself does not fit.",
  }),
}).openapi("BatchResult", { description: "What came of one item: a result or a problem." });

export const BatchResponseSchema: Strict<Batch<BatchResult>> = strict<Batch<BatchResult>>({
  items: z.array(BatchResultSchema).openapi({ description: "One for each item, in their order." }),
}).openapi("BatchResponse");

/** The items of a batch, each of unknown shape. */
export function itemsOf(sent: unknown): Decoding<readonly unknown[]> {
  const decoding = decodeBody(envelope, sent);
  // what was sent, not a copy of it: each item is read by its own schema
  return decoding.ok ? { ok: true, body: (sent as Batch<unknown>).items } : decoding;
}

export function itemOf(sent: unknown): Decoding<BatchItem> {
  const decoding = decodeBody(BatchItemSchema, sent);
  return decoding.ok ? { ok: true, body: sent as BatchItem } : decoding;
}

/** The id that an item says, even one that does not fit otherwise. */
export function idOf(sent: unknown): string | undefined {
  const id = isRecord(sent) && Object.hasOwn(sent, "id") ? sent.id : undefined;
  return idSchema.safeParse(id).success ? String(id) : undefined;
}
