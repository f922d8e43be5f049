import { describe, expect, test } from "vitest";
import { waterColumn } from "../column/index.js";
import { fishWindow } from "../lie/index.js";
import { type Box, generalBox, tippetStrength } from "../tackle/index.js";
import { inches, metres, metresPerSecond, newtons, seconds } from "../units/index.js";
import { type Judgement, judge, mostCandidates, type Pieces, rankSetups, type Stop } from "./index.js";
import { inOrder } from "./judge.js";
import { buildBodies, surveyBox } from "./shortlist.js";

const run = waterColumn({
  depth: metres(0.9),
  surfaceSpeed: metresPerSecond(0.9),
  bed: { d84: metres(0.3) },
});
/** A third of the general box, so that a ranking takes no time. */
const box: Box = {
  dries: generalBox.dries.filter((_, i) => i % 3 === 0),
  nymphs: generalBox.nymphs.filter((_, i) => i % 2 === 0),
  tippets: generalBox.tippets,
  dropperLengths: [12, 18, 24, 30, 36, 48].map(inches),
};
const stop: Stop = { column: run, box };
const ranking = rankSetups(stop);
const judgedAt = (at: Stop, pieces: Pieces): Judgement =>
  judge(
    { stop: at, window: fishWindow(at.column, at.lie), runLength: at.runLength ?? 6, excessScale: 0.3 },
    pieces,
  );
const pair = ({ dry, nymph }: Pieces): string => `${dry.name} + ${nymph.name}`;
const refusedFor = (at: Stop, reason: string): number =>
  rankSetups(at).refused.find((r) => r.reason === reason)?.count ?? 0;

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

describe("hard limits", () => {
  const perDropper = box.dries.length * box.nymphs.length * box.tippets.length;

  test("every candidate is either refused for a reason or has a bound", () => {
    const window = fishWindow(run);
    const bodies = buildBodies(box, stop);
    const needs = { stop, box, bodies, window, runLength: 6, excessScale: 0.3, leastMargin: 1.5 };
    const ranked = surveyBox(needs).bound.filter((bound) => bound >= 0).length;
    const refused = ranking.refused.reduce((sum, { count }) => sum + count, 0);
    expect(ranking.candidates).toBe(perDropper * box.dropperLengths.length);
    expect(refused + ranked).toBe(ranking.candidates);
    expect(ranked).toBeGreaterThan(0);
  });

  test("a dropper as long as the water is deep", () => {
    // 36 and 48 in are above 0.9 m, 30 in is not
    expect(refusedFor(stop, "dropper-longer-than-depth")).toBe(2 * perDropper);
    for (const { dropper } of ranking.setups) expect(dropper).toBeLessThan(0.9);
  });

  test("a dropper that outlasts the leader", () => {
    const leaderStrength = newtons(14);
    const strong = box.tippets.filter((tippet) => tippetStrength(tippet) > leaderStrength).length;
    expect(strong).toBeGreaterThan(0);
    expect(strong).toBeLessThan(box.tippets.length);
    const weak: Stop = { ...stop, leaderStrength };
    // those of the four droppers that fit the water
    expect(refusedFor(weak, "dropper-outlasts-leader")).toBe((4 * perDropper * strong) / box.tippets.length);
    for (const { tippet } of rankSetups(weak).setups) {
      expect(tippetStrength(tippet)).toBeLessThanOrEqual(leaderStrength);
    }
    expect(rankSetups({ ...stop, leaderStrength: newtons(1) }).setups).toEqual([]);
  });

  test("a float margin below the least", () => {
    const strict = refusedFor({ ...stop, leastMargin: 4 }, "float-margin");
    expect(strict).toBeGreaterThan(refusedFor(stop, "float-margin"));
    for (const { floatMargin } of rankSetups({ ...stop, leastMargin: 4 }).setups) {
      expect(floatMargin).toBeGreaterThan(3.99);
    }
  });

  test("a fish out of reach of every dropper", () => {
    const deep = waterColumn({ depth: metres(4), surfaceSpeed: metresPerSecond(0.5), exponent: 6 });
    const answer = rankSetups({ ...stop, column: deep });
    expect(answer.setups).toEqual([]);
    expect(answer.refused).toContainEqual({ reason: "never-in-window", count: expect.any(Number) });
    expect(answer.refused.reduce((sum, { count }) => sum + count, 0)).toBe(answer.candidates);
  });
});

describe("the next change", () => {
  const lists = { dry: box.dries, nymph: box.nymphs, tippet: box.tippets } as const;
  /** The pieces with one of them changed to that of a label. */
  const apply = (pieces: Pieces, part: keyof Pieces, to: string): Pieces => {
    if (part === "dropper") {
      const dropper = box.dropperLengths.find((d) => `${Math.round(d * 100)} cm` === to);
      if (dropper === undefined) throw new Error(`no dropper ${to}`);
      return { ...pieces, dropper };
    }
    const piece = lists[part].find((p) => p.name === to);
    if (piece === undefined) throw new Error(`no ${part} ${to}`);
    return { ...pieces, [part]: piece };
  };

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
      const { dry, nymph, tippet, dropper } = setup;
      expect(next.to).not.toBe(next.from);
      const changed = judgedAt(stop, apply({ dry, nymph, tippet, dropper }, next.part, next.to));
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
    const counted = answer.refused.reduce((sum, { count }) => sum + count, 0);
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

  test("the general box serves where none is given", () => {
    const answer = rankSetups({ column: run, top: 1 });
    expect(answer.candidates).toBe(12 * 12 * 5 * 6);
    expect(answer.setups).toHaveLength(1);
  });
});

describe("refuses", () => {
  test.each(["dries", "nymphs", "tippets", "dropperLengths"] as const)("a box without %s", (list) => {
    expect(() => rankSetups({ ...stop, box: { ...box, [list]: [] } })).toThrow(
      `${list} of the box must be at least one, got 0`,
    );
  });

  test("more candidates than it can judge", () => {
    const dropperLengths = Array.from({ length: 100_001 }, () => metres(0.4));
    const one = {
      dries: box.dries.slice(0, 1),
      nymphs: box.nymphs.slice(0, 1),
      tippets: box.tippets.slice(0, 1),
    };
    expect(mostCandidates).toBe(100_000);
    expect(() => rankSetups({ ...stop, box: { ...one, dropperLengths } })).toThrow(
      "candidates of the box must be from 1 to 100000, got 100001",
    );
  });

  test.each([
    [{ top: 0 }, "setups to return must be from 1 to 50, got 0"],
    [{ top: 51 }, "setups to return must be from 1 to 50, got 51"],
    [{ runLength: metres(0) }, "length of the run must be from 0.1 to 1000 m, got 0"],
    [{ leastMargin: -1 }, "least float margin must be from 0 to 100, got -1"],
    [{ excessScale: metresPerSecond(0) }, "excess scale must be above 0 m/s, got 0"],
    [{ leaderStrength: newtons(0) }, "strength of the leader must be above 0 N, got 0"],
    [{ wind: metresPerSecond(50) }, "wind"],
    [{ lie: { holdingHeight: metres(1) } }, "holding height must be from 0 to 0.9 m, got 1"],
  ] as const)("%o", (wrong, message) => {
    expect(() => rankSetups({ ...stop, ...wrong })).toThrow(message);
  });
});
