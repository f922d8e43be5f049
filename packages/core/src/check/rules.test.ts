import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { celsius, grams, kilograms, millimetres, QuantityError } from "../units/index.js";
import { randomRules } from "./check.fixture.js";
import { demoRules, sound } from "./examples.fixture.js";
import { type Clause, judgeRules, type RuleFacts, type Rules, ruleTopics } from "./index.js";
import { factsOf } from "./rule-facts.js";

const runs = { seed: 17, numRuns: 300 };
const of = (clause: Clause): Rules => ({ ...demoRules, clauses: [clause] });
const answers = (rules: Rules | undefined, facts: RuleFacts) =>
  Object.fromEntries(judgeRules(rules, facts).map((one) => [one.topic, one]));
const season = (from: string, to: string, during: "open" | "closed" = "open"): Rules =>
  of({ topic: "season", id: "s", during, windows: [{ from, to }] });
const hours = (from: string, to: string): Rules =>
  of({ topic: "hours", id: "h", during: "closed", windows: [{ from, to }] });

const facts: RuleFacts = {
  flies: 2,
  hooks: 2,
  barbless: true,
  addedWeight: { least: grams(0.1), most: grams(0.2) },
  lead: false,
  bait: false,
  date: "2026-06-12",
  time: "09:30",
  temperature: celsius(12),
};
const anyFacts = fc.subarray(Object.entries(facts)).map((kept): RuleFacts => Object.fromEntries(kept));
const needs = { "added-weight": "addedWeight", season: "date", hours: "time" } as const;
const factOf = (topic: string): string => Object.entries(needs).find(([one]) => one === topic)?.[1] ?? topic;

describe("an unknown rule never becomes allowed", () => {
  test("with no rules at all, whatever is known", () => {
    fc.assert(
      fc.property(anyFacts, (known) => {
        for (const { answer, because } of judgeRules(undefined, known))
          expect([answer, because]).toEqual(["unknown", "no-rules"]);
      }),
      runs,
    );
  });

  test("where no clause speaks of it, or the fact that it asks for is missing", () => {
    const some = fc.tuple(anyFacts, fc.subarray([...demoRules.clauses]), fc.integer().map(randomRules));
    fc.assert(
      fc.property(some, ([known, kept, others]) => {
        const clauses = [...kept, ...others.clauses];
        for (const { topic, answer } of judgeRules({ ...demoRules, clauses }, known)) {
          const spoken = clauses.filter((clause) => clause.topic === topic);
          if (spoken.length === 0) expect(answer).toBe("unknown");
          const free = spoken.every(
            (clause) =>
              (clause.topic === "lead" && clause.allowed) ||
              (clause.topic === "barbless" && !clause.required),
          );
          if (!Object.hasOwn(known, factOf(topic)) && !free) expect(answer).not.toBe("allowed");
        }
      }),
      runs,
    );
  });

  test("leaving out a fact or a clause never turns an answer into allowed", () => {
    const some = fc.tuple(anyFacts, fc.subarray([...demoRules.clauses]));
    fc.assert(
      fc.property(some, ([known, clauses]) => {
        const full = answers(demoRules, facts);
        for (const { topic, answer } of judgeRules({ ...demoRules, clauses }, known))
          if (answer === "allowed") expect(full[topic]?.answer).toBe("allowed");
      }),
      runs,
    );
  });

  test("nor on a day for which nobody stated the rules", () => {
    const rules = { ...demoRules, inForce: { from: "2026-01-01", to: "2026-12-31" } };
    expect(answers(rules, facts).flies?.answer).toBe("allowed");
    expect(answers(rules, { ...facts, date: "2027-01-01" }).flies).toMatchObject({
      answer: "unknown",
      because: "not-in-force",
    });
    const { date: _, ...undated } = facts;
    expect(answers(rules, undated).flies).toMatchObject({ answer: "unknown", missing: "date" });
  });
});

describe("the clause that decides", () => {
  test("is named, with its words", () => {
    expect(answers(demoRules, { ...facts, barbless: false }).barbless).toEqual({
      topic: "barbless",
      answer: "not-allowed",
      because: "clause",
      clause: { id: "barbless", text: "barbless hooks only" },
      missing: null,
    });
  });

  test("forbids though another allows", () => {
    const clauses: readonly Clause[] = [
      { topic: "flies", id: "wide", most: 3 },
      { topic: "flies", id: "narrow", most: 1 },
    ];
    expect(answers({ ...demoRules, clauses }, facts).flies).toMatchObject({
      answer: "not-allowed",
      clause: { id: "narrow" },
    });
  });

  test("cannot be read where the limit lies within what the weight may be", () => {
    const limit = (most: number) =>
      answers(of({ topic: "added-weight", id: "w", most: kilograms(most) }), facts)["added-weight"]?.answer;
    expect([0.3e-3, 0.15e-3, 0.05e-3].map(limit)).toEqual(["allowed", "unknown", "not-allowed"]);
  });
});

describe("days and hours", () => {
  test.each([
    ["03-15", "10-31", "2026-03-14", "not-allowed"],
    ["03-15", "10-31", "2026-03-15", "allowed"],
    ["03-15", "10-31", "2026-10-31", "allowed"],
    ["03-15", "10-31", "2026-11-01", "not-allowed"],
    ["10-01", "02-29", "2027-01-01", "allowed"],
    ["10-01", "02-29", "2028-02-29", "allowed"],
    ["10-01", "02-29", "2027-03-01", "not-allowed"],
    ["10-01", "02-29", "2027-09-30", "not-allowed"],
  ])("open from %s to %s: %s is %s", (from, to, date, expected) => {
    expect(answers(season(from, to), { date }).season?.answer).toBe(expected);
    const opposite = expected === "allowed" ? "not-allowed" : "allowed";
    expect(answers(season(from, to, "closed"), { date }).season?.answer).toBe(opposite);
  });

  test.each([
    ["22:00", "05:00", "21:59", "allowed"],
    ["22:00", "05:00", "22:00", "not-allowed"],
    ["22:00", "05:00", "04:59", "not-allowed"],
    ["22:00", "05:00", "05:00", "allowed"],
    ["14:00", "24:00", "23:59", "not-allowed"],
    ["14:00", "24:00", "13:59", "allowed"],
  ])("closed from %s to %s: %s is %s", (from, to, time, expected) => {
    expect(answers(hours(from, to), { time }).hours?.answer).toBe(expected);
  });

  test.each(["2026-02-29", "2026-13-01", "2026-00-10", "2026-06-31", "12 June", "2026-6-1", "1900-02-29"])(
    "%s is no day",
    (date) => {
      expect(() => judgeRules(undefined, { date })).toThrow(
        "date must be a day of the calendar as YYYY-MM-DD",
      );
    },
  );

  test.each(["24:00", "9:30", "12:60", "noon", "12:30:00"])("%s is no time", (time) => {
    expect(() => judgeRules(undefined, { time })).toThrow("time of day must be a time as HH:MM");
  });

  test.each([
    season("2026-03-15", "10-31"),
    season("02-30", "10-31"),
    hours("24:00", "05:00"),
    hours("05:00", "05:00"),
    of({ topic: "hours", id: "h", during: "open", windows: [] }),
  ])("a window that cannot be is refused: %o", (rules) => {
    expect(() => judgeRules(rules, {})).toThrow(QuantityError);
  });
});

describe("rules that this engine does not understand", () => {
  test.each([0, 2, 1.5, 99])("version %d is refused by name", (version) => {
    expect(() => judgeRules({ ...demoRules, version }, facts)).toThrow(
      `version of the rules must be 1, the one this engine understands, got ${version}`,
    );
  });

  test("a topic that it does not know is refused, and not passed over", () => {
    const topic = "drones" as "flies";
    expect(() => judgeRules(of({ topic, id: "x", most: 1 }), facts)).toThrow(
      "topic of clause 1 must be one of",
    );
  });

  test.each([-1, 1.5, Number.NaN])("%d flies are refused", (most) => {
    expect(() => judgeRules(of({ topic: "flies", id: "x", most }), facts)).toThrow(QuantityError);
    expect(() => judgeRules(undefined, { flies: most })).toThrow("flies must be");
  });
});

describe("what a rig tells by itself", () => {
  const { pieces, stop } = sound;

  test("two flies on a hook each, the mass of its bead, no lead; the rest has to be said", () => {
    const { facts: _, ...bare } = stop;
    const known = factsOf(pieces, bare);
    expect(Object.keys(known).sort()).toEqual(["addedWeight", "flies", "hooks", "lead", "temperature"]);
    expect(known).toMatchObject({ flies: 2, hooks: 2, lead: false });
    expect(known.addedWeight?.least).toBeLessThan(0.08e-3);
    expect(known.addedWeight?.most).toBeGreaterThan(0.08e-3);
  });

  test("a weighed nymph does not say what it holds, and brass may hold lead", () => {
    const weighed = { ...pieces, nymph: { ...pieces.nymph, measured: { mass: grams(0.2) } } };
    expect(factsOf(weighed, stop)).not.toHaveProperty("addedWeight");
    expect(factsOf(weighed, stop)).not.toHaveProperty("lead");
    const brass = { diameter: millimetres(2.3), material: "brass" } as const;
    expect(factsOf({ ...pieces, nymph: { ...pieces.nymph, bead: brass } }, stop)).not.toHaveProperty("lead");
  });

  test("what the caller states goes before it", () => {
    expect(factsOf(pieces, { ...stop, facts: { hooks: 4, flies: 3 } })).toMatchObject({ hooks: 4, flies: 3 });
  });

  test("every topic gets one answer, in one order", () => {
    expect(judgeRules(demoRules, facts).map(({ topic }) => topic)).toEqual(ruleTopics);
  });
});
