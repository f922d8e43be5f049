/** The paths of the document that do not compute: what the numbers rest on, and the service itself. */

import { z } from "@hono/zod-openapi";
import type { ResponseObject } from "openapi3-ts/oas31";
import { headersOf, kept, metered, type Registry } from "./document-headers.js";
import { guarded, problemResponses } from "./document-problems.js";
import { references } from "./reference/index.js";

export interface Health {
  readonly status: "ok";
  readonly engine: string;
  readonly contract: string;
}

export const HealthSchema: z.ZodType<Health> = z
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

export const ReadySchema: z.ZodType<Ready> = z
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

/** To who has the answer already. */
export const notModified: ResponseObject = {
  description: "If-None-Match names the answer: it was not made again.",
  headers: headersOf([...kept, "Accept-Query", ...metered]),
};

/** Nobody is asked for a key here, and nothing is charged. */
const open = { security: [] };
const service = { ...open, tags: ["service"] };
const named = headersOf(["X-Request-Id", "Server-Timing"]);

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

export function registerReference(registry: Registry): void {
  for (const { id, path, summary, description, schema, example, keyed } of references) {
    const name = /\{(\w+)\}/.exec(path)?.[1];
    const shown = example();
    // what explains a refusal is open to whoever got it
    const free = path.startsWith("/v1/problems");
    registry.registerPath({
      method: "get",
      path,
      operationId: id,
      tags: ["reference"],
      ...(free ? open : {}),
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
          headers: headersOf(free ? [...kept, "X-Request-Id", "Server-Timing"] : [...kept, ...metered]),
          content: { "application/json": { schema, example: shown } },
        },
        "304": { $ref: "#/components/responses/NotModified" },
        ...problemResponses([
          "invalid-request",
          ...(keyed ? (["not-found"] as const) : []),
          ...(free ? [] : guarded),
        ]),
      },
    });
  }
}

export function registerService(registry: Registry): void {
  registry.registerPath({
    method: "get",
    path: "/healthz",
    operationId: "readHealth",
    ...service,
    summary: "Is it up?",
    description: "Answers as long as the process does.",
    responses: {
      "200": {
        description: "It is up.",
        headers: named,
        content: { "application/json": { schema: HealthSchema } },
      },
      ...problemResponses([]),
    },
  });
  registry.registerPath({
    method: "get",
    path: "/readyz",
    operationId: "readReadiness",
    ...service,
    summary: "Does it compute what it should?",
    description: "Computes three published values anew; 503 when one is off.",
    responses: {
      "200": {
        description: "It does.",
        headers: named,
        content: { "application/json": { schema: ReadySchema } },
      },
      ...problemResponses(["unavailable"]),
    },
  });
  for (const [path, { id, summary, type }] of Object.entries(renderings)) {
    registry.registerPath({
      method: "get",
      path,
      operationId: id,
      ...service,
      summary,
      description: "The same bytes until the next release; send If-None-Match to save them.",
      responses: {
        "200": {
          description: "The document.",
          headers: headersOf([...kept, "X-Request-Id", "Server-Timing"]),
          content: { [type]: { schema: { type: "object" } } },
        },
        "304": { $ref: "#/components/responses/NotModified" },
        ...problemResponses([]),
      },
    });
  }
}
