/** The Node entry as it is started: one line, an answer over a real socket, a graceful stop. */

import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { operations } from "@plumbdrift/contract";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { exampleOf } from "./api.js";

const entry = fileURLToPath(new URL("../../apps/api/dist/node.js", import.meta.url));
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 }); // processes start slowly on a busy machine
const path = operations[0]?.path ?? "";

let server: ChildProcess;
let base = "";

const start = (port: string): ChildProcess =>
  spawn(process.execPath, [entry], { env: { PORT: port }, stdio: ["ignore", "pipe", "pipe"] });

beforeAll(async () => {
  server = start("0");
  const [line] = await once(server.stdout!, "data");
  base = /http:\S+/.exec(String(line))?.[0] ?? "";
});

afterAll(() => void server.kill("SIGKILL"));

describe("the Node entry", () => {
  test("prints one line with its address", () => {
    expect(base).toMatch(/^http:\/\/localhost:\d+$/);
  });

  test("computes over a socket", async () => {
    const body = JSON.stringify(exampleOf(path));
    const response = await fetch(base + path, {
      method: "POST",
      body,
      headers: { "content-type": "application/json" },
    });
    expect(response.status).toBe(200);
    expect(Object.keys((await response.json()) as object)).toContain("meta");
  });

  test("refuses a body that is sent in pieces and grows too large", async () => {
    const piece = new TextEncoder().encode("x".repeat(64 * 1024));
    let sent = 0;
    const body = new ReadableStream({
      pull: (stream) => (sent++ < 40 ? stream.enqueue(piece) : stream.close()),
    });
    const init = { method: "POST", body, duplex: "half", headers: { "content-type": "application/json" } };
    const response = await fetch(base + path, init as RequestInit);
    expect(response.status).toBe(413);
    expect(response.headers.get("content-type")).toBe("application/problem+json");
  });

  test("says what is wrong with a port", async () => {
    const wrong = start("eighty");
    const [[text], [code]] = await Promise.all([once(wrong.stderr!, "data"), once(wrong, "exit")]);
    expect(String(text)).toContain("PORT must be a whole number");
    expect(code).toBe(1);
  });

  test("stops on SIGTERM with exit code 0", async () => {
    const done = once(server, "exit");
    server.kill("SIGTERM");
    expect(await done).toEqual([0, null]);
  });
});
