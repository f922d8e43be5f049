/** Many computations in one call, as a list and as a stream of lines. */

import { app, createApp } from "@plumbdrift/api";
import { type Engine, engine } from "@plumbdrift/api/engine";
import { BATCH, MAX_ERRORS, operations, STREAM } from "@plumbdrift/contract";
import { afterEach, describe, expect, test, vi } from "vitest";
import { ask, type Body, exampleOf, post, sending, verdict } from "./api.js";
import { broken } from "./broken.js";

const path = "/v1/batch";
const lines = "application/x-ndjson";
const item = (operation = "settleRig", more: object = {}): Body => {
  const { path: at = "" } = operations.find(({ id }) => id === operation) ?? {};
  return { operation, body: exampleOf(at), ...more };
};

afterEach(() => void vi.restoreAllMocks());

describe("a list", () => {
  test("is answered in its order with what each operation alone would answer", async () => {
    const items = operations.map(({ id }) => item(id, { id: `trip ${id}` }));
    const { status, body } = await post(path, { items });
    expect(status).toBe(200);
    expect(body.items).toHaveLength(items.length);
    for (const [index, { operation, body: asked, id }] of items.entries()) {
      const alone = await post(operations.find((one) => one.id === operation)?.path ?? "", asked);
      expect(body.items[index]).toEqual({ index, id, status: 200, result: alone.body });
    }
  }, 30_000);

  test("has a problem where an item is wrong, and results beside it", async () => {
    const wrong = item();
    wrong.body.water.dpeth = 1;
    const { body } = await post(path, {
      items: [
        item(),
        wrong,
        item("settleRig", { operation: "setleRig", id: "misspelt" }),
        { ...item(), note: "mine" },
        "text",
        { operation: "settleRig", body: [] },
        item("readColumn"),
      ],
    });
    expect(body.items.map(({ status }: Body) => status)).toEqual([200, 400, 400, 400, 400, 400, 200]);
    const faults = body.items.map(({ problem }: Body) => problem?.errors[0]);
    expect(faults[1]).toMatchObject({ path: "/water/dpeth" });
    expect(faults[2]).toMatchObject({ path: "/operation", suggestion: 'did you mean "settleRig"?' });
    expect(body.items[2].id).toBe("misspelt");
    expect(faults[3]).toMatchObject({ path: "/note", expected: "a known key: id, operation, body" });
    expect(faults[4]).toMatchObject({ path: "", received: '"text"' });
    expect(faults[5]).toMatchObject({ path: "/body", received: "an array of 0" });
  });

  test("keeps what cannot hold together, and a failure of ours, to their items", async () => {
    vi.spyOn(console, "error").mockImplementation(() => {});
    const impossible = item();
    impossible.body.water = { ...impossible.body.water, bed: "sand", d84: { value: 1, unit: "mm" } };
    const readColumn: Engine["readColumn"] = () => {
      throw new Error("the secret of the engine");
    };
    const items = [impossible, item("readColumn"), item()];
    const { body } = await post(path, { items }, createApp({ readColumn }));
    expect(body.items.map(({ problem }: Body) => problem?.code)).toEqual([
      "impossible",
      "internal",
      undefined,
    ]);
    expect(JSON.stringify(body)).not.toContain("secret");
    expect(body.items[1].problem.instance).toMatch(/^urn:uuid:/);
  });

  test("keys of the prototype change nothing", async () => {
    const text = JSON.stringify({ items: [item()] }).replace(/\{(?=")/g, '{"__proto__":{"polluted":true},');
    const { status } = await post(path, text);
    expect(status).toBe(400);
    const inside = await post(path, `{"items":[{"operation":"settleRig","body":{"__proto__":{"water":1}}}]}`);
    expect(inside.body.items[0].problem.errors.map((error: Body) => error.path)).toContain("/__proto__");
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  test("with a key given twice anywhere is refused as a whole: what is one item and what another is not sure", async () => {
    const text = JSON.stringify({ items: [item(), item()] }).replace(
      /"operation"(?=.*"operation")/,
      '"body":{},$&',
    );
    const { status, body } = await post(path, text, createApp(broken));
    expect({ status, faults: body.errors }).toMatchObject({
      status: 400,
      faults: [{ path: "/items/0/body", expected: "a key that is given once" }],
    });
  });

  test.each([
    ["no items", { items: [] }, "/items", "at least 1 items"],
    ["no list", {}, "/items", "an array"],
    ["too many items", { items: Array(BATCH.items + 1).fill(0) }, "/items", `at most ${BATCH.items} items`],
    ["another key", { items: [0], item: [] }, "/item", "a known key: items"],
    ["a key misspelt", { itms: [] }, "/itms", "a known key: items", 'did you mean "items"?'],
  ])("with %s is refused as a whole", async (_name, body, at, expected, suggestion = "") => {
    const reply = await post(path, body, createApp(broken));
    expect(reply).toMatchObject({ status: 400, body: { code: "invalid-request" } });
    const error = reply.body.errors.find((one: Body) => one.path === at);
    expect(error).toMatchObject({ expected, ...(suggestion && { suggestion }) });
  });

  test("with fifty wrong keys lists twenty of them, and echoes no more than a clipped value", async () => {
    const wrong = Array.from({ length: 50 }, (_, i) => [`unknown${i}`, "s".repeat(500)]);
    const { body } = await post(path, { items: [0], ...Object.fromEntries(wrong) });
    expect(body.errors).toHaveLength(MAX_ERRORS);
    for (const { received } of body.errors) expect(received.length).toBeLessThanOrEqual(60);
  });

  test("without a content type is refused", async () => {
    const body = new TextEncoder().encode(JSON.stringify({ items: [item()] }));
    expect(await ask(path, { method: "POST", body })).toMatchObject({
      status: 415,
      body: { code: "unsupported-media-type" },
    });
  });

  test("is refused before computing where its items together ask for too much", async () => {
    const long = item("driftRig");
    long.body.timeStep = { value: 0.001, unit: "s" };
    const { body } = await post(path, { items: Array(60).fill(long) }, createApp(broken));
    expect(body).toMatchObject({ status: 422, code: "over-budget" });
    expect(body.errors[0]).toMatchObject({ path: "/items", expected: `at most ${BATCH.work} units of work` });
    expect(Number.parseInt(body.errors[0].received, 10)).toBeGreaterThan(BATCH.work);
  });

  test("may have so many bytes and no more", async () => {
    const text = JSON.stringify({ items: [item()] });
    expect((await post(path, text.padEnd(BATCH.bytes))).status).toBe(200);
    expect((await post(path, text.padEnd(BATCH.bytes + 1))).body).toMatchObject({ code: "too-large" });
  });

  test.each([
    ["half a body", "{", {}, "malformed-json"],
    ["a type that is no JSON", "{}", { "content-type": "text/plain" }, "unsupported-media-type"],
    ["a client that accepts no JSON", "{}", { accept: "text/html, application/json;q=0" }, "not-acceptable"],
  ])("%s gets a problem", async (_name, body, headers, code) => {
    expect((await ask(path, sending(body, "POST", headers))).body.code).toBe(code);
  });

  test("answers POST only", async () => {
    const reply = await ask(path, { method: "GET" });
    expect(reply.status).toBe(405);
    expect(reply.headers.get("allow")).toBe("POST");
  });
});

const encoder = new TextEncoder();

/** Sends pieces one by one, as they are asked for, and tells how many were. */
function sender(pieces: Iterable<string>, headers: Record<string, string> = {}) {
  const left = pieces[Symbol.iterator]();
  const seen = { pulled: 0, cancelled: false };
  const body = new ReadableStream<Uint8Array>(
    {
      pull: (controller) => {
        const { value, done } = left.next();
        if (done) return controller.close();
        seen.pulled++;
        controller.enqueue(encoder.encode(value));
      },
      cancel: () => {
        seen.cancelled = true;
      },
    },
    { highWaterMark: 0 },
  );
  const init = { method: "POST", headers: { "content-type": lines, ...headers }, body, duplex: "half" };
  return { seen, init: init as RequestInit };
}

async function answersOf(pieces: Iterable<string>, to = app): Promise<Body[]> {
  const response = await to.request(path, sender(pieces).init);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe(lines);
  const text = await response.text();
  const answers = text
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line));
  for (const answer of answers) {
    expect(verdict({ $ref: "#/components/schemas/BatchResult" }, answer)).toMatchObject({ valid: true });
  }
  return answers;
}

describe("lines", () => {
  const line = (more: object = {}): string => `${JSON.stringify(item("readColumn", more))}\n`;

  test("are answered line by line, a season of trips in one call", async () => {
    const trips = Array.from({ length: 120 }, (_, day) => line({ id: `day ${day}` }));
    const answers = await answersOf(trips);
    expect(answers.map(({ index, id, status }) => [index, id, status])).toEqual(
      trips.map((_, day) => [day, `day ${day}`, 200]),
    );
    const alone = (await post("/v1/columns", exampleOf("/v1/columns"))).body;
    expect(answers[77].result).toEqual(alone);
  });

  test("may be cut anywhere, end as they like, and leave blanks between", async () => {
    const text = `${line({ id: "Flügel 🎣" })}\r\n\n${line().trimEnd()}\r\n  \n${line().trimEnd()}`;
    const bytes = encoder.encode(text);
    const body = new ReadableStream({
      start: (controller) => {
        for (let at = 0; at < bytes.length; at += 7) controller.enqueue(bytes.subarray(at, at + 7));
        controller.close();
      },
    });
    const init = { method: "POST", headers: { "content-type": lines }, body, duplex: "half" };
    const answers = (await (await app.request(path, init as RequestInit)).text()).trimEnd().split("\n");
    expect(answers.map((answer) => JSON.parse(answer).status)).toEqual([200, 200, 200]);
    expect(JSON.parse(answers[0] ?? "").id).toBe("Flügel 🎣");
  });

  test("that are wrong get a problem with their number, and the next are read", async () => {
    const long = `${"x".repeat(STREAM.lineBytes + 1)}\n`;
    const twice = line().replace("{", '{"id":"a","id":"b",');
    const answers = await answersOf([
      line(),
      "\n",
      "{\n",
      long,
      '{"operation":"readColumn"}\n',
      twice,
      line(),
    ]);
    expect(answers.map(({ problem }) => problem?.code)).toEqual([
      undefined,
      "malformed-json",
      "too-large",
      "invalid-request",
      "invalid-request",
      undefined,
    ]);
    expect(answers[1].problem.detail).toMatch(/^Line 3: It cannot be read as JSON/);
    expect(answers[2].problem.detail).toBe(`Line 4 has more than ${STREAM.lineBytes} bytes.`);
    expect(answers[3].problem.errors[0]).toMatchObject({ path: "/body", received: "nothing" });
    expect(answers[4].problem.detail).toBe("Line 6: /id: expected a key that is given once.");
  });

  test("that are not UTF-8 get a problem", async () => {
    const body = new Uint8Array([0xff, 0xfe, 0x0a]);
    const response = await app.request(path, { method: "POST", headers: { "content-type": lines }, body });
    expect(JSON.parse(await response.text()).problem.detail).toBe("Line 1 is not UTF-8.");
  });

  test("are read no faster than answers are taken, and no more once the client has gone", async () => {
    let computed = 0;
    const readColumn: Engine["readColumn"] = (input) => {
      computed++;
      return engine.readColumn(input);
    };
    const { seen, init } = sender(Array(5000).fill(line()));
    const response = await createApp({ readColumn }).request(path, init);
    const reader = response.body!.getReader();
    for (let i = 0; i < 3; i++) await reader.read();
    expect(computed).toBe(3);
    expect(seen.pulled).toBeLessThanOrEqual(4);
    await reader.cancel();
    await new Promise((resume) => setTimeout(resume, 20));
    expect(computed).toBe(3);
    expect(seen.cancelled).toBe(true);
  });

  test("end with a problem where there are too many", async () => {
    const answers = await answersOf(Array(STREAM.lines + 5).fill("{\n"));
    expect(answers).toHaveLength(STREAM.lines + 1);
    expect(answers.at(-1)).toMatchObject({ index: STREAM.lines, problem: { code: "over-budget" } });
  });

  test("end with a problem where they ask for too much", async () => {
    const costly = item("driftRig");
    costly.body.timeStep = { value: 0.0006, unit: "s" };
    const text = `${JSON.stringify(costly)}\n`;
    const driftRig: Engine["driftRig"] = (() => broken.driftRig) as never;
    vi.spyOn(console, "error").mockImplementation(() => {});
    const answers = await answersOf(Array(400).fill(text), createApp({ driftRig }));
    expect(answers.length).toBeLessThan(400);
    expect(answers.at(-1)).toMatchObject({ problem: { code: "over-budget" } });
  });

  test("are also an answer to a list, for who accepts them", async () => {
    const accept = `${lines}, application/json;q=0.5`;
    const response = await app.request(path, sending({ items: [item(), item()] }, "POST", { accept }));
    expect(response.headers.get("content-type")).toBe(lines);
    const answers = (await response.text()).trimEnd().split("\n");
    expect(answers.map((answer) => JSON.parse(answer).status)).toEqual([200, 200]);
  });

  test("are what lines are answered with: a client that accepts JSON only is told", async () => {
    const { init } = sender([line()], { accept: "application/json" });
    expect((await app.request(path, init)).status).toBe(406);
  });
});
