/** Stopped while it works: a graceful stop loses no accepted request; a kill gives connection errors, never a wrong answer. */

import { once } from "node:events";
import { request } from "node:http";
import { settleRig } from "@plumbdrift/contract";
import { afterEach, beforeEach, expect, test } from "vitest";
import { bodyOf } from "./bench.js";
import { commands, type Started, started, stopped } from "./hosts.js";

const clients = 16;
const sent = bodyOf(settleRig);
let server: Started;
let right = "";

beforeEach(async () => {
  server = await started(commands.node);
  const first = await answer(opened());
  expect(first.status).toBe(200);
  right = first.body;
});

afterEach(() => stopped(server.process));

/** A request whose head is sent; the server says `continue` once it has accepted it. */
function opened() {
  const headers = {
    "content-type": "application/json",
    "content-length": Buffer.byteLength(sent),
    expect: "100-continue",
  };
  const asked = request(server.base + settleRig.path, { method: "POST", headers, agent: false });
  asked.flushHeaders();
  return asked;
}

/** Sends the body and waits for the whole answer. */
async function answer(asked: ReturnType<typeof opened>) {
  asked.end(sent);
  const [response] = await once(asked, "response");
  const chunks: Buffer[] = [];
  for await (const chunk of response) chunks.push(chunk);
  return { status: Number(response.statusCode), body: Buffer.concat(chunks).toString() };
}

/** Asks again and again until a connection fails; gives every answer and the error that ended it. */
async function client(): Promise<{ answers: string[]; ended: string }> {
  const answers: string[] = [];
  for (;;) {
    try {
      const { status, body } = await answer(opened());
      answers.push(`${status} ${body}`);
    } catch (error) {
      return { answers, ended: String((error as NodeJS.ErrnoException).code) };
    }
  }
}

test("SIGTERM under load: what was accepted is answered, then the process ends by itself", async () => {
  const load = Array.from({ length: clients }, client);
  const accepted = Array.from({ length: clients }, opened);
  await Promise.all(accepted.map((asked) => once(asked, "continue")));
  const exit = once(server.process, "exit");
  server.process.kill("SIGTERM");
  const answers = await Promise.all(accepted.map(answer));
  expect(answers).toEqual(accepted.map(() => ({ status: 200, body: right })));
  for (const { answers } of await Promise.all(load)) {
    expect(answers.filter((text) => text !== `200 ${right}`)).toEqual([]);
  }
  expect(await exit).toEqual([0, null]);
});

test("SIGKILL under load: right answers, then connection errors; started again, it answers as before", async () => {
  const load = Array.from({ length: clients }, client);
  await Promise.all(Array.from({ length: clients }, () => answer(opened())));
  await stopped(server.process);
  const ends = await Promise.all(load);
  const all = ends.flatMap(({ answers }) => answers);
  expect(all.length).toBeGreaterThan(0);
  expect(all.filter((text) => text !== `200 ${right}`)).toEqual([]);
  for (const { ended } of ends) expect(ended).toMatch(/^(ECONNRESET|ECONNREFUSED|EPIPE)$/);
  server = await started(commands.node);
  expect((await answer(opened())).body).toBe(right);
});
