/** The built client against the Node entry, over a socket. */

import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { feet, feetPerSecond, type Plumbdrift, ProblemError, plumbdrift } from "@plumbdrift/client";
import { operations } from "@plumbdrift/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Running, started } from "./server.js";

const water = { depth: feet(3), surfaceSpeed: feetPerSecond(3), bed: "cobble" } as const;
let server: Running;
let api: Plumbdrift;

beforeAll(async () => {
  server = await started();
  api = plumbdrift({ baseUrl: server.base });
});
afterAll(() => server.stop());

test.each(operations.map(({ id, examples }) => ({ id, value: Object.values(examples)[0]!.value })))(
  "$id answers",
  async ({ id, value }) => {
    const call = Reflect.get(api, id) as (request: unknown) => Promise<object>;
    expect(await call(value)).toHaveProperty("meta.engine");
  },
);

test("a problem is thrown as it was sent", async () => {
  const call = api.readColumn({ water: { ...water, depth: feet(0) } });
  await expect(call).rejects.toThrow(ProblemError);
  await expect(call).rejects.toMatchObject({ problem: { code: "invalid-request", status: 400 } });
});

test("what fetch throws passes through", async () => {
  const nowhere = plumbdrift({ baseUrl: "http://localhost:1" });
  await expect(nowhere.readColumn({ water })).rejects.toThrow(TypeError);
});

describe("a host that is busy at first", () => {
  let busy: Server;
  let asked = 0;
  let waits: readonly string[] = [];

  beforeAll(async () => {
    busy = createServer(async (request, response) => {
      const wait = waits[asked++];
      if (wait !== undefined) return void response.writeHead(429, { "retry-after": wait }).end();
      const pieces: Buffer[] = [];
      for await (const piece of request) pieces.push(piece as Buffer);
      const headers = { "content-type": "application/json" };
      const answer = await fetch(server.base + request.url, {
        method: "POST",
        headers,
        body: Buffer.concat(pieces),
      });
      response.writeHead(answer.status, headers).end(await answer.text());
    }).listen(0, "localhost");
    await new Promise((listening) => busy.once("listening", listening));
  });
  afterAll(() => void busy.close());

  const client = (): Plumbdrift => {
    asked = 0;
    return plumbdrift({ baseUrl: `http://localhost:${(busy.address() as AddressInfo).port}` });
  };

  test("is asked again, with the whole body", async () => {
    waits = ["0", "1"];
    const begun = performance.now();
    expect((await client().readColumn({ water })).column.law).toBe("log");
    expect(asked).toBe(3);
    // timers may fire a millisecond early
    expect(performance.now() - begun).toBeGreaterThan(990);
  });

  test("is left alone once the caller has had enough", async () => {
    waits = ["20"];
    const call = client().readColumn({ water }, { signal: AbortSignal.timeout(200) });
    await expect(call).rejects.toMatchObject({ name: "TimeoutError" });
    expect(asked).toBe(1);
  });
});
