/** The OpenAPI 3.1 document, made from the operations and the table of problems. */

import { OpenAPIHono, z } from "@hono/zod-openapi";
import type { OpenAPIObject as OpenAPIObject30 } from "openapi3-ts/oas30";
import type { ExamplesObject, LicenseObject, OpenAPIObject, SecuritySchemeObject } from "openapi3-ts/oas31";
import answers from "./answers.json" with { type: "json" };
import { registerBatch } from "./document-batch.js";
import {
  anyAnswer,
  everyHeader,
  headersOf,
  kept,
  metered,
  type Registry,
  registerHeaders,
  retiring,
} from "./document-headers.js";
import { computationProblems, problemResponses, registerProblems, unlisted } from "./document-problems.js";
import { notModified, registerReference, registerService } from "./document-service.js";
import { SiQuantitySchema } from "./explain.js";
import type { Described } from "./operation.js";
import { operations } from "./operations/index.js";
import { EXPLAIN } from "./parameters.js";
import { quantitySchemas } from "./quantity/schema.js";
import { HoldTargetSchema } from "./schemas/held.js";
import { BoxSchema } from "./schemas/stop.js";
import { WindowSchema } from "./schemas/window.js";
import { CONTRACT_VERSION } from "./version.js";

/** `identifier` is new in 3.1 and missing from the types. */
const license: LicenseObject & { identifier: string } = { name: "MIT", identifier: "MIT" };

/** Builds the document. It costs some milliseconds: build it once and serve its bytes. */
export function openApiDocument(offered: readonly Described[] = operations): OpenAPIObject {
  const info = { ...about.info, license };
  return inUse(registered(offered).getOpenAPI31Document({ openapi: "3.1.0", ...about, info }));
}

/** The same for generators that read 3.0 only, from the same registry. */
export function openApiDocument30(): OpenAPIObject30 {
  const info = {
    ...about.info,
    license: { name: license.name, url: "https://spdx.org/licenses/MIT.html" },
  };
  return inUse(registered(operations).getOpenAPIDocument({ openapi: "3.0.3", ...about, info }));
}

const bearer: SecuritySchemeObject = {
  type: "http",
  scheme: "bearer",
  description: "A key of the host, where it asks for one: whoever runs it hands them out.",
};

const about = {
  // what the document does not list is answered with, and what any answer may carry beside its own headers: said once
  "x-any-path": unlisted,
  "x-any-answer": { headers: anyAnswer },
  info: {
    title: "Plumbdrift",
    version: CONTRACT_VERSION,
    description:
      "Recommends dry-dropper setups from open-channel hydraulics and the force balance of the rig. Every computation is a POST that stores nothing and, with the same body and the same answer, a QUERY (RFC 10008), which OpenAPI 3.1 cannot list. An answer has a strong ETag; who sends it as If-None-Match gets 304 before anything is computed. A quantity says its unit; a physical no (drowned, on the bed) is an answer with status 200; everything else that is not an answer is a problem document (RFC 9457).",
  },
  // a key is sent where the host asks for one
  security: [{ bearer: [] }, {}],
  servers: [{ url: "/", description: "The host that serves this document." }],
  tags: [
    { name: "compute", description: "Computations: the same request gives the same answer." },
    { name: "reference", description: "What the numbers rest on." },
    { name: "service", description: "The service itself." },
  ],
};

function registered(offered: readonly Described[]): OpenAPIHono {
  const hono = new OpenAPIHono();
  const registry = hono.openAPIRegistry;
  // Components first: the description of a field would leak into a component that is met there first.
  for (const schema of Object.values(quantitySchemas)) registry.register(componentName(schema), schema);
  registerProblems(registry);
  registry.register("SiQuantity", SiQuantitySchema);
  registry.register("Window", WindowSchema);
  registry.register("HoldTarget", HoldTargetSchema);
  registry.register("Box", BoxSchema);
  registry.registerComponent("securitySchemes", "bearer", bearer);
  registerHeaders(
    registry,
    offered.some(({ deprecated }) => deprecated) ? [...everyHeader, ...retiring] : everyHeader,
  );
  registry.registerComponent("responses", "NotModified", notModified);
  for (const described of offered) registerOperation(registry, described);
  registerBatch(registry);
  registerReference(registry);
  registerService(registry);
  return hono;
}

/** A document without the responses that no operation refers to. */
function inUse<D extends OpenAPIObject | OpenAPIObject30>(document: D): D {
  const text = JSON.stringify(document);
  const used = Object.entries(document.components?.responses ?? {}).filter(([name]) =>
    text.includes(`"#/components/responses/${name}"`),
  );
  return { ...document, components: { ...document.components, responses: Object.fromEntries(used) } };
}

function componentName(schema: z.ZodType): string {
  const name = Object.entries(quantitySchemas).find(([, known]) => known === schema)?.[0] ?? "";
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}

const explainQuery = z.strictObject({
  explain: z
    .enum(EXPLAIN.explain as [string, ...string[]])
    .optional()
    .openapi({ description: "Adds `steps`: the chain of equations with their numbers." }),
});

function registerOperation(registry: Registry, described: Described): void {
  const { id, path, summary, description, request, response, examples, explain, deprecated } = described;
  registry.registerPath({
    method: "post",
    path,
    operationId: id,
    tags: ["compute"],
    summary,
    description: explain === undefined ? `${description} It has no steps to explain.` : description,
    ...(deprecated === undefined ? {} : { deprecated: true }),
    request: {
      ...(explain === undefined ? {} : { query: explainQuery }),
      body: {
        required: true,
        content: { "application/json": { schema: request, examples: { ...examples } } },
      },
    },
    responses: {
      "200": {
        description: "The answer.",
        headers: headersOf([...kept, "Accept-Query", ...metered, ...(deprecated ? retiring : [])]),
        content: { "application/json": { schema: response, examples: shownAnswer(described) } },
      },
      "304": { $ref: "#/components/responses/NotModified" },
      ...problemResponses(computationProblems),
    },
  });
}

/** What the engine answered to one of the examples: kept by `write` of test/contract, which compares. */
function shownAnswer({ id, examples }: Described): ExamplesObject {
  const kept: Readonly<Record<string, { readonly example: string; readonly value: unknown }>> = answers;
  const { example = "", value } = kept[id] ?? {};
  const summary = examples[example]?.summary;
  return summary === undefined ? {} : { [example]: { summary, value } };
}
