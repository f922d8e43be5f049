/** The hosts, each started for real on a port of its own; Lambda is invoked as its runtime does. */

import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { resolve } from "node:path";
import { setTimeout as after } from "node:timers/promises";
import { type Reply, type Request, replyOf } from "./exchange.js";
import { events, type LambdaHandler, replyOfLambda } from "./lambda.js";

export interface Host {
  readonly name: string;
  readonly start: () => Promise<Running>;
}

export interface Running {
  readonly ask: (request: Request) => Promise<Reply>;
  readonly stop: () => Promise<void>;
}

// from the folder of this package, where its scripts run: the measurements are bundled elsewhere
const apps = `${resolve("../../apps/api")}/`;
const runtime = (name: string): string => resolve(`../runtimes/node_modules/.bin/${name}`);

/** The command that serves the API from a port. */
export type Command = (port: number) => readonly string[];

export const commands: Readonly<Record<"node" | "nodeLts" | "workerd" | "deno" | "bun", Command>> = {
  node: () => [process.execPath, `${apps}dist/node.js`],
  nodeLts: () => [runtime("node"), `${apps}dist/node.js`],
  workerd: (port) => [
    runtime("workerd"),
    "serve",
    `${apps}deploy/workerd.capnp`,
    `--socket-addr=http=127.0.0.1:${port}`,
  ],
  deno: (port) => [runtime("deno"), "serve", "--host=127.0.0.1", `--port=${port}`, `${apps}dist/fetch.js`],
  bun: () => [runtime("bun"), `${apps}dist/fetch.js`],
};

/** The first answers as the others have to. */
export const hosts: readonly Host[] = [
  { name: "Node, the one at hand", start: () => serve(commands.node) },
  { name: "Node 24", start: () => serve(commands.nodeLts) },
  { name: "workerd", start: () => serve(commands.workerd) },
  { name: "Deno", start: () => serve(commands.deno) },
  { name: "Bun", start: () => serve(commands.bun) },
  ...Object.entries(events).map(([name, event]) => ({
    name: `Lambda, ${name}`,
    start: async (): Promise<Running> => {
      const { handler }: { handler: LambdaHandler } = await import(`${apps}dist/lambda.js`);
      return { ask: async (request) => replyOfLambda(await handler(event(request))), stop: async () => {} };
    },
  })),
];

async function serve(command: Command): Promise<Running> {
  const { base, process: served } = await started(command);
  return {
    ask: async ({ method, path, headers, body }) => {
      // not compressed, which weakens an ETag; a connection each: after a body too large Node's server closes the one it came by
      const sent = { method, headers: { ...headers, connection: "close", "accept-encoding": "identity" } };
      const response = await fetch(base + path, body === undefined ? sent : { ...sent, body });
      return replyOf(response.status, response.headers, await response.text());
    },
    stop: () => stopped(served),
  };
}

export interface Started {
  readonly base: string;
  readonly process: ChildProcess;
}

/** Starts a command and waits until it answers. */
export async function started(command: Command): Promise<Started> {
  const port = await freePort();
  const [program = "", ...args] = command(port);
  // a group of its own: some of the commands start the runtime as a child
  const child = spawn(program, args, {
    detached: true,
    env: { ...process.env, PORT: String(port) },
    stdio: ["ignore", "ignore", "pipe"],
  });
  let said = "";
  child.stderr?.on("data", (text) => (said += text));
  const base = `http://127.0.0.1:${port}`;
  for (let tries = 0; tries < 1000 && child.exitCode === null; tries++) {
    const up = await fetch(`${base}/healthz`).then(
      ({ ok }) => ok,
      () => false,
    );
    if (up) return { base, process: child };
    await after(10);
  }
  await stopped(child);
  throw new Error(`${program} does not answer: ${said}`);
}

/** Ends a process and its children. */
export async function stopped(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.pid === undefined) return;
  const gone = once(child, "exit");
  process.kill(-child.pid, "SIGKILL");
  await gone;
}

export async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  await once(server, "close");
  return typeof address === "object" && address !== null ? address.port : 0;
}
