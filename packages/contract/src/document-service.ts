/** The paths of the document that do not compute: what the numbers rest on, and the service itself. */

import { type OpenAPIHono, z } from "@hono/zod-openapi";
import type { HeaderObject, ReferenceObject } from "openapi3-ts/oas31";
import { type ProblemCode, problemKinds } from "./problems.js";
import { references } from "./reference/index.js";

const HealthSchema = z
  .strictObject({
    status: z.enum(["ok"]).openapi({ description: "It answers." }),
    engine: z.string().openapi({ description: "Version of the engine that computes." }),
    contract: z.string().openapi({ description: "Version of this document." }),
  })
  .openapi("Health", { description: "It is up, and what it is." });

/** That a host computes what others have published. */
export interface Ready {
  readonly status: "ready";
  readonly engine: string;
  readonly checks: readonly {
    readonly operation: string;
    readonly source: string;
    readonly published: string;
    readonly computed: string;
  }[];
}

const ReadySchema: z.ZodType<Ready> = z
  .strictObject({
    status: z.enum(["ready"]).openapi({ description: "It computes what was published." }),
    engine: z.string().openapi({ description: "Version of the engine that computes." }),
    checks: z
      .array(
        z
          .strictObject({
            operation: z.string().openapi({ description: "Which operation computed it." }),
            source: z.string().openapi({ description: "Who published the value." }),
            published: z.string().openapi({ description: "The value as printed, with its unit." }),
            computed: z.string().openapi({ description: "What was computed for this answer." }),
          })
          .openapi("ReadyCheck", { description: "A published value, computed again." }),
      )
      .openapi({ description: "Every value that was computed." }),
  })
  .openapi("Ready", { description: "It computes what it should." });

export type Registry = OpenAPIHono["openAPIRegistry"];

export function header(description: string, required: boolean): HeaderObject {
  return { description, required, schema: { type: "string" } };
}

/** What names an answer and says how long it is fresh. */
export const answerHeaders: Readonly<Record<string, HeaderObject>> = {
  ETag: header("Names the answer: equal for equal requests to one release.", true),
  "Cache-Control": header("How long a cache may keep it.", true),
};

interface Rendering {
  readonly id: string;
  readonly summary: string;
  readonly type: string;
}

/** Where the document is served, and in what form. */
export const renderings: Readonly<
  Record<"/openapi.json" | "/openapi.yaml" | "/openapi-3.0.json", Rendering>
> = {
  "/openapi.json": { id: "readDocument", summary: "This document", type: "application/json" },
  "/openapi.yaml": { id: "readYamlDocument", summary: "This document as YAML", type: "application/yaml" },
  "/openapi-3.0.json": {
    id: "readOlderDocument",
    summary: "This document in OpenAPI 3.0, for generators that read no other",
    type: "application/json",
  },
};

export function problemResponses(codes: readonly ProblemCode[]): Record<string, ReferenceObject> {
  const statuses = [...new Set(codes.map((code) => problemKinds[code].status))].sort();
  return Object.fromEntries(
    statuses.map((status) => [String(status), { $ref: `#/components/responses/Problem${status}` }]),
  );
}

export function registerReference(registry: Registry): void {
  for (const { id, path, summary, description, schema, example, keyed } of references) {
    const name = /\{(\w+)\}/.exec(path)?.[1];
    const shown = example();
    registry.registerPath({
      method: "get",
      path,
      operationId: id,
      tags: ["reference"],
      summary,
      description,
      ...(name === undefined || keyed === undefined
        ? {}
        : {
            request: {
              params: z.object({
                [name]: z
                  .string()
                  .openapi({ description: `${keyed.list} lists them.`, example: keyed.keys[0] }),
              }),
            },
          }),
      responses: {
        "200": {
          description: "The answer.",
          headers: { ...answerHeaders },
          content: { "application/json": { schema, example: shown } },
        },
        "304": { description: "If-None-Match names the answer.", headers: { ...answerHeaders } },
        ...problemResponses(["invalid-request", ...(keyed ? (["not-found"] as const) : []), "internal"]),
      },
    });
  }
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
    path: "/readyz",
    operationId: "readReadiness",
    tags: ["service"],
    summary: "Does it compute what it should?",
    description: "Computes three published values anew; 503 when one is off.",
    responses: {
      "200": { description: "It does.", content: { "application/json": { schema: ReadySchema } } },
      ...problemResponses(["internal", "unavailable"]),
    },
  });
  for (const [path, { id, summary, type }] of Object.entries(renderings)) {
    registry.registerPath({
      method: "get",
      path,
      operationId: id,
      tags: ["service"],
      summary,
      description: "The same bytes until the next release; send If-None-Match to save them.",
      responses: {
        "200": {
          description: "The document.",
          headers: { ...answerHeaders },
          content: { [type]: { schema: { type: "object" } } },
        },
        "304": { description: "If-None-Match names the document.", headers: { ...answerHeaders } },
        ...problemResponses(["internal"]),
      },
    });
  }
}
