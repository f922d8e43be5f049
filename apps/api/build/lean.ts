/** What a bundle leaves out: only what nothing reads at run time. The suite of the hosts holds the answers to those of the whole. */

import { readFile, rename, writeFile } from "node:fs/promises";
import { join, parse as parsePath } from "node:path";
import type { Options } from "tsup";
import * as rendered from "../src/rendered.js";
import { direct, readLater, sourceOf } from "./direct.js";
import { shortened } from "./shortened.js";

type Plugin = NonNullable<Options["esbuildPlugins"]>[number];

/** Texts that are made from the contract are made once, here. */
export const renderedOnce: Plugin = {
  name: "rendered once",
  setup({ onLoad }) {
    const constants = Object.entries(rendered).map(
      ([name, text]) => `export const ${name} = ${JSON.stringify(text)};`,
    );
    onLoad({ filter: /src[\\/]rendered\.ts$/ }, () => ({ contents: constants.join("\n") }));
  },
};

/** What is read only when it is asked for stays in files of its own. */
export const readApart: Plugin = {
  name: "read apart",
  setup({ onResolve }) {
    onResolve({ filter: readLater }, ({ path }) => ({ path, external: true }));
  },
};

/** zod words its messages in every language; ours are worded by the contract. */
export const oneLanguage: Plugin = {
  name: "one language",
  setup({ onLoad }) {
    const contents = 'export { default as en } from "./en.js"';
    onLoad({ filter: /zod[\\/]v4[\\/]locales[\\/]index\.js$/ }, () => ({ contents }));
  },
};

/** Methods of schemas that the contract calls nowhere, each with a class behind it. */
const uncalled = (
  "refine superRefine overwrite exactOptional nullable nullish nonoptional and prefault catch readonly " +
  "encode decode encodeAsync decodeAsync safeEncode safeDecode safeEncodeAsync safeDecodeAsync"
).split(" ");

/** As a namespace of its own, zod's own tools are kept one by one. Of the formats that a string may have, the contract names none. */
export const toolByTool: Plugin = {
  name: "tool by tool",
  setup({ onLoad }) {
    onLoad({ filter: /zod[\\/]v4[\\/]classic[\\/]schemas\.js$/ }, async ({ path }) => {
      const [all, own] = [
        'import { util } from "../core/index.js"',
        'import * as util from "../core/util.js"',
      ];
      const formats = /(const ZodString = [\s\S]*?\n\}, )\{[\s\S]*?\n\}\);/;
      const unused = new RegExp(
        `^ {4}(?:async )?(?:${uncalled.join("|")})\\b.*\\{\\n(?: {5,}.*\\n)*? {4}\\},\\n`,
        "gm",
      );
      const contents = (await readFile(path, "utf8")).replace(all, own).replace(formats, "$1{});");
      return { contents: contents.replace(unused, "") };
    });
  },
};

/** One router suffices for some dozens of paths. */
export const oneRouter: Plugin = {
  name: "one router",
  setup({ onResolve, resolve }) {
    onResolve({ filter: /^hono$/ }, ({ kind, resolveDir }) => resolve("hono/tiny", { kind, resolveDir }));
  },
};

/** zod schemas can describe themselves as JSON Schema, which no host asks them to. */
export const noJsonSchema: Plugin = {
  name: "no JSON Schema",
  setup({ onLoad }) {
    const filter = /zod[\\/]v4[\\/]core[\\/](to-json-schema|json-schema-processors)\.js$/;
    onLoad({ filter }, async ({ path }) => {
      const names = (await readFile(path, "utf8")).matchAll(/^export (?:const|function) (\w+)/gm);
      return { contents: [...names].map(([, name]) => `export const ${name} = undefined;`).join("\n") };
    });
  },
};

/** Descriptions are read by the document alone: without them the contract needs plain zod, and of that what it calls. It and
 *  the core are taken file by file, from their sources, so that what a group of operations alone needs is loaded with it. */
export const undescribed: Plugin = {
  name: "undescribed",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^@hono\/zod-openapi$/ }, ({ path }) => ({
      path,
      external: true,
      sideEffects: false,
    }));
    onResolve({ filter: /^@plumbdrift\// }, ({ path }) => ({ path: sourceOf(path), sideEffects: false }));
    onLoad({ filter: /[\\/](contract|core)[\\/]src[\\/].+\.ts$/ }, async ({ path }) => ({
      contents: shortened(direct(await readFile(path, "utf8"), path)),
      loader: "ts",
    }));
    onLoad({ filter: /[\\/]api[\\/]src[\\/].+\.ts$/ }, async ({ path }) => ({
      contents: direct(await readFile(path, "utf8"), path),
      loader: "ts",
    }));
  },
};

/** A deployment lists the files of a Worker: they keep their names from build to build. Shared parts are numbered, the largest first. */
export const namedParts: NonNullable<Options["plugins"]>[number] = {
  name: "named parts",
  async buildEnd({ writtenFiles }) {
    const parts = [...writtenFiles]
      .map(({ name }) => ({ path: name, ...parsePath(name) }))
      .filter(({ base }) => base.startsWith("part-"));
    const texts = new Map<string, string>();
    for (const { name } of writtenFiles) texts.set(name, await readFile(name, "utf8"));
    const size = ({ path }: { readonly path: string }): number => texts.get(path)?.length ?? 0;
    const shared = parts
      .filter(({ base }) => base.startsWith("part-chunk-"))
      .sort((a, b) => size(b) - size(a));
    const nameOf = (part: (typeof parts)[number]): string =>
      shared.includes(part) ? `part-${shared.indexOf(part) + 1}.js` : part.base.replace(/-[^-]*$/, ".js");
    const names = parts.map((part) => [part.base, nameOf(part)] as const);
    for (const [path, text] of texts) {
      const { dir, base } = parsePath(path);
      const name = names.find(([before]) => before === base)?.[1];
      await writeFile(
        path,
        names.reduce((said, [before, after]) => said.replaceAll(before, after), text),
      );
      if (name !== undefined) await rename(path, join(dir, name));
    }
  },
};
