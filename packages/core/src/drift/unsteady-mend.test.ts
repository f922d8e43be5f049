import { describe, expect, test } from "vitest";
import { drift, metres, metresPerSecond, newtons, seconds, settle } from "../index.js";
import { boulderWater, hung, nymph } from "./unsteady.fixture.js";

const options = {
  runLength: metres(40),
  duration: seconds(30),
  instants: 200,
  stationary: metresPerSecond(0),
};
const force = newtons(0.0015);

describe("mends on the way", () => {
  test("a mend to the force that is held already changes nothing", () => {
    const plain = drift(hung(nymph), boulderWater, {
      ...options,
      held: force,
      stationary: metresPerSecond(0),
    });
    const mended = drift(hung(nymph), boulderWater, {
      ...options,
      held: force,
      mends: [{ at: seconds(2), held: force }],
    });
    // the step is cut where the mend falls, which costs the last digits
    const end = ({ path }: typeof plain) => path.at(-1)?.float.downstream ?? Number.NaN;
    expect(Math.abs(end(mended) / end(plain) - 1)).toBeLessThan(1e-6);
  });

  test("a hold from a moment on slows the dry after it and not before", () => {
    const free = drift(hung(nymph), boulderWater, options);
    const late = drift(hung(nymph), boulderWater, { ...options, mends: [{ at: seconds(5), held: force }] });
    const place = (it: typeof free, time: number) =>
      it.path.findLast((instant) => instant.time <= time)?.float.downstream ?? 0;
    expect(Math.abs(place(late, 4.9) - place(free, 4.9))).toBeLessThan(0.2);
    expect(place(late, 20)).toBeLessThan(place(free, 20) - 0.5);
  });

  test("it tends to the settled drift under the last force, within half a percent of its depth", () => {
    const mends = [
      { at: seconds(1), held: newtons(0.003) },
      { at: seconds(3), held: newtons(0) },
      { at: seconds(6), held: force },
    ];
    const { settled, path } = drift(hung(nymph), boulderWater, { ...options, mends });
    const still = settle(hung(nymph), boulderWater, { held: force });
    const depth = boulderWater.depth - (still.sinkers[0]?.heightAboveBed ?? 0);
    const end = path.at(-1)?.sinkers[0]?.heightAboveBed ?? 0;
    expect(settled.driftSpeed).toBe(still.driftSpeed);
    expect(Math.abs(boulderWater.depth - end - depth) / depth).toBeLessThan(0.005);
  });

  test.each([
    [[{ at: seconds(-1), held: force }], "moment of mend 1 must be from 0 to 100000 s, got -1"],
    [
      [
        { at: seconds(3), held: force },
        { at: seconds(2), held: force },
      ],
      "moment of mend 2 must be from 3 to 100000 s, got 2",
    ],
    [[{ at: seconds(1), held: newtons(-1) }], "held force of mend 1 must be from 0 to 10 N, got -1"],
  ])("%o is refused", (mends, message) => {
    expect(() => drift(hung(nymph), boulderWater, { ...options, mends })).toThrow(message);
  });
});
