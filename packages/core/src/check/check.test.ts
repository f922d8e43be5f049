import { describe, expect, test, vi } from "vitest";
import { rankSetups } from "../setup/index.js";
import { generalBox } from "../tackle/index.js";
import { newtons } from "../units/index.js";
import { alterations } from "./alterations.js";
import { graveOf, randomCases, soundCases } from "./check.fixture.js";
import { demoRules, findingExamples, sound } from "./examples.fixture.js";
import {
  check,
  type Finding,
  type FindingCode,
  findingMessage,
  findingMessages,
  mostTrialDrifts,
  mostTrialRigs,
  remedyMessage,
} from "./index.js";
import type { Lever } from "./question.js";
import { faultsOfRemedies } from "./remedies.fixture.js";
import { look } from "./seen.js";

// dozens of rigs in each test, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const codesOf = (findings: readonly Finding[]): readonly FindingCode[] => findings.map(({ code }) => code);

describe.each(Object.entries(findingExamples))("%s", (code, { pieces, stop, rules }) => {
  const { findings } = check(pieces, stop, rules);
  const finding = findings.find((one) => one.code === code);

  test("comes of its example, and says so in words", () => {
    expect(codesOf(findings)).toContain(code);
    const text = findingMessage(finding!);
    expect(text).toMatch(/^[A-Z0-9].*\.$/);
    expect(text).not.toMatch(/[{}]|undefined|NaN/);
    expect(remedyMessage(finding!.remedy)).toMatch(/^.+\.$/);
  });

  test("has a remedy", () => expect(finding?.remedy.kind).not.toBe("none"));
});

test("the catalogue has each code once, and no other", () => {
  expect(Object.keys(findingMessages).sort()).toEqual(Object.keys(findingExamples).sort());
});

test("a sound rig at a well described stop has no finding at all", () => {
  expect(check(sound.pieces, sound.stop, sound.rules).findings).toEqual([]);
});

test("a rig without faults yields no fix and no stop", () => {
  for (const one of soundCases(23, 60)) expect(graveOf(check(...one).findings)).toEqual([]);
});

test("what a ranking puts first has nothing to stop or to fix but a dry that floats by its film", () => {
  const stop = { ...sound.stop, leaderStrength: newtons(16) };
  const box = { ...generalBox, dries: generalBox.dries.filter((_, i) => i % 4 === 0) };
  const [best] = rankSetups({ ...stop, box, top: 1 }).setups;
  const { findings } = check(best!, sound.stop, demoRules);
  expect(graveOf(findings).filter(({ code }) => code !== "dry-floats-by-film")).toEqual([]);
});

test("the gravest stand first, and the cautions are always there", () => {
  const { findings, cautions } = check(sound.pieces, {
    column: sound.stop.column,
    runLength: sound.stop.runLength!,
  });
  expect(cautions.join(" ")).toMatch(/Wading.*warm water.*hooks/is);
  const order = ["stop", "fix", "watch", "note"];
  const ranks = findings.map(({ severity }) => order.indexOf(severity));
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
});

describe("remedies", () => {
  test("made, remove the finding or lower it, and violate no stated rule", () => {
    const { faults, violations, made } = faultsOfRemedies(randomCases(11, 12));
    expect({ faults, violations }).toEqual({ faults: [], violations: [] });
    expect(made).toBeGreaterThan(30);
  });

  test("say what changes, by how much and to what effect", () => {
    const { pieces, stop } = findingExamples["dry-overloaded"];
    const found = check(pieces, stop, demoRules).findings.find(({ code }) => code === "dry-overloaded");
    expect(found?.remedy).toMatchObject({
      kind: "retie",
      effect: { before: { name: "margin" }, after: { name: "margin" }, left: null },
    });
    if (found?.remedy.kind !== "retie") throw new Error("no remedy");
    expect(found.remedy.effect.after?.value).toBeGreaterThanOrEqual(1.5);
    expect(found.remedy.effect.before?.value).toBeLessThan(1.5);
  });
});

describe("the work of a check", () => {
  const cases = randomCases(31, 12);

  test("is said: the rig in hand, and each that was tried, within what is published for it", () => {
    const works = cases.map(([pieces, stop, rules]) => check(pieces, stop, rules).work);
    for (const { settled, judged } of works) {
      expect(judged).toBeGreaterThanOrEqual(1);
      expect(judged).toBeLessThanOrEqual(1 + mostTrialDrifts);
      expect(settled).toBeGreaterThanOrEqual(judged);
      expect(settled).toBeLessThanOrEqual(1 + mostTrialRigs);
    }
    expect(Math.max(...works.map(({ settled }) => settled))).toBeGreaterThan(1);
    const { work } = check(sound.pieces, sound.stop);
    expect(work.settled).toBeLessThan(Math.max(...works.map(({ settled }) => settled)));
  });

  test("never has to end for its number of rigs: there are fewer alterations", () => {
    const levers: Readonly<Record<Lever, true>> = {
      dropper: true,
      tippet: true,
      bead: true,
      wire: true,
      knot: true,
      dry: true,
      hold: true,
      cast: true,
      soften: true,
      run: true,
      slack: true,
      obey: true,
    };
    for (const [pieces, stop] of cases) {
      const made = Object.keys(levers).flatMap((lever) => alterations(lever as Lever, look(pieces, stop)));
      expect(made.length).toBeGreaterThan(0);
      expect(made.length).toBeLessThanOrEqual(mostTrialRigs);
    }
  });
});
