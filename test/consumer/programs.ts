/** The programs of a page: a block of ts, and below it the block of text that it prints. */

import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { transformSync } from "esbuild";

export interface Program {
  readonly source: string;
  readonly output: string;
}

export const here: string = fileURLToPath(new URL(".", import.meta.url));

/** A page by its path from the top of the tree. */
export function textOf(page: string): string {
  return readFileSync(new URL(`../../${page}`, import.meta.url), "utf8");
}

/** Every program of a page. Throws where a block of ts has no output right below it. */
export function programsOf(page: string): readonly Program[] {
  const text = textOf(page);
  const found = [...text.matchAll(/^```ts\n(.*?)^```\n\n```text\n(.*?)^```$/gms)];
  const blocks = [...text.matchAll(/^```ts$/gm)].length;
  if (found.length !== blocks) throw new Error(`${page}: ${blocks} programs, ${found.length} with an output`);
  return found.map(([, source = "", output = ""]) => ({ source, output }));
}

/** What a program prints, alone in its own process. */
export function printedBy({ source }: Program): string {
  const { code } = transformSync(source, { loader: "ts" });
  return execFileSync(process.execPath, ["--input-type=module", "-e", code], { cwd: here, encoding: "utf8" });
}
