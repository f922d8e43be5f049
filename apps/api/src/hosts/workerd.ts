/** For Workers: the service, as the variables of the Worker say, and the consumer of a queue whose outcomes go to the queue bound as RESULTS. */

import { env } from "cloudflare:workers";
import type { Hono } from "hono";
import { createService } from "../service/service.js";
import { publicConfig } from "../service/start.js";
import { answerMessage } from "./message.js";

/** What is used of a queue, a message and a batch, as the Workers runtime documents them. */
interface Env {
  readonly RESULTS?: { readonly send: (body: unknown) => Promise<unknown> };
}

interface Message {
  readonly id: string;
  readonly body: unknown;
  readonly ack: () => void;
  readonly retry: () => void;
}

/** Acknowledges each message whose outcome is delivered; only the others come again. */
async function queue(
  { messages }: { readonly messages: readonly Message[] },
  { RESULTS }: Env,
): Promise<void> {
  if (RESULTS === undefined) throw new Error("RESULTS must be bound to the queue that results go to");
  for (const message of messages) {
    try {
      await RESULTS.send(await answerMessage(message.body, message.id));
      message.ack();
    } catch (error) {
      console.error(message.id, error);
      message.retry();
    }
  }
}

const variables = Object.entries(env).filter((one): one is [string, string] => typeof one[1] === "string");
// the edge compresses: a body that says it is would be compressed again
const config = { ...publicConfig(Object.fromEntries(variables)), compress: false };
const service: Hono = createService(config, { address: (c) => c.req.header("cf-connecting-ip") ?? "" });

const host: Pick<Hono, "fetch"> & { queue: typeof queue } = { fetch: service.fetch, queue };
// biome-ignore lint/style/noDefaultExport: what the runtime looks for
export default host;
