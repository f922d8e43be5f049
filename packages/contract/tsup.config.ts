import { readdirSync, readFileSync } from "node:fs";
import { defineConfig } from "tsup";

const core = new URL("../core/src/", import.meta.url);

const files = readdirSync(core, { recursive: true, encoding: "utf8" })
  .map((name) => name.replaceAll("\\", "/"))
  .filter((name) => /^[^.]+\.ts$/.test(name) && !name.startsWith("sources/"))
  .sort();

/** By key the files of the core whose code or comments cite it. */
const citations: Record<string, string[]> = {};
for (const file of files) {
  const cited = readFileSync(new URL(file, core), "utf8").match(/(?<=[["])[A-Z]\w+(?=["\]])/g);
  for (const key of new Set(cited)) citations[key] = [...(citations[key] ?? []), file];
}

export default defineConfig({
  entry: ["src/index.ts"],
  format: "esm",
  target: "es2022",
  platform: "neutral",
  define: { CITATIONS: JSON.stringify(citations) },
  dts: true,
  clean: true,
});
