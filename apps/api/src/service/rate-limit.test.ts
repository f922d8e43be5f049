import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { memoryStore, type RateStore, type Taken } from "./rate-limit.js";

const policy = { units: 600, seconds: 60 };
const ask = (store: RateStore, now: number, cost: number, caller = "a"): Taken =>
  store.take(caller, { policy, now, cost }) as Taken;

describe("a bucket", () => {
  // 600 units in 60 s are 10 a second: by hand
  test("fills evenly and says when what was asked will be there", () => {
    const store = memoryStore();
    expect(ask(store, 0, 600)).toMatchObject({ ok: true, left: 0, wait: 60_000 });
    expect(ask(store, 0, 50)).toMatchObject({ ok: false, left: 0, wait: 5_000 });
    expect(ask(store, 4_999, 50).ok).toBe(false);
    expect(ask(store, 5_000, 50)).toMatchObject({ ok: true, left: 0 });
  });

  test("holds no more than its units, however long it rests", () => {
    const store = memoryStore();
    ask(store, 0, 600);
    expect(ask(store, 1e9, 601)).toMatchObject({ ok: false, left: 600 });
  });

  test("of one caller is not that of another", () => {
    const store = memoryStore();
    ask(store, 0, 600, "a");
    expect(ask(store, 0, 600, "b").ok).toBe(true);
    expect(ask(store, 0, 1, "a").ok).toBe(false);
  });

  test("lets in whoever waits as told, and no one before", () => {
    const asks = fc.array(fc.tuple(fc.integer({ min: 1, max: 600 }), fc.integer({ min: 0, max: 20_000 })), {
      minLength: 1,
      maxLength: 30,
    });
    const property = fc.property(asks, (rows) => {
      const store = memoryStore();
      let now = 0;
      for (const [cost, pause] of rows) {
        now += pause;
        const first = ask(store, now, cost);
        if (first.ok) continue;
        expect(ask(store, now + first.wait - 1, cost).ok).toBe(false);
        now += Math.ceil(first.wait);
        expect(ask(store, now, cost).ok).toBe(true);
      }
    });
    fc.assert(property, { seed: 4, numRuns: 200 });
  });

  test("never gives more than it holds and what comes back", () => {
    const asks = fc.array(fc.tuple(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 3_000 })), {
      minLength: 1,
      maxLength: 60,
    });
    const property = fc.property(asks, (rows) => {
      const store = memoryStore();
      let [now, given] = [0, 0];
      for (const [cost, pause] of rows) {
        now += pause;
        if (ask(store, now, cost).ok) given += cost;
      }
      expect(given).toBeLessThanOrEqual(600 + now / 100 + 1e-3);
    });
    fc.assert(property, { seed: 5, numRuns: 200 });
  });
});

describe("the store of one process", () => {
  test("forgets the caller not seen for longest when it is full", () => {
    const store = memoryStore(2);
    for (const caller of ["a", "b", "a", "c"]) ask(store, 0, 100, caller);
    expect(ask(store, 0, 501, "a").ok).toBe(false);
    expect(ask(store, 0, 501, "b").ok).toBe(true);
  });
});
