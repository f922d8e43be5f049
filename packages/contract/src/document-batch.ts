/** The path of the document that takes many computations. */

import { BatchItemSchema, BatchRequestSchema, BatchResponseSchema } from "./batch.js";
import { headersOf, metered, type Registry } from "./document-headers.js";
import { guarded, problemResponses } from "./document-problems.js";
import { rigExamples } from "./examples.js";
import { carryExamples } from "./examples-channel.js";
import { BATCH, STREAM } from "./limits.js";

const items = [
  { id: "monday", operation: "settleRig", body: rigExamples.tackle?.value },
  { id: "tuesday", operation: "carryFlow", body: carryExamples.ditch?.value },
  { id: "wednesday", operation: "carryFlow", body: {} },
];

const lines = "application/x-ndjson";

export function registerBatch(registry: Registry): void {
  registry.register("BatchItem", BatchItemSchema);
  registry.registerPath({
    method: "post",
    path: "/v1/batch",
    operationId: "computeBatch",
    tags: ["compute"],
    summary: "Many computations in one call",
    description: `Ordered: a result or a problem for each item, and one that is wrong does not spoil the others. At most ${BATCH.items} items and ${BATCH.work} units of work (/v1/limits), refused as a whole before computing. Sent as ${lines}, an item a line, it is answered line by line as it is read, at most ${STREAM.lines} lines; read while you send.`,
    request: {
      body: {
        required: true,
        content: {
          "application/json": {
            schema: BatchRequestSchema,
            examples: {
              threeTrips: {
                summary: "Three invented trips, the last without what its operation needs",
                value: { items },
              },
            },
          },
          [lines]: {
            schema: { type: "string" },
            example: items.map((item) => JSON.stringify(item)).join("\n"),
          },
        },
      },
    },
    responses: {
      "200": {
        description: "A result or a problem for each item, also where all are problems.",
        headers: headersOf(["Cache-Control", ...metered]),
        content: {
          "application/json": { schema: BatchResponseSchema },
          [lines]: { schema: { type: "string" } },
        },
      },
      ...problemResponses([
        ...guarded,
        "malformed-json",
        "not-acceptable",
        "too-large",
        "unsupported-media-type",
        "over-budget",
        "unavailable",
      ]),
    },
  });
}
