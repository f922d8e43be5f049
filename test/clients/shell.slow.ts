/** The shell lines of docs/api.md, run as they stand against a server. */

import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { program } from "./debian.js";
import { type Running, started } from "./server.js";

const text = readFileSync(new URL("../../docs/api.md", import.meta.url), "utf8");
const blocks = [...text.matchAll(/^```sh\n(.*?)^```$(?:\n\n```text\n(.*?)^```$)?/gms)]
  .map(([, source = "", output]) => ({ source, output, first: source.slice(0, 60) }))
  .filter(({ source }) => source.includes("curl"));

let server: Running;

beforeAll(async () => {
  program("curl");
  server = await started();
}, 120_000);
afterAll(() => server.stop());

test("there is one for each operation and more", () => {
  expect(blocks.length).toBeGreaterThan(20);
});

test.each(blocks)("$first", async ({ source, output }) => {
  const script = source.replaceAll("localhost:8787", new URL(server.base).host);
  const { stdout } = await promisify(execFile)("/bin/bash", ["-euo", "pipefail", "-c", script]);
  if (output !== undefined) return expect(stdout).toBe(output);
  // the answer, its head where that is shown, or the first line of a stream; never a problem as a whole
  expect(stdout).toMatch(/^(\{"|HTTP\/1\.1 304 )/);
  expect(stdout).not.toMatch(/^\{"type":"\/v1\/problems/);
});
