/** Slow bodies, over real sockets to the Node entry: some come whole in time, some never, and some clients go away. */

import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { checkDeclared, post } from "../api.js";
import { exchange, type Served, type Slowness, serve } from "../raw.js";
import type { Sent } from "./kinds.js";
import { targets } from "./run.js";

/** Connections open at once. */
const AT_ONCE = 20;

export type Way = "in time" | "never whole" | "gone halfway";

/** Asks every operation `each` times in a way. The statuses; 0 where nobody waited for one. */
export async function slowly(
  way: Way,
  asked: { readonly seed: number; readonly each: number },
): Promise<ReadonlyMap<number, number>> {
  // what is computed for others meanwhile counts as slowness too, so those in time have plenty of it
  const server = await serve({ PLUMBDRIFT_REQUEST_SECONDS: way === "never whole" ? "1" : "60" });
  const statuses = new Map<number, number>();
  try {
    const queue = bodies(asked);
    const client = async (): Promise<void> => {
      for (let sent = queue.pop(); sent !== undefined; sent = queue.pop()) {
        const status = await asking[way](server, sent);
        statuses.set(status, (statuses.get(status) ?? 0) + 1);
      }
    };
    await Promise.all(Array.from({ length: AT_ONCE }, client));
    const { ok } = await fetch(`http://127.0.0.1:${server.port}/healthz`);
    if (!ok) throw new Error("it does not answer any more");
    if (/"event":"failure"|"status":5/.test(server.log())) throw new Error(server.log());
  } finally {
    server.kill();
  }
  return statuses;
}

/** Bodies near the examples of every operation. */
function bodies({ seed, each }: { readonly seed: number; readonly each: number }): Sent[] {
  return [...targets.values()].flatMap((kinds) => {
    const near = kinds.find(({ name }) => name === "near an example");
    return near === undefined ? [] : fc.sample(near.requests, { seed, numRuns: each });
  });
}

const asking: Readonly<Record<Way, (server: Served, sent: Sent) => Promise<number>>> = {
  "in time": async (server, sent) => {
    const got = await answered(server, sent, { pause: 25 });
    const right = await post(sent.path, String(sent.init.body));
    const same = got.status === 200 ? isDeepStrictEqual(got.body, right.body) : true;
    if (got.status !== right.status || !same)
      throw new Error(`${sent.path} answers ${got.status} to a slow body`);
    return got.status;
  },
  "never whole": async (server, sent) => {
    const { status } = await answered(server, sent, { pause: 25 }, 0.5);
    if (status !== 408) throw new Error(`${sent.path} answers ${status} to half a body`);
    return status;
  },
  "gone halfway": async (server, sent) => {
    await exchange(server.port, piecesOf(sent, 0.5), { pause: 5, gone: true });
    return 0;
  },
};

async function answered(server: Served, sent: Sent, slowness: Slowness, share = 1) {
  const { status, headers, body } = await exchange(server.port, piecesOf(sent, share), slowness);
  const said = JSON.parse(body);
  checkDeclared(sent.path, "POST", status, headers.get("content-type") ?? "", said);
  return { status, body: said };
}

/** Head and body, cut into ten pieces, of which only a share is sent. */
function piecesOf({ path, init }: Sent, share: number): Buffer[] {
  const body = Buffer.from(String(init.body));
  const head = `POST ${path} HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`;
  const size = Math.ceil(body.length / 10);
  const pieces = Array.from({ length: 10 }, (_, i) => body.subarray(i * size, (i + 1) * size));
  return [Buffer.from(head), ...pieces.slice(0, 10 * share)];
}
