/** 200,000 random requests, of every kind to every operation, in one process whose memory is watched. Writes docs/fuzz.md. */

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { type Heap, heapAfter, slopeOf } from "./fuzz/memory.js";
import { page, type Statuses, sum } from "./fuzz/page.js";
import { countOf, send, targets } from "./fuzz/run.js";
import { slowly, type Way } from "./fuzz/slow.js";

const seed = 20261126;
/** Each with some 50 requests to each operation. */
const ROUNDS = Number(process.env.ROUNDS ?? 200);
/** Rounds between two measurements. */
const STRETCH = Math.ceil(ROUNDS / 20);
/** Anything kept of each request would be more: an identifier alone takes some 60 bytes. */
const MOST_BYTES_A_REQUEST = 50;

test("nothing that is sent is answered as it must not be, and nothing of it is kept", async () => {
  const tally = new Map(
    [...targets].map(([target, kinds]) => [
      target,
      new Map(kinds.map(({ name }) => [name, new Map<number, number>()])),
    ]),
  );
  const heaps: Heap[] = [];
  const faults: string[] = [];
  let requests = 0;
  for (let round = 0; round < ROUNDS && faults.length < 20; round++) {
    if (round % STRETCH === 0) heaps.push(await heapAfter(requests));
    for (const [target, kinds] of targets) {
      for (const kind of kinds) {
        const count = countOf(kind, { from: round, to: round + 1 });
        if (count === 0) continue;
        const counted = tally.get(target)!.get(kind.name)!;
        const answered = await send(target, kind, { seed: seed + round, count });
        faults.push(...answered.faults);
        for (const [status, times] of answered.statuses) {
          counted.set(status, (counted.get(status) ?? 0) + times);
        }
        requests += count;
      }
    }
  }
  expect(faults).toEqual([]);
  heaps.push(await heapAfter(requests));
  const slow = new Map<Way, Statuses>();
  for (const way of ["in time", "never whole", "gone halfway"] as const) {
    slow.set(way, await slowly(way, { seed, each: 10 }));
  }
  expect(requests + sum(slow.values())).toBeGreaterThanOrEqual(1000 * ROUNDS);
  // compiled code, validators and the buckets of the limiter have come by a quarter of the way
  const settled = heaps.slice(heaps.length / 4);
  expect(slopeOf(settled), JSON.stringify(heaps)).toBeLessThan(MOST_BYTES_A_REQUEST);
  const { user, system } = process.cpuUsage();
  const text = page({ seed, tally, slow, heaps, settled, seconds: (user + system) / 1e6 });
  writeFileSync(fileURLToPath(new URL("../../docs/fuzz.md", import.meta.url)), text);
});
