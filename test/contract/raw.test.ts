/** What no well-behaved client sends, over a real socket: each is a problem document, and none a 5xx. */

import { once } from "node:events";
import { connect } from "node:net";
import { operations } from "@plumbdrift/contract";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { document, exampleOf, verdict } from "./api.js";
import { exchange, type Raw, type Served, serve, spawned } from "./raw.js";

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 }); // processes start slowly on a busy machine

let server: Served;

beforeAll(async () => {
  server = await serve({ PLUMBDRIFT_REQUEST_SECONDS: "1" });
});
afterAll(() => server.kill());

const send = (text: string): Promise<Raw> => exchange(server.port, [text]);

const post =
  "POST /v1/columns HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: application/json\r\n";
const long = "x".repeat(20_000);

describe("a problem is what comes of", () => {
  test.each([
    ["a slow body", `${post}Content-Length: 100\r\n\r\n{`, 408, "too-slow"],
    ["slow headers", "POST /v1/columns HTTP/1.1\r\nHost: a\r\nX-", 408, "too-slow"],
    ["headers of 20,000 bytes", `${post}X-Long: ${long}\r\n\r\n`, 431, "headers-too-large"],
    ["a key of 20,000 bytes", `${post}Authorization: Bearer ${long}\r\n\r\n`, 431, "headers-too-large"],
    ["no HTTP", "hello\r\n\r\n", 400, "malformed-request"],
    ["a header without a name", `${post}: a\r\n\r\n`, 400, "malformed-request"],
    ["two lengths", `${post}Content-Length: 1\r\nContent-Length: 2\r\n\r\n{}`, 400, "malformed-request"],
    [
      "a length and chunks",
      `${post}Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
      400,
      "malformed-request",
    ],
    [
      "a chunk that is none",
      `${post}Transfer-Encoding: chunked\r\n\r\nzz\r\n{}\r\n0\r\n\r\n`,
      400,
      "malformed-request",
    ],
    ["a tunnel", "CONNECT a:1 HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n", 400, "malformed-request"],
    ["no Host", "GET /healthz HTTP/1.1\r\nConnection: close\r\n\r\n", 400, "malformed-request"],
    [
      "a Host that is none",
      "GET /healthz HTTP/1.1\r\nHost: a b\r\nConnection: close\r\n\r\n",
      400,
      "malformed-request",
    ],
    [
      "a path that is no text",
      "GET /%ff%fe HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n",
      404,
      "not-found",
    ],
    [
      "a method of the past",
      "TRACE /healthz HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n",
      405,
      "method-not-allowed",
    ],
    [
      "bytes beyond ASCII for a type",
      `${post.replace("json", "\xff\xfe")}Content-Length: 2\r\n\r\n{}`,
      415,
      "unsupported-media-type",
    ],
  ])("%s", async (_name, text, status, code) => {
    const reply = await send(text);
    expect([reply.status, reply.body.slice(0, 4000)]).toEqual([
      status,
      expect.stringContaining(`"code":"${code}"`),
    ]);
    expect(reply.headers.get("content-type")).toBe("application/problem+json");
    expect(reply.headers.get("access-control-allow-origin")).toBe("*");
    const body = JSON.parse(reply.body);
    expect(body.instance).toBe(`urn:uuid:${reply.headers.get("x-request-id")}`);
    const { schema } = document.components.responses[`Problem${status}`].content["application/problem+json"];
    expect(verdict(schema, body)).toMatchObject({ valid: true });
  });

  // what the host refuses before the app: on every operation, all at once
  test.each([
    ["a slow body", "Content-Length: 100\r\n\r\n{", 408, "too-slow"],
    ["headers of 20,000 bytes", `X-Long: ${long}\r\n\r\n`, 431, "headers-too-large"],
    [
      "a length and chunks",
      "Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n",
      400,
      "malformed-request",
    ],
  ])("%s, to any operation by either method", async (_name, rest, status, code) => {
    const asked = [...operations.flatMap(({ path }) => [`POST ${path}`, `QUERY ${path}`]), "POST /v1/batch"];
    const heads = asked.map((line) => post.replace("POST /v1/columns", line));
    const replies = await Promise.all(heads.map((head) => send(head + rest)));
    expect(replies.map((reply) => [reply.status, JSON.parse(reply.body).code])).toEqual(
      asked.map(() => [status, code]),
    );
  });

  test.each([
    ["stated", `Content-Length: ${1e7}\r\n\r\n${" ".repeat(1e7)}`],
    ["in one chunk", `Transfer-Encoding: chunked\r\n\r\n989680\r\n${" ".repeat(1e7)}\r\n0\r\n\r\n`],
    ["of which nothing comes", `Content-Length: ${1e7}\r\n\r\n`],
  ])("ten million bytes, %s: the answer arrives, and the connection ends", async (_name, rest) => {
    const reply = await send(post.replace("Connection: close\r\n", "") + rest);
    expect([reply.status, reply.headers.get("connection")]).toEqual([413, "close"]);
    expect(JSON.parse(reply.body)).toMatchObject({ code: "too-large" });
  });

  test("nothing, where a client expects what nobody knows: it is answered", async () => {
    const body = JSON.stringify(exampleOf("/v1/columns"));
    const reply = await send(`${post}Expect: 200-ok\r\nContent-Length: ${body.length}\r\n\r\n${body}`);
    expect([reply.status, reply.headers.get("content-type")]).toEqual([200, "application/json"]);
  });

  test("nothing, where a client goes away: the next is answered", async () => {
    const gone = connect(server.port, "127.0.0.1");
    gone.write(`${post}Content-Length: 100\r\n\r\n{`);
    await once(gone, "connect");
    gone.resetAndDestroy();
    const body = JSON.stringify(exampleOf("/v1/columns"));
    expect((await send(`${post}Content-Length: ${body.length}\r\n\r\n${body}`)).status).toBe(200);
  });

  test("none of it is logged as a failure of ours", () => {
    expect(server.log()).toContain('"status":408');
    expect(server.log()).not.toMatch(/"event":"failure"|"status":5/);
  });
});

describe("the start is refused with", () => {
  test.each([
    [{ PLUMBDRIFT_LOG: "all" }, 'PLUMBDRIFT_LOG must be off, errors or requests, got "all"'],
    [{ PLUMBDRIFT_PORTS: "1" }, "PLUMBDRIFT_PORTS is no setting: did you mean PORT?"],
    [{ HOST: "0.0.0.0" }, "HOST=0.0.0.0 can be reached from other machines: set PLUMBDRIFT_API_KEYS"],
  ])("%o", async (env, says) => {
    const refused = spawned({ PORT: "0", ...env });
    const [[text], [code]] = await Promise.all([once(refused.stderr!, "data"), once(refused, "exit")]);
    expect(String(text)).toContain(says);
    expect(code).toBe(1);
  });
});
