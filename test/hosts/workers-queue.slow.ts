/** The consumer of a Workers queue, run in miniflare from the deployment file: real queues, real retries. */

import { readFileSync } from "node:fs";
import { setTimeout as after } from "node:timers/promises";
import { settleRig } from "@plumbdrift/contract";
import { Miniflare } from "miniflare";
import { afterAll, beforeAll, expect, test } from "vitest";
import { deployed, wrangler } from "./deployment.js";

/** Takes what is delivered off the queue of results, and what was given up off that of failures; refuses "b" twice, and "c" always. */
const collector = `
const delivered = [], dead = [];
export default {
  async queue({ queue, messages }) {
    for (const { body } of messages) (queue.endsWith("failed") ? dead : delivered).push(body);
  },
  async fetch() { return Response.json({ delivered, dead }); },
};`;

/** Stands between the consumer and its queue of results, and fails as a queue may. */
const broker = `
import { WorkerEntrypoint } from "cloudflare:workers";
const refused = {};
export default class extends WorkerEntrypoint {
  async send(outcome) {
    refused[outcome.id] = (refused[outcome.id] ?? 0) + 1;
    if (outcome.id === "c" || (outcome.id === "b" && refused.b < 3)) throw new Error("the queue of results is away");
    await this.env.RESULTS.send(outcome);
  }
}`;

const { script, apart, compatibilityDate, work, results, failed, retries } = deployed(wrangler);
const body = Object.values(settleRig.examples)[0]?.value;
let workers: Miniflare;

beforeAll(() => {
  workers = new Miniflare({
    workers: [
      {
        name: "sender",
        modules: true,
        script: "export default { fetch: () => new Response() }",
        queueProducers: { WORK: work },
      },
      {
        name: "api",
        compatibilityDate,
        modules: [
          { type: "ESModule", path: "workerd.js", contents: readFileSync(script, "utf8") },
          ...Object.entries(apart).map(([path, file]) => ({
            type: "ESModule" as const,
            path,
            contents: readFileSync(file, "utf8"),
          })),
        ],
        bindings: { ALLOW_ANONYMOUS: "1" },
        serviceBindings: { RESULTS: "broker" },
        queueConsumers: {
          [work]: {
            maxBatchSize: 10,
            maxBatchTimeout: 0,
            maxRetries: retries,
            deadLetterQueue: failed,
            retryDelay: 0,
          },
        },
      },
      {
        name: "broker",
        compatibilityDate,
        modules: true,
        script: broker,
        queueProducers: { RESULTS: results },
      },
      {
        name: "collector",
        modules: true,
        script: collector,
        queueConsumers: { [results]: { maxBatchTimeout: 0 }, [failed]: { maxBatchTimeout: 0 } },
      },
    ],
  });
});

afterAll(() => workers?.dispose());

/** The types of a Worker come with the runtime's own types, which are not installed. */
async function workerNamed(name: string): Promise<{ readonly fetch: typeof fetch }> {
  return (await workers.getWorker(name)) as unknown as { readonly fetch: typeof fetch };
}

interface Collected {
  readonly delivered: readonly { id: string; status: number; body: object }[];
  readonly dead: readonly { id?: string }[];
}

test("answers are delivered, mistakes too, what fails comes again and is given up in the end", async () => {
  const { WORK } = await workers.getBindings<{ WORK: { send: (message: unknown) => Promise<void> } }>(
    "sender",
  );
  for (const id of ["a", "b", "c"]) await WORK.send({ id, operation: "settleRig", body });
  await WORK.send({ id: "d", operation: "settleRig", body: {} });
  await WORK.send("no message");
  const collector = await workerNamed("collector");
  let seen: Collected = { delivered: [], dead: [] };
  for (let tries = 0; tries < 200 && (seen.delivered.length < 4 || seen.dead.length < 1); tries++) {
    await after(200);
    seen = (await (await collector.fetch("http://collector/")).json()) as Collected;
  }
  const status = new Map(seen.delivered.map((outcome) => [outcome.id, outcome.status]));
  expect(seen.delivered.length).toBe(4);
  expect([status.get("a"), status.get("b"), status.get("d")]).toEqual([200, 200, 400]);
  expect(status.has("c")).toBe(false);
  expect(seen.dead.map(({ id }) => id)).toEqual(["c"]);
  const unnamed = seen.delivered.find(({ id }) => !["a", "b", "d"].includes(id));
  expect(unnamed).toMatchObject({ status: 400, body: { code: "invalid-request" } });
});

test("the same Worker serves the API", async () => {
  const api = await workerNamed("api");
  const response = await api.fetch(`http://api${settleRig.path}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  expect(response.status).toBe(200);
  expect(await response.json()).toHaveProperty("settled");
});
