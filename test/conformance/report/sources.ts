/** docs/sources.md: every record of the core's sources, where the code cites it, and how it was seen. */
import { readdirSync, readFileSync } from "node:fs";
import { type Source, type SourceAccess, sources } from "@plumbdrift/core";
import { table } from "./text.js";

const seen: Readonly<Record<SourceAccess, string>> = {
  read: "read",
  "second-hand": "second-hand: in a work that quotes it",
  "from-memory": "from memory",
  "common-practice": "common practice, no source",
  assumption: "our assumption, no source",
};

export function sourcesPage(coreSources: URL): string {
  const files = filesOf(coreSources);
  const rows = Object.entries(sources).map(([key, source]) => [
    key,
    cited(source),
    files
      .filter(({ text }) => text.includes(`[${key}]`) || text.includes(`"${key}"`))
      .map(({ name }) => name)
      .join(", ") || "not cited",
    seen[source.access],
  ]);
  return [
    "# Sources",
    "",
    "Generated from `packages/core/src/sources`: do not edit, run `pnpm -C test/conformance run write`.",
    "Where: the files of `packages/core/src` whose code or comments cite the key.",
    "",
    table(["key", "authors, year, title", "where", "seen"], rows),
    "",
  ].join("\n");
}

function cited({ authors, year, title }: Source): string {
  return [authors === "-" ? null : authors, year, title].filter((part) => part !== null).join(", ");
}

function filesOf(root: URL): readonly { readonly name: string; readonly text: string }[] {
  return readdirSync(root, { recursive: true, encoding: "utf8" })
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => /^[^.]+\.ts$/.test(name) && !name.startsWith("sources/"))
    .sort()
    .map((name) => ({ name, text: readFileSync(new URL(name, root), "utf8") }));
}
