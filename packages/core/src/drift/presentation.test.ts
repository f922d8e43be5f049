import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { degrees, type LaneSpeed, metres, metresPerSecond, type Presentation, present } from "../index.js";

const lane = (across: number, speed: number): LaneSpeed => ({
  across: metres(across),
  surfaceSpeed: metresPerSecond(speed),
});
/** A slow edge, a quick seam and its far side. */
const stream = [lane(0, 0.2), lane(4, 0.6), lane(8, 1), lane(12, 0.8)];
const even = [lane(0, 0.7), lane(20, 0.7)];
const cast = (more: Partial<Presentation> = {}): Presentation => ({
  distance: metres(8),
  upstream: degrees(0),
  lanes: stream,
  dropper: metres(0.5),
  slack: metres(0.6),
  ...more,
});
const near = (value: number, expected: number, within = 1e-9) =>
  expect(Math.abs(value - expected)).toBeLessThan(within);

describe("where it lands", () => {
  test("straight across, the nymph past the dry", () => {
    const { landing, cast: nymph } = present(cast());
    near(landing.downstream, 0);
    near(landing.across, 8);
    near(nymph.sinkerDownstream, 0);
    near(nymph.sinkerAcross, 0.3);
  });

  test("up and across it lands upstream and farther over; mirrored, downstream", () => {
    const up = present(cast({ upstream: degrees(45) }));
    const down = present(cast({ upstream: degrees(-45) }));
    near(up.landing.downstream, -8 * Math.SQRT1_2);
    near(up.landing.downstream, -down.landing.downstream);
    near(up.cast.sinkerDownstream, -down.cast.sinkerDownstream);
    expect(up.cast.sinkerDownstream).toBeLessThan(0);
    near(up.cast.sinkerAcross, down.cast.sinkerAcross);
  });

  test("what falls back lands nearer the angler than the dry", () => {
    expect(present(cast({ turnover: -1 })).cast.sinkerAcross).toBeLessThan(0);
  });
});

describe("lanes", () => {
  test("slack over the difference of speed: a dry in 0.7 m/s behind a lane of 0.3 m/s has 1.5 s of 0.6 m. Model §6", () => {
    // the line lies in a lane of 0.3 m/s but for a narrow seam of 0.7 m/s at the dry
    const seam = [lane(0, 0.3), lane(7.999, 0.3), lane(8, 0.7), lane(12, 0.7)];
    near(present(cast({ lanes: seam })).dragFree ?? 0, 1.5, 1e-3);
  });

  test("an even stream leaves a drift without drag, whatever the slack", () => {
    expect(present(cast({ lanes: even })).dragFree).toBeNull();
    near(present(cast({ lanes: even, slack: metres(0) })).nymphGain, 0);
  });

  test("a nymph cast past the dry towards the seam falls in quicker water: up and across, common practice", () => {
    const towards = present(cast({ distance: metres(5), upstream: degrees(30) }));
    expect(towards.nymphGain).toBeGreaterThan(0);
    expect(towards.cast.laneGradient).toBeGreaterThan(0);
    expect(present(cast({ distance: metres(9) })).nymphGain).toBeLessThan(0);
  });

  test("more slack is never less time, and reaches no less far", () => {
    const slack = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(slack, slack, fc.double({ min: -80, max: 80, noNaN: true }), (a, b, angle) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((s) =>
          present(cast({ slack: metres(s), upstream: degrees(angle) })),
        );
        expect(more?.dragFree ?? Infinity).toBeGreaterThanOrEqual(less?.dragFree ?? 0);
        expect(more?.reach ?? 0).toBeGreaterThanOrEqual(less?.reach ?? Infinity);
      }),
      { seed: 9, numRuns: 200 },
    );
  });
});

test("a cast straight up comes back past the angler and as far below", () => {
  const { reach, landing } = present(cast({ upstream: degrees(90), slack: metres(0) }));
  near(landing.across, 0);
  near(reach, 16);
});

test("straight across without slack it cannot drift at all", () => {
  near(present(cast({ slack: metres(0) })).reach, 0);
});

test.each([
  [{ distance: metres(0) }, "distance of the cast must be from 0.1 to 60 m, got 0"],
  [{ upstream: degrees(120) }, "direction of the cast must be from"],
  [{ lanes: [lane(0, 1)] }, "lanes must be two or more, got 1"],
  [{ lanes: [lane(3, 1), lane(2, 1)] }, "place of lane 2 must be farther than the lane before, got 2"],
  [{ distance: metres(13) }, "lanes must be given as far as the cast lands"],
  [{ turnover: 2 }, "turnover must be from -1 to 1, got 2"],
])("%o is refused", (wrong, message) => {
  expect(() => present(cast(wrong))).toThrow(message);
});
