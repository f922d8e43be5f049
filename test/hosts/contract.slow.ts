/** One suite against every host; the table in the README is its result. `pnpm run write` writes it. */

import { readFileSync, writeFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Reply, requests } from "./exchange.js";
import { hosts, type Running } from "./hosts.js";
import { inReadme, table } from "./report.js";

const readme = new URL("../../README.md", import.meta.url);
const [reference, ...others] = hosts;
const answers = new Map<string, Reply>();
const alike = new Map<string, number>();

beforeAll(async () => {
  const running = await reference!.start();
  for (const request of requests) answers.set(request.name, await running.ask(request));
  await running.stop();
});

describe("the reference", () => {
  test("answers as the document says", () => {
    const statuses = new Set([...answers.values()].map(({ status }) => status));
    expect([...statuses].sort()).toEqual([200, 304, 400, 404, 405, 413, 415, 422]);
    expect(answers.size).toBe(requests.length);
  });
});

describe.each(others)("$name", ({ name, start }) => {
  let running: Running;
  beforeAll(async () => {
    running = await start();
  });
  afterAll(() => running?.stop());

  test.each(requests)("$name", async (request) => {
    const [expected, reply] = [answers.get(request.name)!, await running.ask(request)];
    expect(reply.status).toBe(expected.status);
    expect(reply.headers).toEqual(expected.headers);
    expect(comparable(reply.body)).toBe(comparable(expected.body));
    alike.set(name, (alike.get(name) ?? 0) + 1);
  });
});

test("the table in the README is this result", () => {
  const rows = others.map(({ name }) => ({ name, alike: alike.get(name) ?? 0 }));
  const before = readFileSync(readme, "utf8");
  const after = inReadme(before, table(rows, requests.length));
  if (process.env.WRITE) writeFileSync(readme, after);
  else expect(before).toBe(after);
});

/** Not every engine says where it met what is no JSON; a request has its own name at the host that names them. All else is the same, byte for byte. */
function comparable(text: string): string {
  return text.replace(/ at position \d+/, "").replace(/,"instance":"urn:uuid:[\da-f-]{36}"/, "");
}
