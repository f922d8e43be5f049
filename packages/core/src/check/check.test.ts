import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { waterColumn } from "../column/index.js";
import { rankSetups } from "../setup/index.js";
import { generalBox } from "../tackle/index.js";
import { celsius, metres, metresPerSecond, newtons } from "../units/index.js";
import { alterations } from "./alterations.js";
import { randomCases } from "./check.fixture.js";
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

test("a sound rig on other sound water has nothing to stop or to fix", () => {
  const seen = fc.record({
    depth: fc.double({ min: 0.75, max: 1, noNaN: true }),
    speed: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    bed: fc.constantFrom("sand", "granule", "pebble", "cobble"),
    dropper: fc.integer({ min: 40, max: 55 }),
    style: fc.constantFrom("foam", "hair", "yarn"),
    size: fc.constantFrom(8, 10),
  });
  fc.assert(
    fc.property(seen, ({ depth, speed, bed, dropper, style, size }) => {
      const column = waterColumn({
        depth: metres(depth),
        surfaceSpeed: metresPerSecond(speed),
        bed,
        temperature: celsius(11),
      });
      const dry = { name: `${style} dry ${size}`, style, size };
      const { findings } = check(
        { ...sound.pieces, dry, dropper: metres(dropper / 100) },
        // a product of 0.6 m²/s is where the first classification of floods says: not for people
        { ...sound.stop, column, wades: depth * speed < 0.6 },
        demoRules,
      );
      expect(findings.filter(({ severity }) => severity === "stop" || severity === "fix")).toEqual([]);
    }),
    { seed: 23, numRuns: 60 },
  );
});

test("what a ranking puts first has nothing to stop or to fix but a dry that floats by its film", () => {
  const stop = { ...sound.stop, leaderStrength: newtons(16) };
  const box = { ...generalBox, dries: generalBox.dries.filter((_, i) => i % 4 === 0) };
  const [best] = rankSetups({ ...stop, box, top: 1 }).setups;
  const { findings } = check(best!, sound.stop, demoRules);
  const grave = findings.filter(({ severity }) => severity === "stop" || severity === "fix");
  expect(grave.filter(({ code }) => code !== "dry-floats-by-film")).toEqual([]);
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
  test("made, remove the finding or lower it, and break no stated rule", () => {
    const { faults, made } = faultsOfRemedies(randomCases(11, 12));
    expect(faults).toEqual([]);
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
