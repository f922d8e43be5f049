/** The Node entry stopped and killed under load, over real sockets. What a client was answered is compared with what the same question gets at rest. */

import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { Agent, request } from "node:http";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, test, vi } from "vitest";
import { exampleOf } from "./api.js";

const entry = fileURLToPath(new URL("../../apps/api/dist/node.js", import.meta.url));
vi.setConfig({ testTimeout: 60_000 }); // processes start slowly on a busy machine
const path = "/v1/drifts/settled";
const question = JSON.stringify(exampleOf(path));

interface Server {
  readonly process: ChildProcess;
  readonly port: number;
  /** Ids of the requests that the server says it answered. */
  readonly answered: Set<string>;
}

const running: ChildProcess[] = [];
afterEach(() => {
  for (const child of running.splice(0)) child.kill("SIGKILL");
});

async function start(port = 0): Promise<Server> {
  const child = spawn(process.execPath, [entry], {
    env: { PORT: String(port) },
    stdio: ["ignore", "pipe", "inherit"],
  });
  running.push(child);
  const answered = new Set<string>();
  const lines = createInterface({ input: child.stdout! });
  const [first] = await once(lines, "line");
  lines.on("line", (line) => answered.add(JSON.parse(line).id));
  return { process: child, port: Number(/:(\d+)$/.exec(first)?.[1]), answered };
}

interface Outcome {
  readonly id: string;
  readonly status?: number;
  readonly body?: string;
  /** Code of the error of the connection. */
  readonly error?: string;
}

/** Asks once. An answer counts when it came whole. */
function ask(port: number, agent: Agent): Promise<Outcome> {
  const id = crypto.randomUUID();
  return new Promise((resolve) => {
    const failed = ({ code = "cut off" }: NodeJS.ErrnoException) => resolve({ id, error: code });
    const headers = { "content-type": "application/json", "x-request-id": id };
    const sent = request({ port, host: "127.0.0.1", path, method: "POST", agent, headers }, (response) => {
      let body = "";
      response.setEncoding("utf8");
      response.on("data", (text) => {
        body += text;
      });
      response.on("error", failed);
      response.on("end", () => resolve({ id, status: response.statusCode ?? 0, body }));
    });
    sent.on("error", failed);
    sent.end(question);
  });
}

/** Sixteen clients that ask on end over connections they keep, until the server takes no more. */
async function load(port: number, at: () => void): Promise<readonly Outcome[]> {
  const agent = new Agent({ keepAlive: true, maxSockets: 16 });
  const outcomes: Outcome[] = [];
  const client = async () => {
    for (;;) {
      const outcome = await ask(port, agent);
      outcomes.push(outcome);
      if (outcomes.length === 100) at();
      if (outcome.error !== undefined || outcomes.length > 20_000) return;
    }
  };
  await Promise.all(Array.from({ length: 16 }, client));
  agent.destroy();
  return outcomes;
}

async function answerAtRest(port: number): Promise<string> {
  const agent = new Agent();
  const { body = "" } = await ask(port, agent);
  expect(JSON.parse(body).settled.regime).toBe("hanging");
  return body;
}

describe("under load", () => {
  test("SIGTERM: what was taken is answered whole, the rest is refused, and the exit is clean", async () => {
    const server = await start();
    const right = await answerAtRest(server.port);
    const exit = once(server.process, "exit");
    const outcomes = await load(server.port, () => server.process.kill("SIGTERM"));
    expect(await exit).toEqual([0, null]);
    const whole = outcomes.filter(({ error }) => error === undefined);
    const lost = outcomes.filter(({ error }) => error !== undefined);
    expect(whole.length).toBeGreaterThan(100);
    expect(new Set(whole.map(({ status }) => status))).toEqual(new Set([200]));
    expect(new Set(whole.map(({ body }) => body))).toEqual(new Set([right]));
    // no request that the server worked on is among those that got no answer
    expect(lost.filter(({ id }) => server.answered.has(id))).toEqual([]);
    expect(new Set(lost.map(({ error }) => error))).toEqual(new Set(["ECONNREFUSED"]));
  });

  test("SIGKILL: an answer is whole and right, or there is none; and the port can be taken again", async () => {
    const server = await start();
    const right = await answerAtRest(server.port);
    const exit = once(server.process, "exit");
    const outcomes = await load(server.port, () => server.process.kill("SIGKILL"));
    expect(await exit).toEqual([null, "SIGKILL"]);
    const whole = outcomes.filter(({ error }) => error === undefined);
    expect(whole.length).toBeGreaterThan(80);
    expect(new Set(whole.map(({ status }) => status))).toEqual(new Set([200]));
    expect(new Set(whole.map(({ body }) => body))).toEqual(new Set([right]));
    for (const { error } of outcomes)
      expect([undefined, "ECONNRESET", "ECONNREFUSED", "cut off"]).toContain(error);
    const again = await start(server.port);
    expect(again.port).toBe(server.port);
    expect(await answerAtRest(again.port)).toBe(right);
  });
});

test("connections that rest do not hold up a stop", async () => {
  const server = await start();
  const agent = new Agent({ keepAlive: true });
  expect((await ask(server.port, agent)).status).toBe(200);
  const began = Date.now();
  const exit = once(server.process, "exit");
  server.process.kill("SIGTERM");
  expect(await exit).toEqual([0, null]);
  expect(Date.now() - began).toBeLessThan(4_000); // Node itself keeps them for five seconds
  agent.destroy();
});
