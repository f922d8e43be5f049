/** Uses the built @plumbdrift/core the way its users do. */
import { execFileSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { expect, test } from "vitest";

const here = fileURLToPath(new URL(".", import.meta.url));
const core = fileURLToPath(new URL("../../packages/core", import.meta.url));
const rooms = readdirSync(`${core}/dist`).filter((name) => existsSync(`${core}/dist/${name}/index.js`));
const entries = ["@plumbdrift/core", ...rooms.map((room) => `@plumbdrift/core/${room}`)];

/** Gzipped bytes. Everything, rigs and rivers: a page loads it in a second and a quarter on a weak mobile signal (half a megabit a second),
 *  the names of the works that it cites among it, in full.
 *  Who asks only how fast the water runs must not pay for the rest. */
const ceilings = [
  { takes: "everything", source: 'export * from "@plumbdrift/core"', ceiling: 79_000 },
  { takes: "the water column", source: 'export { waterColumn } from "@plumbdrift/core"', ceiling: 7_000 },
];

const run = (file: string, ...args: string[]) => {
  try {
    return execFileSync(file, args, { cwd: here, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (error) {
    const { stdout, stderr } = error as { stdout: string; stderr: string };
    throw new Error(`${file} ${args.join(" ")}\n${stdout}${stderr}`);
  }
};
const keys = (type: "module" | "commonjs", source: string): string[] =>
  JSON.parse(run(process.execPath, `--input-type=${type}`, "-e", source)).sort();

test.each(entries)("%s exports the same names to import and to require", (entry) => {
  const imported = keys("module", `console.log(JSON.stringify(Object.keys(await import("${entry}"))))`);
  const required = keys("commonjs", `console.log(JSON.stringify(Object.keys(require("${entry}"))))`);
  expect(imported).not.toEqual([]);
  expect(required).toEqual(imported);
});

test("publint finds nothing", async () => {
  const { messages, pkg } = await publint({ pkgDir: core, strict: true });
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

// The profile leaves out Node 10, which reads no exports map and so no subpath; engines asks for 20.19.
test("types resolve from import, require and bundlers", { timeout: 60_000 }, () => {
  const subpaths = rooms.length > 0 ? ["--include-entrypoints", ...rooms] : [];
  run(`${here}node_modules/.bin/attw`, "--pack", core, "--profile", "node16", ...subpaths);
});

test("a user's program compiles against the built types", { timeout: 60_000 }, () => {
  run(`${here}node_modules/.bin/tsc`, "-p", "types");
});

test.each(ceilings)("a browser bundle of $takes is under its ceiling", async ({ source, ceiling }) => {
  const { outputFiles } = await build({
    stdin: { contents: source, resolveDir: here },
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    write: false,
  });
  const bytes = gzipSync(outputFiles[0]!.contents).length;
  expect(bytes).toBeGreaterThan(0);
  expect(bytes).toBeLessThan(ceiling);
});
