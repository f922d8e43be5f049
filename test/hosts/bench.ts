/** What the measurements share: the bare apps, built to answer as many bytes as the API, and the page the results go to. */

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { resolve } from "node:path";
import type { Described } from "@plumbdrift/contract";
import { build } from "esbuild";
import { commands, started, stopped } from "./hosts.js";

const folder = `${resolve(".bench")}/`;
const page = resolve("../../docs/benchmarks-http.md");

/** The body that is sent to an operation: its first example. */
export function bodyOf({ examples }: Described): string {
  return JSON.stringify(Object.values(examples)[0]?.value);
}

/** Builds the bare apps and the configuration of workerd; answers the commands that serve them. */
export async function bareCommands(operation: Described): Promise<Pick<typeof commands, "node" | "workerd">> {
  const { base, process: api } = await started(commands.node);
  const response = await post(base, operation);
  const answer = await response.text();
  const own = ["connection", "content-length", "date", "keep-alive"];
  const headers = Object.fromEntries([...response.headers].filter(([name]) => !own.includes(name)));
  await stopped(api);
  const out = `${folder}${operation.id}/`;
  await build({
    entryPoints: ["bare.ts", "bare-node.ts"],
    outdir: out,
    bundle: true,
    format: "esm",
    platform: "node",
    minify: true,
    define: {
      BARE_BODY: JSON.stringify("x".repeat(answer.length)),
      BARE_HEADERS: JSON.stringify(headers),
    },
  });
  const config = readFileSync(resolve("../../apps/api/deploy/workerd.capnp"), "utf8");
  const modules = /modules = \[[^\]]*\]/;
  const one = 'modules = [(name = "bare.js", esModule = embed "bare.js")]';
  writeFileSync(`${out}workerd.capnp`, config.replace(modules, one));
  return {
    node: () => [process.execPath, `${out}bare-node.js`],
    workerd: (port) =>
      commands.workerd(port).map((word) => (word.endsWith(".capnp") ? `${out}workerd.capnp` : word)),
  };
}

export function post(base: string, operation: Described): Promise<Response> {
  const headers = { "content-type": "application/json" };
  return fetch(base + operation.path, { method: "POST", headers, body: bodyOf(operation) });
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Puts a section into the page, in place of the one with its title. */
export function report(title: string, lines: readonly string[]): void {
  const machine = `Machine: ${cpus()[0]?.model ?? "unknown"}, ${cpus().length} cores, Node ${process.versions.node}.`;
  const text = [`## ${title}`, "", machine, "", ...lines].join("\n");
  console.log(text);
  if (!process.argv.includes("--write")) return;
  const head = "# Benchmarks over HTTP\n\nMade by the commands below; nothing here is a test.";
  const before = existsSync(page) ? readFileSync(page, "utf8") : head;
  const [intro = head, ...sections] = before.trimEnd().split(/\n\n(?=## )/);
  const others = sections.filter((section) => !section.startsWith(`## ${title}\n`));
  writeFileSync(page, `${[intro, ...[...others, text].sort()].join("\n\n")}\n`);
}
