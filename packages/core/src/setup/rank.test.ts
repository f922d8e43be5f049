import { describe, expect, test, vi } from "vitest";
import { metres, seconds } from "../units/index.js";
import { type Pieces, rankSetups } from "./index.js";
import { inOrder } from "./judge.js";
import { judgedAt, run, stop } from "./rank.fixture.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const ranking = rankSetups(stop);
const pair = ({ dry, nymph }: Pieces): string => `${dry.name} + ${nymph.name}`;

describe("the best setups", () => {
  test("are as many as asked for, placed in order", () => {
    expect(ranking.setups.map((s) => s.place)).toEqual([1, 2, 3, 4, 5]);
    expect(rankSetups({ ...stop, top: 2 }).setups).toHaveLength(2);
  });

  test("fall in effective seconds, ties of 1 % aside, and none is worthless", () => {
    const best = Math.max(...ranking.setups.map((s) => s.effectiveSeconds));
    ranking.setups.slice(1).forEach((setup, i) => {
      const before = ranking.setups[i]?.effectiveSeconds ?? 0;
      expect(setup.effectiveSeconds).toBeLessThan(before + 0.0101 * best);
    });
    for (const { effectiveSeconds, secondsInWindow } of ranking.setups) {
      expect(effectiveSeconds).toBeGreaterThan(0);
      expect(effectiveSeconds).toBeLessThanOrEqual(secondsInWindow);
    }
  });

  test("are of different pairs of flies", () => {
    expect(new Set(ranking.setups.map(pair)).size).toBe(5);
  });

  test("carry what the judgement of their pieces says", () => {
    for (const setup of ranking.setups) {
      const again = judgedAt(stop, setup);
      expect(setup.effectiveSeconds).toBe(again.effectiveSeconds);
      expect(setup.settled).toEqual(again.settled);
      expect(setup.floatMargin).toBeGreaterThanOrEqual(1.5);
      expect(setup.why.forces.map((f) => f.size)).toEqual(
        setup.why.forces.map((f) => f.size).sort((a, b) => b - a),
      );
      expect(setup.why.text).not.toBe("");
    }
  });

  test("are the same for the same question", () => {
    expect(JSON.stringify(rankSetups(stop))).toBe(JSON.stringify(ranking));
  });

  test("never promise that something is safe, and always say what nobody stated", () => {
    expect(ranking.cautions.join(" ")).toContain("local rules");
    expect(JSON.stringify([ranking.cautions, ranking.setups.map((s) => s.cautions)])).not.toMatch(
      /\bsafe\b/i,
    );
  });
});

describe("ties within a hundredth of the best", () => {
  const [first] = ranking.setups;
  if (first === undefined) throw new Error("nothing ranked");
  const quiet = { ...first, splash: 1e-5, dropper: metres(0.6) };
  const loud = { ...first, splash: 1e-4, dropper: metres(0.4) };

  test("go to the quieter one on glassy water, to the shorter dropper where the surface hides both", () => {
    expect(inOrder([loud, quiet], "glassy")).toEqual([quiet, loud]);
    expect(inOrder([quiet, loud], "broken")).toEqual([loud, quiet]);
  });

  test("are no ties when one is better by a tenth", () => {
    const better = { ...loud, effectiveSeconds: seconds(first.effectiveSeconds * 1.1) };
    expect(inOrder([quiet, better], "glassy")[0]).toBe(better);
  });
});

test("the general box serves where none is given", () => {
  const answer = rankSetups({ column: run, top: 1 });
  expect(answer.candidates).toBe(12 * 12 * 5 * 6);
  expect(answer.setups).toHaveLength(1);
});
