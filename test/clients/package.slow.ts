/** The packed client as its users meet it. */

import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { expect, test } from "vitest";

const here = fileURLToPath(new URL(".", import.meta.url));
const client = fileURLToPath(new URL("../../packages/client", import.meta.url));

const run = (name: string, ...args: readonly string[]): void => {
  try {
    execFileSync(`${here}node_modules/.bin/${name}`, args, { cwd: here, encoding: "utf8", stdio: "pipe" });
  } catch (error) {
    const { stdout, stderr } = error as { stdout: string; stderr: string };
    throw new Error(`${name} ${args.join(" ")}\n${stdout}${stderr}`);
  }
};

test("publint finds nothing", async () => {
  const { messages, pkg } = await publint({ pkgDir: client, strict: true });
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

// The client is ESM alone: engines asks for a Node that can require it.
test("types resolve from import and bundlers", { timeout: 120_000 }, () => {
  expect(() => run("attw", "--pack", client, "--profile", "esm-only")).not.toThrow();
});

test("a user's program compiles against the built types, and a wrong one does not", {
  timeout: 120_000,
}, () => {
  expect(() => run("tsc", "-p", "types")).not.toThrow();
});

// A page on a weak mobile signal should not notice it: a tenth of a second at half a megabit a second.
test("a browser bundle of everything is under its ceiling of 6 kB gzipped", async () => {
  const { outputFiles } = await build({
    stdin: { contents: 'export * from "@plumbdrift/client"', resolveDir: here },
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    write: false,
  });
  const bytes = gzipSync(outputFiles[0]!.contents).length;
  expect(bytes).toBeGreaterThan(500);
  expect(bytes).toBeLessThan(6_000);
});
