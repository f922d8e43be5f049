/** Keys, limits and pages of other origins on every host; those that are processes refuse a wrong start and stop without losing what they have begun. */

import { once } from "node:events";
import { connect } from "node:net";
import { setTimeout as after } from "node:timers/promises";
import { settleRig } from "@plumbdrift/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bodyOf } from "./bench.js";
import type { Request } from "./exchange.js";
import { type Command, hosts, lambda, type Running, started } from "./hosts.js";

const origin = "https://app.example";
const env = {
  // SHA-256 of "the-key-of-a-test", by sha256sum
  PLUMBDRIFT_API_KEYS: "app=4f3e00916ef21549697128b3d5723e347a665bca366f987d21367c15a62a57a4",
  PLUMBDRIFT_CORS_ORIGINS: origin,
  PLUMBDRIFT_RATE_UNITS: "3100",
  PLUMBDRIFT_RATE_SECONDS: "600",
};

const asking = (headers: Readonly<Record<string, string>> = {}): Request => ({
  name: "asked",
  method: "POST",
  path: settleRig.path,
  headers: { "content-type": "application/json", origin, ...headers },
  body: bodyOf(settleRig),
});
const key = { authorization: "Bearer the-key-of-a-test" };

describe.each(hosts)("$name", ({ name, start }) => {
  let running: Running;
  beforeAll(async () => {
    running = await start(env);
  });
  afterAll(() => running?.stop());

  test("lets nobody in without a key, and says how", async () => {
    for (const [headers, challenge] of [
      [{}, 'Bearer realm="plumbdrift"'],
      [{ authorization: "Bearer another" }, 'Bearer realm="plumbdrift", error="invalid_token"'],
    ] as const) {
      const { status, all, body } = await running.ask(asking(headers));
      expect(JSON.parse(body)).toMatchObject({ status, code: "unauthorised" });
      expect(status).toBe(401);
      expect(all.get("www-authenticate")).toBe(challenge);
      expect(all.get("access-control-allow-origin")).toBe(origin);
      expect(JSON.parse(body).instance).toBe(`urn:uuid:${all.get("x-request-id")}`);
    }
  });

  test("answers who has one until its units are gone, then says when they are back", async () => {
    // 1500 units each: two of them, and a hundred units left
    for (const left of [1600, 100]) {
      const { status, all } = await running.ask(asking(key));
      expect(status).toBe(200);
      expect(all.get("ratelimit-policy")).toBe('"work";q=3100;w=600;qu="work"');
      expect(Number(/r=(\d+)/.exec(all.get("ratelimit") ?? "")?.[1])).toBeGreaterThanOrEqual(left);
      expect(all.get("access-control-allow-origin")).toBe(origin);
      expect(all.get("x-content-type-options")).toBe("nosniff");
      expect(all.get("cache-control")).toBe("private, max-age=3600");
    }
    const { status, all, body } = await running.ask(asking(key));
    expect(status).toBe(429);
    expect(JSON.parse(body).code).toBe("too-many-requests");
    // 1400 units of 3100 in 600 s are missing, less what has come back meanwhile
    const wait = Number(all.get("retry-after"));
    expect(wait).toBeGreaterThan(200);
    expect(wait).toBeLessThanOrEqual(271);
    expect(all.get("access-control-allow-origin")).toBe(origin);
    expect(all.get("access-control-expose-headers")).toContain("Retry-After");
  });

  test("compresses once, for who accepts it; at the edge of Workers that is the platform's", async () => {
    const document = (coding: string): Request => ({
      name: "the document",
      method: "GET",
      path: "/openapi.json",
      headers: { "accept-encoding": coding },
    });
    const plain = await running.ask(document("identity"));
    const small = await running.ask(document("gzip"));
    expect(plain.all.get("content-encoding")).toBeNull();
    expect(small.all.get("content-encoding")).toBe(name === "workerd" ? null : "gzip");
    expect(JSON.parse(small.body)).toEqual(JSON.parse(plain.body));
    expect(JSON.parse(small.body).openapi).toBe("3.1.0");
  });

  test("tells a page of another origin nothing that it may read, and what it may send", async () => {
    const other = await running.ask(asking({ origin: "https://other.example" }));
    expect(other.all.get("access-control-allow-origin")).toBeNull();
    const preflight = await running.ask({
      name: "preflight",
      method: "OPTIONS",
      path: settleRig.path,
      headers: { origin, "access-control-request-method": "QUERY" },
    });
    expect(preflight.status).toBe(204);
    expect(preflight.all.get("access-control-allow-methods")).toContain("QUERY");
    expect(preflight.all.get("access-control-allow-headers")).toContain("Authorization");
  });
});

const processes = hosts.flatMap(({ name, command }) =>
  command === undefined || name === "workerd" ? [] : [{ name, command }],
);

describe.each(processes)("$name", ({ command }) => {
  test.each([
    [{ HOST: "0.0.0.0" }, "HOST=0.0.0.0 can be reached from other machines: set PLUMBDRIFT_API_KEYS"],
    [{ PLUMBDRIFT_LOG: "all" }, 'PLUMBDRIFT_LOG must be off, errors or requests, got "all"'],
  ])("does not start with %o", async (wrong, says) => {
    await expect(started(command, wrong)).rejects.toThrow(says);
  });

  test("answers what it has begun when it is told to stop, then takes nothing new", () => stops(command));
});

test("a Worker and a function do not start without keys, unless anyone may ask", async () => {
  const says = "This host can be reached from other machines: set PLUMBDRIFT_API_KEYS, or ALLOW_ANONYMOUS=1";
  const worker = hosts.find(({ name }) => name === "workerd")!.command!;
  await expect(started(worker)).rejects.toThrow(says);
  await expect(lambda({ PLUMBDRIFT_LOG: "off" })).rejects.toThrow(says);
});

async function stops(command: Command): Promise<void> {
  const { base, process: server } = await started(command);
  const port = Number(new URL(base).port);
  const body = bodyOf(settleRig);
  const socket = connect(port, "127.0.0.1");
  const got: Buffer[] = [];
  socket.on("data", (bytes) => got.push(bytes));
  const closed = once(socket, "close");
  const head = `POST ${settleRig.path} HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: ${body.length}`;
  socket.write(`${head}\r\n\r\n${body.slice(0, 100)}`);
  await after(300);
  process.kill(-server.pid!, "SIGTERM");
  await after(300);
  socket.write(body.slice(100));
  await closed;
  const answer = Buffer.concat(got).toString();
  expect(answer).toMatch(/^HTTP\/1\.1 200 /);
  expect(answer).toContain('"settled":');
  await expect(once(connect(port, "127.0.0.1"), "connect")).rejects.toThrow("ECONNREFUSED");
}
