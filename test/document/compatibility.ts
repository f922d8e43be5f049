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

/** By sets, path by path: a request that is no longer accepted, an answer that was never announced. */
async function lostValues(released: OpenAPIObject, current: OpenAPIObject): Promise<readonly string[]> {
  const lost: string[] = [];
  for (const path of Object.keys(released.paths)) {
    const [before, after] = [compared(released, path), compared(current, path)];
    if (before === after) continue;
    const sourceSpec = { content: before, location: "released", format: "openapi3" as const };
    const destinationSpec = { content: after, location: "current", format: "openapi3" as const };
    const outcome = await diffSpecs({ sourceSpec, destinationSpec });
    if (!outcome.breakingDifferencesFound) continue;
    lost.push(...outcome.breakingDifferences.map(({ code }) => `${code} at ${path}`));
  }
  return lost;
}

/** One path with what it refers to, without words. Its answers may gain fields: a client reads those it knows. */
function compared(document: OpenAPIObject, path: string): string {
  const bare = (key: string, value: unknown): unknown => {
    if (key === "example" || key === "examples") return undefined;
    return ["description", "summary"].includes(key) && typeof value === "string" ? "" : value;
  };
  const { paths, components }: Json = JSON.parse(JSON.stringify(document, bare));
  const { schemas = {}, responses = {} } = components;
  const answers = Object.entries(schemas).map(([name, schema]) => [`${name}Answered`, openly(schema)]);
  const all = { schemas: { ...schemas, ...Object.fromEntries(answers) }, responses: openly(responses) };
  for (const operation of Object.values<Json>(paths[path] ?? {}))
    operation.responses = openly(operation.responses);
  const own = { [path]: paths[path] ?? {} };
  return JSON.stringify({
    openapi: "3.0.3",
    info: { title: "", version: "" },
    paths: own,
    components: within(own, all),
  });
}

/** The components that a value refers to, and those that they refer to. */
function within(value: Json, all: Json): Json {
  const used: Json = { schemas: {}, responses: {} };
  const visit = (text: string): void => {
    for (const [, kind = "", name = ""] of text.matchAll(/"#\/components\/(\w+)\/(\w+)"/g)) {
      if (used[kind][name] !== undefined) continue;
      used[kind][name] = all[kind][name];
      visit(JSON.stringify(used[kind][name]));
    }
  };
  visit(JSON.stringify(value));
  return used;
}

/** What an answer says, to readers who pass over what they do not know. */
function openly(value: Json): Json {
  const { additionalProperties: _, ...rest } = value;
  return JSON.parse(
    JSON.stringify(rest, (key, inner) => (key === "additionalProperties" ? undefined : inner)).replaceAll(
      /"(#\/components\/schemas\/\w+)"/g,
      '"$1Answered"',
    ),
  );
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
    writeFileSync(file, assignments(released));
    const program = ts.createProgram([file], {
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      types: [],
      module: ts.ModuleKind.Preserve,
    });
    const said = ts.getPreEmitDiagnostics(program);
    return said.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " ").slice(0, 600));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** One assignment for each body that the released document promises to read, and each that it promises to write. */
function assignments(released: OpenAPIObject): string {
  const lines = [
    'import type { paths as Current } from "./current";',
    'import type { paths as Released } from "./released";',
  ];
  const assign = (to: string, from: string, at: string): void => {
    lines.push(`export const _${lines.length}: ${to}${at} = {} as ${from}${at};`);
  };
  for (const [path, methods] of Object.entries<Json>(released.paths)) {
    for (const [method, { requestBody, responses }] of Object.entries<Json>(methods)) {
      const at = `["${path}"]["${method}"]`;
      for (const type of Object.keys(requestBody?.content ?? {})) {
        assign("Current", "Released", `${at}["requestBody"]["content"]["${type}"]`);
      }
      for (const type of Object.keys(responses["200"]?.content ?? {})) {
        assign("Released", "Current", `${at}["responses"]["200"]["content"]["${type}"]`);
      }
    }
  }
  return lines.join("\n");
}
