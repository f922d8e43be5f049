import { copyFileSync } from "node:fs";
import { createRequire } from "node:module";
import { defineConfig, type Options } from "tsup";
import {
  namedParts,
  noJsonSchema,
  oneLanguage,
  oneRouter,
  readApart,
  renderedOnce,
  toolByTool,
  undescribed,
} from "./build/lean.js";

/** Everything is bundled but what a runtime brings: what is deployed is one folder, with no node_modules beside it. */
const bundled: Options = {
  format: "esm",
  target: "es2022",
  noExternal: [/^(?!cloudflare:)/],
  external: [/^cloudflare:/],
  esbuildPlugins: [renderedOnce, oneLanguage],
};

/** What starts cold is short: it is read, and its schemas are made, before the first answer. */
const served: Options = {
  ...bundled,
  minify: true,
  esbuildPlugins: [readApart, oneLanguage, noJsonSchema, undescribed],
};

/** A host is given one file, and the document beside it. */
const oneFile: Options = {
  ...served,
  splitting: false,
  platform: "neutral",
  esbuildPlugins: [readApart, oneRouter, oneLanguage, noJsonSchema, toolByTool, undescribed],
};

/** The program of the reference page, which is one file as it comes. */
const rapidoc = createRequire(import.meta.url).resolve("rapidoc/dist/rapidoc-min.js");

const config: ReturnType<typeof defineConfig> = defineConfig([
  {
    ...bundled,
    entry: ["app", "engine", "service/service", "node/make-key", "demo"].map((name) => `src/${name}.ts`),
    clean: true,
    onSuccess: async () => copyFileSync(rapidoc, "dist/rapidoc.js"),
  },
  // whole by itself: a Worker is given it beside its script
  { ...bundled, entry: ["src/rendered.ts"], splitting: false },
  { ...served, entry: ["src/node.ts", "src/deno.ts", "src/bun.ts"] },
  { ...served, entry: ["src/tool-server.ts"], esbuildPlugins: [readApart, oneLanguage, undescribed] },
  { ...oneFile, entry: ["src/hosts/lambda.ts", "src/hosts/sqs.ts"] },
  // a Worker's size is limited: terser leaves less, in ten times the time
  {
    ...oneFile,
    entry: ["src/hosts/workerd.ts"],
    splitting: true,
    esbuildOptions: (options) => {
      options.chunkNames = "part-[name]-[hash]";
    },
    plugins: [namedParts],
    minify: "terser",
    terserOptions: { module: true, compress: { passes: 3, unsafe_arrows: true } },
  },
]);
export default config;
