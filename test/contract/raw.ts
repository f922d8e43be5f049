/** The Node entry as a process of its own, and bytes to it over a real socket, as no well-behaved client sends them. */

import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { connect } from "node:net";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";

const entry = fileURLToPath(new URL("../../apps/api/dist/node.js", import.meta.url));

export function spawned(env: NodeJS.ProcessEnv): ChildProcess {
  return spawn(process.execPath, [entry], { env, stdio: ["ignore", "pipe", "pipe"] });
}

export interface Served {
  readonly port: number;
  /** What it has logged so far. */
  readonly log: () => string;
  readonly kill: () => void;
}

/** Starts it on a free port of loopback. */
export async function serve(env: NodeJS.ProcessEnv): Promise<Served> {
  const server = spawned({ PORT: "0", ...env });
  const [line] = await once(server.stdout!, "data");
  let log = "";
  server.stdout?.on("data", (text) => {
    log += text;
  });
  const port = Number(/localhost:(\d+)/.exec(String(line))?.[1]);
  return { port, log: () => log, kill: () => void server.kill("SIGKILL") };
}

export interface Raw {
  readonly status: number;
  readonly headers: Headers;
  readonly body: string;
}

export interface Slowness {
  /** Milliseconds between two pieces. */
  readonly pause?: number;
  /** Whether the client goes away once it has sent them. */
  readonly gone?: boolean;
}

/** Sends pieces, keeps the connection open as a slow client would, and reads until the server closes it. */
export async function exchange(
  port: number,
  pieces: readonly (string | Buffer)[],
  { pause: ms = 0, gone = false }: Slowness = {},
): Promise<Raw> {
  const socket = connect(port, "127.0.0.1");
  socket.on("error", () => {});
  const got: Buffer[] = [];
  socket.on("data", (bytes) => got.push(bytes));
  // `once` would reject at a reset, after which what came before is still to be read
  const closed = new Promise((resolve) => socket.on("close", resolve));
  for (const piece of pieces) {
    socket.write(typeof piece === "string" ? Buffer.from(piece, "latin1") : piece);
    if (ms > 0) await pause(ms);
  }
  if (gone) socket.resetAndDestroy();
  await closed;
  const [head = "", body = ""] = Buffer.concat(got).toString().split("\r\n\r\n", 2);
  const [first = "", ...lines] = head.split("\r\n");
  const headers = new Headers(
    lines.map((line) => [line.split(":")[0] ?? "", line.replace(/^[^:]*:\s*/, "")]),
  );
  return { status: Number(first.split(" ")[1]), headers, body };
}
