/** The computations as a language-model client is told of them: names, descriptions and schemas of the document. */

import type { Tool } from "@modelcontextprotocol/sdk/types.js";
import { operationIds, paths } from "@plumbdrift/contract";

/** What is read of the document. */
interface Document {
  readonly paths: Readonly<Record<string, { readonly post?: Posted }>>;
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> };
}

interface Posted {
  readonly summary: string;
  readonly description: string;
  readonly requestBody: { readonly content: { readonly "application/json": Body } };
}

interface Body {
  readonly schema: unknown;
  readonly examples: Readonly<Record<string, { readonly value: unknown }>>;
}

const convention =
  'Every quantity says its unit: {"value": 3, "unit": "ft"}; the schema lists the units of each dimension. Ask for "units": "us" or "si" (the default).';

/** How to read what the tools answer; told to a client once. */
export const instructions: string = [
  convention,
  "A physical no (drowned, on the bed, no such depth) is an answer; a mistake in the arguments is a problem document that names path and expectation.",
  "meta names relations and assumptions, caveats say where a relation left its published range: pass on what matters of them.",
  "The numbers describe water and rigs, never footing: none of them says that a wade is without danger. Local rules and licensed practice come first.",
].join(" ");

/** One tool for each operation, under its operation id. */
export function toolList(document: Document): readonly Tool[] {
  const { schemas } = document.components;
  return operationIds.map((id) => {
    const { summary, description, requestBody } = posted(document, paths[id]);
    const { schema, examples } = requestBody.content["application/json"];
    const given = Object.values(examples).map(({ value }) => value);
    return {
      name: id,
      title: summary,
      description: `${summary} ${description} ${convention}`,
      inputSchema: { ...selfContained(schema, schemas), examples: given.slice(0, 1) },
      annotations: { readOnlyHint: true, idempotentHint: true, openWorldHint: false },
    };
  });
}

function posted({ paths }: Document, path: string): Posted {
  const { post } = paths[path] ?? {};
  if (post === undefined) throw new Error(`${path} is not in the document`);
  return post;
}

/** An object schema with all that it refers to under `$defs`. */
function selfContained(schema: unknown, schemas: Readonly<Record<string, unknown>>): Tool["inputSchema"] {
  const needed = new Map<string, unknown>();
  const local = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(local);
    if (typeof value !== "object" || value === null) return value;
    // `discriminator` is of OpenAPI alone, and `oneOf` beside it says the same
    const kept = Object.entries(value).filter(([key]) => key !== "discriminator");
    return Object.fromEntries(kept.map(([key, item]) => [key, key === "$ref" ? define(item) : local(item)]));
  };
  const define = (reference: unknown): string => {
    const name = nameOf(reference);
    if (!needed.has(name)) {
      needed.set(name, undefined);
      needed.set(name, local(schemas[name]));
    }
    return `#/$defs/${name}`;
  };
  const root = isReference(schema) ? schemas[nameOf(schema.$ref)] : schema;
  const body = local(root) as object;
  return { type: "object", ...body, $defs: Object.fromEntries(needed) };
}

function nameOf(reference: unknown): string {
  return String(reference).split("/").at(-1) ?? "";
}

function isReference(schema: unknown): schema is { readonly $ref: string } {
  return typeof schema === "object" && schema !== null && "$ref" in schema;
}
