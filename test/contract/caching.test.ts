/** QUERY beside POST, and answers that are named so that nobody computes them twice. */

import { createApp } from "@plumbdrift/api";
import { operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { ask, exampleOf, post, sending } from "./api.js";
import { broken } from "./broken.js";

/** An app that fails as soon as it computes. */
const idle = createApp(broken);

describe.each(operations.map(({ id, path }) => [id, path] as const))("%s", (_id, path) => {
  const query = (body: unknown, headers = {}, app = idle) => ask(path, sending(body, "QUERY", headers), app);

  test("answers QUERY as it answers POST", async () => {
    const [posted, queried] = [
      await post(path, exampleOf(path)),
      await ask(path, sending(exampleOf(path), "QUERY")),
    ];
    expect(queried.status).toBe(200);
    expect(queried.body).toEqual(posted.body);
    expect(queried.headers.get("etag")).toBe(posted.headers.get("etag"));
    expect(queried.headers.get("accept-query")).toBe("application/json");
    expect(queried.headers.get("cache-control")).toBe("public, max-age=3600");
  });

  test("spares the computing to who has the answer, however it is named", async () => {
    const etag = (await post(path, exampleOf(path))).headers.get("etag") ?? "";
    expect(etag).toMatch(/^"[0-9a-f]{32}"$/);
    // RFC 9110, section 13.1.2: any of a list, weak or not, or any at all
    for (const named of [etag, `W/${etag}`, `"other", ${etag}`, "*"]) {
      const reversed = Object.fromEntries(Object.entries(exampleOf(path)).reverse());
      const reply = await query(reversed, { "if-none-match": named });
      expect(reply).toMatchObject({ status: 304, body: undefined });
      expect(reply.headers.get("etag")).toBe(etag);
      expect(reply.headers.get("cache-control")).toBe("public, max-age=3600");
      expect(
        (await ask(path, sending(exampleOf(path), "POST", { "if-none-match": named }), idle)).status,
      ).toBe(304);
    }
  });

  test("a host that keeps answers computes none twice, and keeps no problem", async () => {
    const kept = new Map();
    const [first, again] = [createApp({}, { kept }), createApp(broken, { kept })];
    const { body, headers } = await post(path, exampleOf(path), first);
    const etag = headers.get("etag") ?? "";
    const reply = await post(path, exampleOf(path), again);
    expect(reply.body).toEqual(body);
    expect([...reply.headers]).toEqual([...headers]);
    expect((await query(exampleOf(path), { "if-none-match": etag }, again)).status).toBe(304);
    expect((await post(`${path}?explain=steps`, exampleOf(path), again)).status).toBe(500);
    expect((await post(path, { ...exampleOf(path), unitz: "si" }, first)).status).toBe(400);
    expect(kept.size).toBe(1);
  });

  test("names another request, or an answer in another system of units, otherwise", async () => {
    const { units = "si", ...rest } = exampleOf(path);
    const tagIn = async (system: string): Promise<string | null> =>
      (await post(path, { ...rest, units: system })).headers.get("etag");
    const tags = { si: await tagIn("si"), us: await tagIn("us") };
    expect(tags.si).not.toBe(tags.us);
    const stale = units === "si" ? tags.us : tags.si;
    const reply = await ask(path, sending(exampleOf(path), "QUERY", { "if-none-match": stale ?? "" }));
    expect(reply.status).toBe(200);
  });

  test("a body that is wrong is a problem whatever it names, and no cache keeps it", async () => {
    const reply = await query({}, { "if-none-match": "*" });
    expect(reply).toMatchObject({ status: 400, body: { code: "invalid-request" } });
    expect(reply.headers.get("cache-control")).toBe("no-store");
    expect(reply.headers.get("etag")).toBeNull();
  });
});

test("an answer to a key is for that client alone", async () => {
  const path = "/v1/columns";
  const headers = { authorization: "Bearer invented" };
  const reply = await ask(path, sending(exampleOf(path), "POST", headers));
  expect(reply.headers.get("cache-control")).toBe("private, max-age=3600");
});
