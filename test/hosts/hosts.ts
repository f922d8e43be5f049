/** The hosts, each started for real on a port of its own; Lambda is invoked as its runtime does. */

import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { resolve } from "node:path";
import { setTimeout as after } from "node:timers/promises";
import { pathToFileURL } from "node:url";
import { type Reply, type Request, replyOf } from "./exchange.js";
import { events, type LambdaHandler, replyOfLambda } from "./lambda.js";

export interface Host {
  readonly name: string;
  readonly start: (env?: Variables) => Promise<Running>;
  /** The command that serves it, where it is a process of its own. */
  readonly command?: Command;
}

/** Variables of the service. */
export type Variables = Readonly<Record<string, string>>;

/** Serves whoever has no key: what has no loopback does not start without. */
export const anyone: Variables = { ALLOW_ANONYMOUS: "1" };

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
  deno: () => [runtime("deno"), "run", "--allow-net", "--allow-env", `${apps}dist/deno.js`],
  bun: () => [runtime("bun"), `${apps}dist/bun.js`],
};

const served = (name: string, command: Command): Host => ({
  name,
  command,
  start: (env = anyone) => serve(command, env),
});

const invoked = Object.entries(events).map(([name, event]) => ({
  name: `Lambda, ${name}`,
  start: async (env: Variables = anyone): Promise<Running> => {
    const handler = await lambda(env);
    return { ask: async (request) => replyOfLambda(await handler(event(request))), stop: async () => {} };
  },
}));

/** The first answers as the others have to. */
export const hosts: readonly Host[] = [
  served("Node, the one at hand", commands.node),
  served("Node 24", commands.nodeLts),
  served("workerd", commands.workerd),
  served("Deno", commands.deno),
  served("Bun", commands.bun),
  ...invoked,
];

/** The handler as a function has it that starts with these variables. */
export async function lambda(env: Variables): Promise<LambdaHandler> {
  const before = { ...process.env };
  Object.assign(process.env, env);
  try {
    // a query makes it a module of its own
    return (await import(`${pathToFileURL(`${apps}dist/lambda.js`)}?${crypto.randomUUID()}`)).handler;
  } finally {
    process.env = before;
  }
}

async function serve(command: Command, env: Variables): Promise<Running> {
  const { base, process: served } = await started(command, env);
  return {
    ask: async ({ method, path, headers, body }) => {
      // not compressed, which weakens an ETag; a connection each: after a body too large Node's server closes the one it came by
      const sent = { method, headers: { "accept-encoding": "identity", ...headers, connection: "close" } };
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
export async function started(command: Command, env: Variables = {}): Promise<Started> {
  const port = await freePort();
  const [program = "", ...args] = command(port);
  // a group of its own: some of the commands start the runtime as a child
  const child = spawn(program, args, {
    detached: true,
    env: { ...process.env, ...env, PORT: String(port) },
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
