/** Asks the built API in this process and holds every answer against its own document. */

import { app as theApp } from "@plumbdrift/api";
import { operations } from "@plumbdrift/contract";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";

export interface Reply {
  readonly status: number;
  readonly type: string;
  readonly headers: Headers;
  readonly body: Body;
}

/** A body as the tests read it. */
// biome-ignore lint/suspicious/noExplicitAny: bodies are checked against the document, not by types
export type Body = any;

export const document: Body = await (await theApp.request("/openapi.json")).json();

const ajv = new Ajv2020({ strict: true, allErrors: false, keywords: ["discriminator", "components"] });
ajv.addSchema({ $id: "api:", components: document.components });
const validators = new Map<string, ValidateFunction>();

/** The verdict of Ajv on a value under a schema of the document. */
export function verdict(schema: Body, value: unknown): { readonly valid: boolean; readonly why: string } {
  const text = JSON.stringify(schema).replaceAll('"#/components', '"api:#/components');
  const validate = validators.get(text) ?? ajv.compile(JSON.parse(text));
  validators.set(text, validate);
  return { valid: validate(value), why: ajv.errorsText(validate.errors) };
}

export type Requestable = Pick<typeof theApp, "request">;

/** Sends a request. Throws when the answer is not one that the document declares for the operation. */
export async function ask(path: string, init: RequestInit = {}, app: Requestable = theApp): Promise<Reply> {
  const response = await app.request(path, init);
  const type = response.headers.get("content-type") ?? "";
  const text = await response.text();
  const body: Body = text === "" ? undefined : JSON.parse(text);
  const { status, headers } = response;
  checkDeclared(path, init.method ?? "GET", status, type, body);
  return { status, type, headers, body };
}

/** Posts a value as JSON; a string goes as it is. What is asked again and again is computed once: an answer depends on nothing but its request. */
export async function post(path: string, body: unknown, app?: Requestable): Promise<Reply> {
  const init = sending(body);
  const name = `${path} ${init.body}`;
  if (app !== undefined || !examples.has(name)) return ask(path, init, app);
  const answer = answered.get(name) ?? ask(path, init);
  answered.set(name, answer);
  const reply = await answer;
  return { ...reply, body: structuredClone(reply.body) };
}

/** A request that sends a value as JSON. */
export function sending(body: unknown, method = "POST", headers: Record<string, string> = {}): RequestInit {
  return {
    method,
    headers: { "content-type": "application/json", ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  };
}

/** Throws for an answer that the document does not declare, or that does not fit what it declares. */
export function checkDeclared(path: string, method: string, status: number, type: string, body: Body): void {
  // QUERY answers as POST does, and 3.1 cannot list it
  const listed = method === "QUERY" ? "post" : method.toLowerCase();
  const operation = document.paths[templateOf(path)]?.[listed];
  const declared = operation?.responses[status] ?? document.components.responses[`Problem${status}`];
  const known = operation ? Object.keys(operation.responses) : ["404", "405"];
  if (!known.includes(String(status))) throw new Error(`${method} ${path} answers ${status}, not declared`);
  const response = declared.$ref ? document.components.responses[declared.$ref.split("/").at(-1)] : declared;
  if (response.content === undefined) {
    if (body !== undefined) throw new Error(`${method} ${path} ${status} has a body that is not declared`);
    return;
  }
  const media = response.content[type];
  if (media === undefined)
    throw new Error(`${method} ${path} ${status} has content type ${type}, not declared`);
  const { valid, why } = verdict(media.schema, body);
  if (!valid) throw new Error(`${method} ${path} ${status} does not fit the document: ${why}`);
}

/** The path of the document that a requested one fits. */
function templateOf(requested: string): string {
  const [path = ""] = requested.split("?");
  const fits = (known: string): boolean => new RegExp(`^${known.replace(/\{\w+\}/g, "[^/]+")}$`).test(path);
  return path in document.paths ? path : (Object.keys(document.paths).find(fits) ?? path);
}

/** The first example of each operation, and all of them. */
export function examplesOf(path: string): Record<string, { readonly value: Body }> {
  return document.paths[path].post.requestBody.content["application/json"].examples;
}

/** The paths of the fields that a body must have. */
export function requiredOf(path: string): string[] {
  const { $ref } = document.paths[path].post.requestBody.content["application/json"].schema;
  const { required } = document.components.schemas[$ref.split("/").at(-1)];
  return required.map((field: string) => `/${field}`);
}

/** The first example, with the fewest samples where they are counted: many tests change it and compute it anew. */
export function exampleOf(path: string): Body {
  return { ...structuredClone(Object.values(examplesOf(path))[0]?.value), ...fewestOf(path) };
}

/** The fewest samples that a request may ask for, where they are counted. */
export function fewestOf(path: string): { readonly samples?: number } {
  const { $ref } = document.paths[path].post.requestBody.content["application/json"].schema;
  const { samples } = document.components.schemas[$ref.split("/").at(-1)].properties;
  return samples === undefined ? {} : { samples: samples.minimum };
}

/** What `post` computes once. */
const examples = new Set(
  operations.flatMap(({ path }) =>
    [exampleOf(path), ...Object.values(examplesOf(path)).map(({ value }) => value)].map(
      (value) => `${path} ${JSON.stringify(value)}`,
    ),
  ),
);
const answered = new Map<string, Promise<Reply>>();
