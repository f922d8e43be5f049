/** What a client of one document would lose by another. Two measures, since neither sees everything: sets of JSON values, and types. */

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { diffSpecs } from "openapi-diff";
import openapiTS, { astToString } from "openapi-typescript";
import type { OpenAPIObject } from "openapi3-ts/oas30";
import ts from "typescript";

/** A document as this file walks it. */
// biome-ignore lint/suspicious/noExplicitAny: it is JSON
type Json = any;

/** Whether a version may break what another promised: the first number that is not 0 has moved. */
export function mayBreak(released: string, current: string): boolean {
  const [major = "", minor = ""] = released.split(".");
  const [nowMajor = "", nowMinor = ""] = current.split(".");
  return major !== nowMajor || (major === "0" && minor !== nowMinor);
}

/** Everything that a client of `released` would lose by `current`, in words. */
export async function losses(released: OpenAPIObject, current: OpenAPIObject): Promise<readonly string[]> {
  return [...(await lostValues(released, current)), ...(await lostTypes(released, current))];
}

/** By sets: a request that is no longer accepted, an answer that was never announced. The sets of a whole body with its alternatives have no end,
 *  so piece by piece: each path with mere names for its schemas, and each schema with mere names for those below it. */
async function lostValues(released: OpenAPIObject, current: OpenAPIObject): Promise<readonly string[]> {
  const lost: string[] = [];
  const known = Object.keys(schemasOf(released)).filter((name) => name in schemasOf(current));
  const compare = async (what: string, piece: (document: OpenAPIObject) => Json): Promise<void> => {
    const before = bare(piece(released), released, known);
    const after = bare(piece(current), current, known);
    const [source, destination] = [specified(before, before), specified(after, before)];
    if (source === destination) return;
    const sourceSpec = { content: source, location: "released", format: "openapi3" as const };
    const destinationSpec = { content: destination, location: "current", format: "openapi3" as const };
    const outcome = await diffSpecs({ sourceSpec, destinationSpec });
    if (!outcome.breakingDifferencesFound) return;
    lost.push(...outcome.breakingDifferences.map(({ code }) => `${code} at ${what}`));
  };
  for (const path of Object.keys(released.paths)) {
    await compare(path, ({ paths }) => ({ [path]: paths[path] ?? {} }));
  }
  const { sent, answered } = used(released);
  for (const name of known) {
    if (sent.has(name)) await compare(`${name}, sent`, (document) => sending(schemasOf(document)[name]));
    if (answered.has(name)) {
      await compare(`${name}, answered`, (document) => answering(schemasOf(document)[name]));
    }
  }
  return lost;
}

function schemasOf({ components }: OpenAPIObject): Json {
  return components?.schemas ?? {};
}

function sending(schema: Json): Json {
  const requestBody = { required: true, content: { "application/json": { schema } } };
  return { "/": { post: { requestBody, responses: { "200": { description: "" } } } } };
}

function answering(schema: Json): Json {
  const answer = { description: "", content: { "application/json": { schema } } };
  return { "/": { post: { responses: { "200": answer } } } };
}

/** A value without words, each known schema in it a text of a length that no other has, and whatever else it refers to in its place. */
function bare(value: Json, document: OpenAPIObject, known: readonly string[]): Json {
  return JSON.parse(JSON.stringify(value), (key, inner) => {
    if (["example", "examples", "discriminator"].includes(key)) return undefined;
    if (["description", "summary"].includes(key) && typeof inner === "string") return "";
    const [, kind = "", name = ""] = reference.exec(inner?.$ref) ?? [];
    if (name === "") return inner;
    const length = kind === "schemas" ? known.indexOf(name) + 1 : 0;
    if (length > 0) return { type: "string", minLength: length, maxLength: length };
    return bare((document.components as Json)[kind][name], document, known);
  });
}

const reference = /#\/components\/(\w+)\/([\w-]+)/;

/** Paths as a document of their own, with what a client of `before` reads of an answer: the fields that it knows, and it passes over others. */
function specified(paths: Json, before: Json): string {
  const read = structuredClone(paths);
  for (const [path, methods] of Object.entries<Json>(read)) {
    for (const [method, operation] of Object.entries<Json>(methods)) {
      operation.responses = openly(operation.responses, before[path][method]?.responses);
    }
  }
  return JSON.stringify({ openapi: "3.0.3", info: { title: "", version: "" }, paths: read });
}

function openly(value: Json, before: Json, fields = false): Json {
  if (typeof value !== "object" || typeof before !== "object") return value;
  if (Array.isArray(value)) return value.map((item, i) => openly(item, before[i]));
  const kept = Object.entries<Json>(value).filter(([key]) =>
    fields ? key in before : key !== "additionalProperties",
  );
  return Object.fromEntries(
    kept.map(([key, inner]) => [key, openly(inner, before[key], !fields && key === "properties")]),
  );
}

/** The schemas that bodies of a document are sent and answered with, and those below them. */
function used({ paths, components }: OpenAPIObject): Readonly<Record<"sent" | "answered", Set<string>>> {
  const below = (value: Json, names = new Set<string>()): Set<string> => {
    for (const [text, kind = "", name = ""] of JSON.stringify(value).matchAll(new RegExp(reference, "g"))) {
      if (names.has(kind === "schemas" ? name : text)) continue;
      names.add(kind === "schemas" ? name : text);
      below((components as Json)[kind][name], names);
    }
    return names;
  };
  const operations = Object.values<Json>(paths).flatMap((methods) => Object.values<Json>(methods));
  const all = (part: string): Json => operations.map((operation) => operation[part] ?? {});
  return { sent: below(all("requestBody")), answered: below(all("responses")) };
}

/** By types: what a client compiled against the released document sends and reads must fit the current one. */
async function lostTypes(released: OpenAPIObject, current: OpenAPIObject): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), "compatibility-"));
  try {
    for (const [name, document] of Object.entries({ released, current })) {
      const types = await openapiTS(JSON.parse(JSON.stringify(document)));
      writeFileSync(join(folder, `${name}.d.ts`), astToString(types));
    }
    const file = join(folder, "check.ts");
    const places = assigned(released);
    writeFileSync(file, places.map(({ line }) => line).join("\n"));
    const program = ts.createProgram([file], {
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      types: [],
      lib: ["lib.es5.d.ts"],
      module: ts.ModuleKind.Preserve,
    });
    return ts.getPreEmitDiagnostics(program).map(({ file: where, start = 0, messageText }) => {
      const place = places[where?.getLineAndCharacterOfPosition(start).line ?? 0]?.place;
      return `${place}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`.slice(0, 600);
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

interface Assigned {
  readonly line: string;
  readonly place: string;
}

/** One assignment for whatever the released document promises to read, and for each answer that it promises to give. */
function assigned({ paths, components }: OpenAPIObject): readonly Assigned[] {
  const lines: Assigned[] = [
    { line: 'import type { paths as Current } from "./current";', place: "" },
    { line: 'import type { paths as Released } from "./released";', place: "" },
  ];
  const seen = new Set<string>();
  const assign = (to: string, from: string, place: string): void => {
    lines.push({ line: `export const _${lines.length}: ${to}${place} = {} as ${from}${place};`, place });
  };
  for (const [path, methods] of Object.entries<Json>(paths)) {
    for (const [method, { requestBody, responses }] of Object.entries<Json>(methods)) {
      const at = `["${path}"]["${method}"]`;
      assign("Current", "Released", `${at}["parameters"]`);
      for (const type of Object.keys(requestBody?.content ?? {})) {
        assign("Current", "Released", `${at}["requestBody"]["content"]["${type}"]`);
      }
      for (const [status, response] of Object.entries<Json>(responses)) {
        const answer = `${at}["responses"]["${status}"]`;
        const [, , name = ""] = reference.exec(response.$ref) ?? [];
        // a response that many paths share is compared once
        if (seen.has(name)) continue;
        if (name !== "") seen.add(name);
        assign("Released", "Current", `${answer}["headers"]`);
        for (const type of Object.keys((components?.responses?.[name] ?? response).content ?? {})) {
          assign("Released", "Current", `${answer}["content"]["${type}"]`);
        }
      }
    }
  }
  return lines;
}
