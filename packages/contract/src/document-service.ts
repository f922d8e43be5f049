/** The paths of the document that do not compute: what the numbers rest on, and the service itself. */

import { type OpenAPIHono, z } from "@hono/zod-openapi";
import type { ReferenceObject } from "openapi3-ts/oas31";
import { type ProblemCode, problemKinds } from "./problems.js";
import { RelationSchema, RelationsSchema } from "./relations.js";

const HealthSchema = z
  .strictObject({
    status: z.enum(["ok"]).openapi({ description: "It answers." }),
    engine: z.string().openapi({ description: "Version of the engine that computes." }),
    contract: z.string().openapi({ description: "Version of this document." }),
  })
  .openapi("Health", { description: "It is up, and what it is." });

export type Registry = OpenAPIHono["openAPIRegistry"];

export function problemResponses(codes: readonly ProblemCode[]): Record<string, ReferenceObject> {
  const statuses = [...new Set(codes.map((code) => problemKinds[code].status))].sort();
  return Object.fromEntries(
    statuses.map((status) => [String(status), { $ref: `#/components/responses/Problem${status}` }]),
  );
}

export function registerReference(registry: Registry): void {
  registry.registerPath({
    method: "get",
    path: "/v1/relations",
    operationId: "listRelations",
    tags: ["reference"],
    summary: "Which relations does the engine rest on?",
    description: "Every source by key, the ranges it was published for, and where it is used.",
    responses: {
      "200": {
        description: "All of them.",
        content: { "application/json": { schema: RelationsSchema } },
      },
      ...problemResponses(["internal"]),
    },
  });
  registry.registerPath({
    method: "get",
    path: "/v1/relations/{key}",
    operationId: "readRelation",
    tags: ["reference"],
    summary: "What is behind a key?",
    description: "The keys are those of meta.relations and of caveats.",
    request: {
      params: z.object({
        key: z
          .string()
          .openapi({ description: "As meta.relations and caveats name it.", example: "Chow1959" }),
      }),
    },
    responses: {
      "200": {
        description: "The relation.",
        content: { "application/json": { schema: RelationSchema } },
      },
      ...problemResponses(["not-found", "internal"]),
    },
  });
}

export function registerService(registry: Registry): void {
  registry.registerPath({
    method: "get",
    path: "/healthz",
    operationId: "readHealth",
    tags: ["service"],
    summary: "Is it up?",
    description: "Answers as long as the process does.",
    responses: {
      "200": { description: "It is up.", content: { "application/json": { schema: HealthSchema } } },
      ...problemResponses(["internal"]),
    },
  });
  registry.registerPath({
    method: "get",
    path: "/openapi.json",
    operationId: "readDocument",
    tags: ["service"],
    summary: "This document",
    description: "The same bytes until the next release; send If-None-Match to save them.",
    responses: {
      "200": {
        description: "The document.",
        content: { "application/json": { schema: { type: "object" } } },
        headers: { ETag: { description: "Names these bytes.", required: true, schema: { type: "string" } } },
      },
      "304": { description: "Unchanged." },
      ...problemResponses(["internal"]),
    },
  });
}
