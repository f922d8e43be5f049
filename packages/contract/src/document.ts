/** The OpenAPI 3.1 document, made from the operations and the table of problems. */

import { OpenAPIHono, z } from "@hono/zod-openapi";
import type { OpenAPIObject as OpenAPIObject30 } from "openapi3-ts/oas30";
import type {
  ExamplesObject,
  HeaderObject,
  LicenseObject,
  OpenAPIObject,
  ResponseObject,
} from "openapi3-ts/oas31";
import answers from "./answers.json" with { type: "json" };
import { registerBatch } from "./document-batch.js";
import {
  answerHeaders,
  header,
  problemResponses,
  type Registry,
  registerReference,
  registerService,
} from "./document-service.js";
import { SiQuantitySchema } from "./explain.js";
import type { Described } from "./operation.js";
import { operations } from "./operations/index.js";
import { EXPLAIN } from "./parameters.js";
import { type ProblemCode, ProblemSchema, problemCodes, problemKinds } from "./problems.js";
import { quantitySchemas } from "./quantity/schema.js";
import { HoldTargetSchema } from "./schemas/held.js";
import { BoxSchema } from "./schemas/stop.js";
import { WindowSchema } from "./schemas/window.js";
import { CONTRACT_VERSION } from "./version.js";

/** What a computation can answer besides its result. The host answers what is no whole request, before there is a path. */
export const computationProblems: readonly ProblemCode[] = problemCodes.filter(
  (code) =>
    ![
      "malformed-request",
      "not-found",
      "method-not-allowed",
      "not-acceptable",
      "too-slow",
      "headers-too-large",
    ].includes(code),
);

/** What a host answers for any path, where what came is no whole request. */
const hostProblems: readonly ProblemCode[] = ["malformed-request", "too-slow", "headers-too-large"];

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

/** What any path may answer to a method that the document does not list for it: said once. */
const anyPath = { "405": { $ref: "#/components/responses/Problem405" } };

const about = {
  "x-any-path": anyPath,
  info: {
    title: "Plumbdrift",
    version: CONTRACT_VERSION,
    description:
      "Recommends dry-dropper setups from open-channel hydraulics and the force balance of the rig. Every computation is a POST that stores nothing and, with the same body and the same answer, a QUERY (RFC 10008), which OpenAPI 3.1 cannot list. An answer has a strong ETag; who sends it as If-None-Match gets 304 before anything is computed. A quantity says its unit; a physical no (drowned, on the bed) is an answer with status 200; everything else that is not an answer is a problem document (RFC 9457).",
  },
  security: [],
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
  registry.register("Problem", ProblemSchema);
  registry.register("SiQuantity", SiQuantitySchema);
  registry.register("Window", WindowSchema);
  registry.register("HoldTarget", HoldTargetSchema);
  registry.register("Box", BoxSchema);
  registerProblems(registry);
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

/** What a problem of a status says in its headers. */
const problemHeaders: Readonly<Record<number, Readonly<Record<string, HeaderObject>>>> = {
  401: { "WWW-Authenticate": header("How a key is sent.", true) },
  405: { Allow: header("The methods of this path.", true) },
  429: { "Retry-After": header("Seconds until it is worth trying again.", true) },
  503: { "Retry-After": header("Seconds until it is worth trying again.", false) },
};

/** What an operation on its way out says in every answer. */
const retiringHeaders: Readonly<Record<string, HeaderObject>> = {
  Deprecation: header("Since when something else is to be used (RFC 9745).", true),
  Sunset: header("From when it may no longer answer (RFC 8594).", false),
  Link: header("A page that says what to use in its place.", true),
};

/** One response per status, which names the codes it can carry. */
function registerProblems(registry: Registry): void {
  for (const status of new Set(problemCodes.map((code) => problemKinds[code].status))) {
    const says = problemCodes
      .filter((code) => problemKinds[code].status === status)
      .map((code) => `\`${code}\`: ${problemKinds[code].title}.`);
    const response: ResponseObject = {
      description: says.join(" "),
      content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
    };
    const headers = problemHeaders[status];
    if (headers !== undefined) response.headers = { ...headers };
    registry.registerComponent("responses", `Problem${status}`, response);
  }
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
        headers: { ...answerHeaders, ...(deprecated === undefined ? {} : retiringHeaders) },
        content: { "application/json": { schema: response, examples: shownAnswer(described) } },
      },
      "304": {
        description: "If-None-Match names the answer: nothing was computed.",
        headers: { ...answerHeaders },
      },
      ...problemResponses([...computationProblems, ...hostProblems]),
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
