import { describe, expect, test, vi } from "vitest";
import { waterColumn } from "../column/index.js";
import { settle } from "../drift/index.js";
import { fishWindow } from "../lie/index.js";
import { rig } from "../rig/index.js";
import { tippetStrength } from "../tackle/index.js";
import { metres, metresPerSecond, newtons } from "../units/index.js";
import { mostCandidates, rankSetups, type Stop } from "./index.js";
import { box, refusals, run, stop } from "./rank.fixture.js";
import { buildBodies, surveyBox } from "./survey.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const ranking = rankSetups(stop);
const refusedFor = (at: Stop, reason: string): number =>
  rankSetups(at).refused.find((r) => r.reason === reason)?.count ?? 0;

describe("hard limits", () => {
  const perDropper = box.dries.length * box.nymphs.length * box.tippets.length;

  test("every candidate is either refused for a reason or has a bound", () => {
    const window = fishWindow(run);
    const bodies = buildBodies(box, stop);
    const needs = { stop, box, bodies, window, runLength: 6, excessScale: 0.3, leastMargin: 1.5 };
    const ranked = surveyBox(needs).bound.filter((bound) => bound >= 0).length;
    const refused = refusals(ranking.refused);
    expect(ranking.candidates).toBe(perDropper * box.dropperLengths.length);
    expect(refused + ranked).toBe(ranking.candidates);
    expect(ranked).toBeGreaterThan(0);
  });

  test("what the shared curves refuse or keep, the settled drift of each candidate does as well", () => {
    const window = fishWindow(run);
    const bodies = buildBodies(box, stop);
    const field = surveyBox({ stop, box, bodies, window, runLength: 6, excessScale: 0.3, leastMargin: 1.5 });
    const differing: string[] = [];
    for (let index = 0; index < field.count; index++) {
      const { dry, nymph, tippet, dropper } = field.candidateAt(index);
      if (box.dropperLengths[dropper]! >= run.depth) continue;
      const line = bodies.lines[tippet]![dropper]!;
      const settled = settle(rig(bodies.floats[dry]!, { line, sinker: bodies.sinkers[nymph]! }), run);
      const above = window.high - settled.sinkers[0]!.heightAboveBed;
      const fits = settled.floatMargin >= 1.5 && above >= 0 && settled.regime === "hanging";
      // a curve may miss a height by a centimetre: what lies so near the edge of the window is judged by the full drift
      if (Math.abs(above) > 0.01 && fits !== field.estimate(index) >= 0) differing.push(`${index}`);
    }
    expect(differing).toEqual([]);
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
    expect(refusals(answer.refused)).toBe(answer.candidates);
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
