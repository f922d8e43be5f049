import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type Patience, patient } from "./patience.js";

/** A host that answers these in turn, and what it was sent. */
function host(...answers: readonly (readonly [status: number, headers?: Record<string, string>])[]) {
  const sent: { readonly body: string; readonly at: number }[] = [];
  const fetch = async (request: Request): Promise<Response> => {
    const [status = 200, headers = {}] = answers[sent.length] ?? [];
    sent.push({ body: await request.text(), at: Date.now() });
    return new Response("{}", { status, headers });
  };
  const ask = (patience: Patience = {}, signal?: AbortSignal): Promise<Response> => {
    const init = { method: "POST", body: "a body", ...(signal === undefined ? {} : { signal }) };
    return patient(fetch, patience)(new Request("http://api.example.org/", init));
  };
  return { ask, sent };
}

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 1) }));
afterEach(() => void vi.useRealTimers());

describe.each([429, 503])("after %i", (status) => {
  test("waits the seconds that Retry-After says, then sends the same body again", async () => {
    const { ask, sent } = host([status, { "retry-after": "7" }]);
    const answer = ask();
    await vi.runAllTimersAsync();
    expect((await answer).status).toBe(200);
    expect(sent.map(({ body }) => body)).toEqual(["a body", "a body"]);
    expect(sent[1]!.at - sent[0]!.at).toBe(7000);
  });

  test("waits until its date, counted from the clock of the host", async () => {
    const date = "Fri, 02 Jan 1970 00:00:00 GMT";
    const { ask, sent } = host([status, { "retry-after": "Fri, 02 Jan 1970 00:00:12 GMT", date }]);
    const answer = ask();
    await vi.runAllTimersAsync();
    expect((await answer).status).toBe(200);
    expect(sent[1]!.at - sent[0]!.at).toBe(12_000);
  });

  test("counts from the clock here where the host states no date, and never backwards", async () => {
    const { ask, sent } = host(
      [status, { "retry-after": "Thu, 01 Jan 2026 00:00:05 GMT" }],
      [status, { "retry-after": "Wed, 31 Dec 2025 00:00:00 GMT" }],
    );
    const answer = ask();
    await vi.runAllTimersAsync();
    expect((await answer).status).toBe(200);
    expect(sent.map(({ at }) => at - sent[0]!.at)).toEqual([0, 5000, 5000]);
  });

  test("waits 1 s, then 2 s, where nothing readable is said", async () => {
    const { ask, sent } = host([status], [status, { "retry-after": "soon" }]);
    const answer = ask();
    await vi.runAllTimersAsync();
    expect((await answer).status).toBe(200);
    expect(sent.map(({ at }) => at - sent[0]!.at)).toEqual([0, 1000, 3000]);
  });

  test("gives up after the retries allowed", async () => {
    const { ask, sent } = host([status], [status], [status], [status]);
    const answer = ask();
    await vi.runAllTimersAsync();
    expect((await answer).status).toBe(status);
    expect(sent).toHaveLength(3);
    expect((await host([status]).ask({ retries: 0 })).status).toBe(status);
  });

  test("does not wait longer than allowed", async () => {
    const { ask, sent } = host([status, { "retry-after": "31" }]);
    expect((await ask()).status).toBe(status);
    expect(sent).toHaveLength(1);
  });

  test("stops waiting when it is aborted", async () => {
    const { ask, sent } = host([status, { "retry-after": "20" }]);
    const stop = new AbortController();
    const refused = expect(ask({}, stop.signal)).rejects.toThrow("enough");
    await vi.advanceTimersByTimeAsync(10_000);
    stop.abort(new Error("enough"));
    await refused;
    expect(sent).toHaveLength(1);
    expect(vi.getTimerCount()).toBe(0);
  });
});

test.each([200, 400, 401, 413, 422, 500, 502, 504])("%i is not asked again", async (status) => {
  const { ask, sent } = host([status, { "retry-after": "1" }]);
  expect((await ask()).status).toBe(status);
  expect(sent).toHaveLength(1);
});

test("a connection that fails is not tried again", async () => {
  let tries = 0;
  const broken = patient(async () => {
    tries++;
    throw new TypeError("fetch failed");
  }, {});
  await expect(broken(new Request("http://api.example.org/"))).rejects.toThrow("fetch failed");
  expect(tries).toBe(1);
});
