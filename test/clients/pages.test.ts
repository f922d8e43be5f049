/** The pages about the client say what happens: their programs compile, run against a server and print what they show. */

import { execFile, execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { transformSync } from "esbuild";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Running, started } from "./server.js";

const here = fileURLToPath(new URL(".", import.meta.url));
const text = ["client", "walkthrough-season"]
  .map((page) => readFileSync(new URL(`../../docs/${page}.md`, import.meta.url), "utf8"))
  .join("\n");
const programs = [...text.matchAll(/^```ts\n(.*?)^```\n\n```text\n(.*?)^```$/gms)].map(
  ([, source = "", output = ""], i) => ({ number: i + 1, source, output }),
);

let server: Running;

beforeAll(async () => {
  server = await started();
});
afterAll(() => server.stop());

test("every program shows what it prints", () => {
  expect(programs).toHaveLength([...text.matchAll(/^```ts$/gm)].length);
  expect(programs.length).toBeGreaterThanOrEqual(3);
});

test.each(programs)("program $number prints what it shows", async ({ source, output }) => {
  const { code } = transformSync(source.replaceAll("http://localhost:8787", server.base), { loader: "ts" });
  const run = promisify(execFile);
  const { stdout } = await run(process.execPath, ["--input-type=module", "-e", code], { cwd: here });
  expect(stdout).toBe(output);
});

test("a user's compiler takes them all", () => {
  const folder = `${here}.reports/programs`;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const { number, source } of programs) writeFileSync(`${folder}/program-${number}.mts`, source);
  const compilerOptions = { lib: ["ES2023", "DOM", "DOM.Iterable"], types: ["node"] };
  writeFileSync(
    `${folder}/tsconfig.json`,
    JSON.stringify({ extends: "../../../../.tsconfig.json", compilerOptions, include: ["*.mts"] }),
  );
  const compile = () => execFileSync(`${here}node_modules/.bin/tsc`, ["-p", folder], { cwd: here });
  expect(compile).not.toThrow();
}, 60_000);
