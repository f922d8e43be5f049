import { mkdirSync, writeFileSync } from "node:fs";
import { openApiDocument, operations, problemCodes, problemKinds } from "@plumbdrift/contract";
import openapiTS, { astToString } from "openapi-typescript";
import { defineConfig } from "tsup";

/** What the contract says, as types and one table. Written before each build, so never committed. */
const generated = new URL("src/generated/", import.meta.url);
const { paths = {} } = openApiDocument();

const rows = operations
  .filter(({ path }) => paths[path]?.post !== undefined)
  .map(({ id, path }) => `  ${id}: "${path}",`);
const statuses = problemCodes.map((code) => `  "${code}": ${problemKinds[code].status};`);

const tables = [
  "/** Where each computation is posted. */",
  `export const operationPaths = {\n${rows.join("\n")}\n} as const;`,
  "",
  "/** The status that each problem has. */",
  `export interface ProblemStatuses {\n${statuses.join("\n")}\n}`,
  "",
];

mkdirSync(generated, { recursive: true });
// the two libraries have types of their own for one document
const source = JSON.stringify(openApiDocument());
writeFileSync(new URL("document.ts", generated), astToString(await openapiTS(source, { immutable: true })));
writeFileSync(new URL("tables.ts", generated), tables.join("\n"));

export default defineConfig({
  entry: ["src/index.ts"],
  format: "esm",
  target: "es2022",
  platform: "neutral",
  dts: true,
  clean: true,
});
