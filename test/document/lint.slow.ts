/** Two linters of the trade find nothing to say about the document in either version, and something about a spoilt one. */

import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { openApiDocument, openApiDocument30 } from "@plumbdrift/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

interface Finding {
  readonly rule: string;
  readonly at: string;
}

const here = fileURLToPath(new URL(".", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "document-"));
const spoilt = {
  openapi: "3.1.0",
  info: { title: "Spoilt", version: "1" },
  paths: { "/a/": { get: { operationId: "a", responses: { "200": { $ref: "#/nowhere" } } } } },
};
const documents = {
  "sound31.json": openApiDocument(),
  "sound30.json": openApiDocument30(),
  "spoilt.json": spoilt,
};

/** What a linter writes about a document. It ends with 1 where it finds something. */
async function written(name: string, linter: string, ...options: readonly string[]): Promise<string> {
  const env = { ...process.env, REDOCLY_TELEMETRY: "off", NO_COLOR: "1" };
  const command = join(here, "node_modules/.bin", linter);
  const given = { env, cwd: here, maxBuffer: 1e8 };
  try {
    return (await promisify(execFile)(command, ["lint", ...options, join(folder, name)], given)).stdout;
  } catch (error) {
    const { code, stdout = "", stderr } = error as { code?: unknown; stdout?: string; stderr?: string };
    if (code === 1) return stdout;
    throw new Error(`${linter} ended with ${code}: ${stderr}`);
  }
}

async function spectral(name: string): Promise<readonly Finding[]> {
  const text = await written(name, "spectral", "--ruleset", "spectral.yaml", "--format", "json", "--quiet");
  const found: readonly { code: string; path: readonly string[] }[] = JSON.parse(text);
  return found.map(({ code, path }) => ({ rule: code, at: path.join(" ") }));
}

async function redocly(name: string): Promise<readonly Finding[]> {
  const text = await written(name, "redocly", "--config", "redocly.yaml", "--format", "json");
  const { problems }: { problems: readonly { ruleId: string; location: readonly { pointer: string }[] }[] } =
    JSON.parse(text);
  return problems.map(({ ruleId, location: [place] }) => ({ rule: ruleId, at: place?.pointer ?? "" }));
}

beforeAll(() => {
  for (const [name, document] of Object.entries(documents)) {
    writeFileSync(join(folder, name), JSON.stringify(document));
  }
});

afterAll(() => rmSync(folder, { recursive: true }));

describe.each([
  ["Spectral", spectral],
  ["Redocly", redocly],
])("%s", (_name, lint) => {
  test.each(["sound31.json", "sound30.json"])("has nothing to say about %s", async (name) => {
    expect(await lint(name)).toEqual([]);
  });

  test("sees what is wrong in another", async () => {
    expect((await lint("spoilt.json")).length).toBeGreaterThan(1);
  });
});
