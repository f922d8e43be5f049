import { describe, expect, test, vi } from "vitest";
import { waterColumn } from "../column/index.js";
import { inches, metres, metresPerSecond, newtons } from "../units/index.js";
import { type Pieces, rankSetups } from "./index.js";
import { box, judgedAt, refusals, stop } from "./rank.fixture.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const ranking = rankSetups(stop);

describe("the next change", () => {
  test("gains when it is made, by as much as it says", () => {
    const poor = {
      dry: box.dries[0]!,
      nymph: box.nymphs.at(-1)!,
      tippet: box.tippets[0]!,
      dropper: inches(12),
    };
    const { inHand, setups } = rankSetups({ ...stop, inHand: poor, top: 12 });
    const offered = [...setups, ...(inHand === null ? [] : [inHand])].flatMap((setup) =>
      setup.next === null ? [] : [{ setup, next: setup.next }],
    );
    expect(inHand?.next).not.toBeNull();
    for (const { setup, next } of offered) {
      const before = judgedAt(stop, setup);
      const changed = judgedAt(stop, next.to);
      const others = (["dry", "nymph", "tippet", "dropper"] as const).filter((part) => part !== next.part);
      for (const part of others) expect(next.to[part]).toBe(setup[part]);
      expect(next.to[next.part]).not.toBe(setup[next.part]);
      expect(next.gain).toBeGreaterThan(0);
      expect(Math.abs(changed.effectiveSeconds - before.effectiveSeconds - next.gain)).toBeLessThan(1e-9);
      expect(next.cost).not.toBe("");
    }
  });
});

describe("the rig in hand", () => {
  test("is first or second when it is the best there is", () => {
    const [best] = ranking.setups;
    if (best === undefined) throw new Error("nothing ranked");
    const { inHand } = rankSetups({ ...stop, inHand: best });
    expect(inHand).toMatchObject({ placeIsExact: true, effectiveSeconds: best.effectiveSeconds });
    expect(inHand?.place).toBeLessThanOrEqual(2);
  });

  test("is placed far down when it is poor, by estimate", () => {
    const poor: Pieces = {
      dry: { name: "small dry", size: 18, style: "foam" },
      nymph: { name: "bare hook", size: 18 },
      tippet: { material: "nylon", diameter: metres(0.3e-3) },
      dropper: metres(0.2),
    };
    const { inHand } = rankSetups({ ...stop, inHand: poor });
    expect(inHand?.place).toBeGreaterThan(5);
    expect(inHand?.place).toBeLessThanOrEqual(ranking.candidates + 1);
    expect(inHand?.effectiveSeconds).toBeLessThan(ranking.setups.at(-1)?.effectiveSeconds ?? 0);
  });

  test("is judged though it breaks a hard limit, and told so", () => {
    const heavy: Pieces = {
      dry: { name: "small dry", size: 16, style: "low-profile" },
      nymph: { name: "heavy nymph", size: 8, bead: { diameter: metres(4.6e-3), material: "tungsten" } },
      tippet: { material: "nylon", diameter: metres(0.3e-3) },
      dropper: metres(1.2),
    };
    const { inHand } = rankSetups({ ...stop, inHand: heavy, leaderStrength: newtons(5) });
    const codes = inHand?.cautions.map(({ code }) => code);
    expect(codes).toContain("drowns");
    expect(codes).toContain("longer-than-deep");
    expect(codes).toContain("dropper-may-outlast-leader");
  });

  test("is absent when nobody has one", () => expect(ranking.inHand).toBeNull());
});

describe("any water is answered", () => {
  const column = (depth: number, speed: number) =>
    waterColumn({ depth: metres(depth), surfaceSpeed: metresPerSecond(speed), exponent: 6 });

  test.each([
    ["still", 0.9, 0],
    ["thin", 0.2, 0.5],
    ["deep and slow", 4, 0.05],
    ["fast", 0.6, 3],
  ])("%s water", (_, depth, speed) => {
    const [dry, nymph, tippet] = [box.dries[0]!, box.nymphs[0]!, box.tippets[0]!];
    const answer = rankSetups({
      ...stop,
      column: column(depth, speed),
      inHand: { dry, nymph, tippet, dropper: metres(0.3) },
    });
    const counted = refusals(answer.refused);
    expect(counted).toBeLessThanOrEqual(answer.candidates);
    expect(answer.inHand?.place).toBeGreaterThanOrEqual(1);
    for (const { effectiveSeconds, floatMargin } of [...answer.setups, answer.inHand!]) {
      expect(Number.isFinite(effectiveSeconds)).toBe(true);
      expect(floatMargin).toBeGreaterThan(0);
    }
  });

  test("a wind against the stream holds the dry back, one with it drives it on", () => {
    const inHand: Pieces = {
      dry: box.dries[0]!,
      nymph: box.nymphs.at(-1)!,
      tippet: box.tippets[0]!,
      dropper: inches(18),
    };
    const speedIn = (wind: number): number =>
      rankSetups({ ...stop, inHand, wind: metresPerSecond(wind) }).inHand?.settled.driftSpeed ?? Number.NaN;
    expect(speedIn(-8)).toBeLessThan(speedIn(0));
    expect(speedIn(8)).toBeGreaterThan(speedIn(0));
  });
});
