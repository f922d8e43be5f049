/** The Node entry as it is started, on a port of its choice. */

import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";

const entry = fileURLToPath(new URL("../../apps/api/dist/node.js", import.meta.url));

export interface Running {
  readonly base: string;
  readonly stop: () => Promise<unknown>;
}

export async function started(): Promise<Running> {
  const server: ChildProcess = spawn(process.execPath, [entry], {
    env: { PORT: "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const gone = once(server, "exit");
  const address = new Promise<string>((resolve, reject) => {
    let said = "";
    server.stdout!.on("data", (piece) => {
      said += piece;
      const port = /http:\/\/\S+?:(\d+)/.exec(said)?.[1];
      if (port !== undefined) resolve(`http://localhost:${port}`);
    });
    gone.then(() => reject(new Error(`the server ended before it listened: ${said}`)), reject);
  });
  const stop = (): Promise<unknown> => {
    server.kill("SIGTERM");
    return gone;
  };
  return { base: await address, stop };
}
