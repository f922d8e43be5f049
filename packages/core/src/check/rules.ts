/** Rules that a caller or an agency states for a place and a date, and what they say of a rig. Nothing is legal until a clause says so. */

import { type Celsius, type Kilograms, QuantityError } from "../units/index.js";
import { checkDate, checkTime, checkWindow, inWindow, type Window } from "./rule-windows.js";

/** The one version of rules that this engine understands. */
export const rulesVersion = 1;

/** What rules may speak of. */
export const ruleTopics = [
  "flies",
  "hooks",
  "barbless",
  "added-weight",
  "lead",
  "bait",
  "season",
  "hours",
  "temperature",
] as const;
export type RuleTopic = (typeof ruleTopics)[number];

interface ClauseOf<Topic extends RuleTopic> {
  readonly topic: Topic;
  /** Names the clause in the answer. */
  readonly id: string;
  /** As its author words it. */
  readonly text?: string;
}

/** At most so many. */
interface CountClause extends ClauseOf<"flies" | "hooks"> {
  readonly most: number;
}
interface BarblessClause extends ClauseOf<"barbless"> {
  readonly required: boolean;
}
/** Beads, wire and shot together; 0 forbids them. */
interface WeightClause extends ClauseOf<"added-weight"> {
  readonly most: Kilograms;
}
interface SubstanceClause extends ClauseOf<"lead" | "bait"> {
  readonly allowed: boolean;
}
/** Days MM-DD of each year, both inside, or hours HH:MM of each day, the last outside. `to` before `from` runs over new year or midnight. */
interface WindowClause extends ClauseOf<"season" | "hours"> {
  readonly during: "open" | "closed";
  readonly windows: readonly Window[];
}
/** Closed at this temperature of the water and above. */
interface TemperatureClause extends ClauseOf<"temperature"> {
  readonly closedFrom: Celsius;
}

export type Clause =
  | CountClause
  | BarblessClause
  | WeightClause
  | SubstanceClause
  | WindowClause
  | TemperatureClause;

/** What applies at a place, as somebody states it. */
export interface Rules {
  readonly version: number;
  readonly place: string;
  /** Who says so. */
  readonly statedBy: string;
  /** First and last day YYYY-MM-DD that it applies; outside them everything is unknown. */
  readonly inForce?: Window;
  readonly clauses: readonly Clause[];
}

/** What rules ask about. What is absent is unknown. */
export interface RuleFacts {
  readonly flies?: number;
  readonly hooks?: number;
  readonly barbless?: boolean;
  /** Beads, wire and shot, between these masses. */
  readonly addedWeight?: { readonly least: Kilograms; readonly most: Kilograms };
  readonly lead?: boolean;
  readonly bait?: boolean;
  /** YYYY-MM-DD, where the water is. */
  readonly date?: string;
  /** HH:MM on the clock there. */
  readonly time?: string;
  /** Of the water. */
  readonly temperature?: Celsius;
}

export type RuleVerdict = "allowed" | "not-allowed" | "unknown";

export interface RuleAnswer {
  readonly topic: RuleTopic;
  readonly answer: RuleVerdict;
  readonly because: "clause" | "no-rules" | "no-clause" | "fact-missing" | "not-in-force";
  /** The clause that decided, or that asks for the missing fact. */
  readonly clause: Pick<Clause, "id" | "text"> | null;
  readonly missing: keyof RuleFacts | null;
}

/** Each topic held against the clauses that speak of it: not-allowed where one forbids, else unknown where one cannot be read or none speaks, else allowed.
 *  Throws QuantityError for rules of another version, days or hours that do not exist, or counts that cannot be.
 *  @example judgeRules(undefined, { flies: 2 })[0]?.answer // => "unknown" */
export function judgeRules(rules: Rules | undefined, facts: RuleFacts): readonly RuleAnswer[] {
  checkFacts(facts);
  if (rules === undefined) return ruleTopics.map((topic) => unknown(topic, "no-rules"));
  checkRules(rules);
  const { inForce } = rules;
  if (inForce !== undefined && facts.date === undefined)
    return ruleTopics.map((topic) => ({ ...unknown(topic, "fact-missing"), missing: "date" }));
  if (inForce !== undefined && (facts.date! < inForce.from || facts.date! > inForce.to))
    return ruleTopics.map((topic) => unknown(topic, "not-in-force"));
  return ruleTopics.map((topic) => judgeTopic(topic, rules, facts));
}

const order: readonly RuleVerdict[] = ["not-allowed", "unknown", "allowed"];

function judgeTopic(topic: RuleTopic, { clauses }: Rules, facts: RuleFacts): RuleAnswer {
  const answers = clauses
    .filter((clause) => clause.topic === topic)
    .map((clause) => judgeClause(clause, facts));
  const answer = order.find((verdict) => answers.some((one) => one.answer === verdict));
  return answers.find((one) => one.answer === answer) ?? unknown(topic, "no-clause");
}

function judgeClause(clause: Clause, facts: RuleFacts): RuleAnswer {
  const { topic, id, text } = clause;
  const named = text === undefined ? { id } : { id, text };
  const says = (fact: keyof RuleFacts, allowed: boolean | undefined): RuleAnswer =>
    allowed === undefined
      ? { topic, answer: "unknown", because: "fact-missing", clause: named, missing: fact }
      : {
          topic,
          answer: allowed ? "allowed" : "not-allowed",
          because: "clause",
          clause: named,
          missing: null,
        };
  const given = <T>(value: T | undefined, allows: (value: T) => boolean | undefined): boolean | undefined =>
    value === undefined ? undefined : allows(value);
  switch (clause.topic) {
    case "flies":
    case "hooks":
      return says(
        clause.topic,
        given(facts[clause.topic], (count) => count <= clause.most),
      );
    case "barbless":
      return says("barbless", clause.required ? given(facts.barbless, (is) => is) : true);
    case "added-weight":
      return says(
        "addedWeight",
        given(facts.addedWeight, (weight) => within(weight, clause.most)),
      );
    case "lead":
    case "bait":
      return says(clause.topic, clause.allowed ? true : given(facts[clause.topic], (is) => !is));
    case "season":
      return says(
        "date",
        given(facts.date, (date) => isOpen(clause, date.slice(5), "day")),
      );
    case "hours":
      return says(
        "time",
        given(facts.time, (time) => isOpen(clause, time, "hour")),
      );
    case "temperature":
      return says(
        "temperature",
        given(facts.temperature, (is) => is < clause.closedFrom),
      );
  }
}

/** Undefined where the limit lies inside what the weight may be. */
function within({ least, most }: NonNullable<RuleFacts["addedWeight"]>, limit: number): boolean | undefined {
  if (most <= limit) return true;
  return least > limit ? false : undefined;
}

function isOpen({ during, windows }: WindowClause, at: string, of: "day" | "hour"): boolean {
  return windows.some((window) => inWindow(window, at, of)) === (during === "open");
}

function unknown(topic: RuleTopic, because: RuleAnswer["because"]): RuleAnswer {
  return { topic, answer: "unknown", because, clause: null, missing: null };
}

function checkRules({ version, inForce, clauses }: Rules): void {
  if (version !== rulesVersion)
    throw new QuantityError(
      "version of the rules",
      `${rulesVersion}, the one this engine understands`,
      version,
    );
  if (inForce !== undefined) {
    checkDate("first day that the rules apply", inForce.from);
    checkDate("last day that the rules apply", inForce.to);
  }
  clauses.forEach((clause, i) => {
    checkClause(clause, `clause ${i + 1}`);
  });
}

function checkClause(clause: Clause, name: string): void {
  if (!ruleTopics.includes(clause.topic))
    throw new QuantityError(`topic of ${name}`, `one of ${ruleTopics.join(", ")}`, clause.topic);
  if (clause.topic === "flies" || clause.topic === "hooks") checkCount(`most of ${name}`, clause.most);
  if (clause.topic === "added-weight" && !(clause.most >= 0))
    throw new QuantityError(`most of ${name}`, "0 kg or more", clause.most);
  if (clause.topic === "season" || clause.topic === "hours") {
    if (clause.windows.length === 0) throw new QuantityError(`windows of ${name}`, "at least one", 0);
    for (const window of clause.windows)
      checkWindow(`window of ${name}`, window, clause.topic === "season" ? "day" : "hour");
  }
}

function checkFacts({ flies, hooks, addedWeight, date, time }: RuleFacts): void {
  if (addedWeight !== undefined && !(addedWeight.least >= 0 && addedWeight.most >= addedWeight.least))
    throw new QuantityError("most of the added weight", `at least ${addedWeight.least} kg`, addedWeight.most);
  if (flies !== undefined) checkCount("flies", flies);
  if (hooks !== undefined) checkCount("hooks", hooks);
  if (date !== undefined) checkDate("date", date);
  if (time !== undefined) checkTime("time of day", time);
}

function checkCount(name: string, count: number): void {
  if (!(Number.isInteger(count) && count >= 0 && count <= 100))
    throw new QuantityError(name, "a whole number from 0 to 100", count);
}
