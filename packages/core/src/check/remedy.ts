/** The smallest change that answers a finding: tried on the model, and never one that swaps a fault for another or breaks a stated rule. */

import { type Alteration, alterations, holdSteps } from "./alterations.js";
import type { Effect, Remedy } from "./finding.js";
import { type Lever, type Question, type Reading, rank } from "./question.js";
import { look, type Seen } from "./seen.js";

export interface Asked {
  readonly question: Question;
  readonly reading: Reading | null;
}

/** Asks every question. */
export function askAll(questions: readonly Question[], seen: Seen): readonly Asked[] {
  return questions.map((question) => ({ question, reading: question.ask(seen) }));
}

/** The most whole drifts that the remedies of one check may take; what is not tried is not offered. */
export const mostTrialDrifts = 40;
/** The most rigs that they may settle: more than there are alterations of one rig. */
export const mostTrialRigs = 150;

export interface Remedies {
  readonly of: (one: Asked) => Remedy;
  /** The rigs that were tried so far. */
  readonly tried: readonly Seen[];
}

/** An alteration with its answers, each computed once: undefined where it would take a drift too many. */
interface Trial {
  readonly alteration: Alteration;
  readonly answer: (question: Question) => Reading | null | undefined;
}

/** Finds remedies for a rig of which everything has been asked. */
export function remedies(at: Seen, asked: readonly Asked[]): Remedies {
  const tried: Seen[] = [];
  const trialsOf = trials(at, tried);
  const others = [...asked].sort(
    (a, b) => Number(a.question.drifts ?? false) - Number(b.question.drifts ?? false),
  );
  const of: Remedies["of"] = ({ question, reading }) => {
    const trialsBy = (levers: readonly Lever[]): readonly Trial[] =>
      levers.flatMap(trialsOf).sort((a, b) => a.alteration.steps - b.alteration.steps);
    const before = rank(reading?.severity ?? null);
    // no other question may get worse; or none to a fault; or, where the rig must not be fished as it is, none to as bad
    const limits = [rank("note"), rank("fix"), rank("stop")].slice(0, before === rank("stop") ? 3 : 2);
    for (const limit of limits) {
      const best = (levers: readonly Lever[]): Found | null =>
        smallest(trialsBy(levers), question, before, (trial) => isWorse(others, question, trial, limit));
      // what a hold needs is long in the finding: not where a smaller change answers
      const quick = best(question.levers.filter((lever) => lever !== "hold"));
      const answers = quick !== null && quick.alteration.steps < holdSteps && quick.after.severity === null;
      const found = answers ? quick : best(question.levers);
      if (found === null) continue;
      const { alteration, after } = found;
      const { severity: left, numbers } = after;
      return remedyOf(alteration, { before: reading?.numbers[0] ?? null, after: numbers[0] ?? null, left });
    }
    return { kind: "none", tried: trialsBy(question.levers).length };
  };
  return { of, tried };
}

interface Found {
  readonly alteration: Alteration;
  readonly after: Reading;
}

/** The fewest steps after which the question finds nothing; where none does, the one that lowers it most. */
function smallest(
  all: readonly Trial[],
  question: Question,
  before: number,
  isWorse: (trial: Trial) => boolean,
): Found | null {
  let best: Found | null = null;
  for (const trial of all) {
    const after = trial.answer(question);
    if (after === null || after === undefined) continue;
    const left = rank(after.severity);
    if (left >= (best === null ? before : rank(best.after.severity)) || isWorse(trial)) continue;
    best = { alteration: trial.alteration, after };
    if (left === 0) break;
  }
  return best;
}

/** Whether another question finds more than before and at least `limit`, or a rule about what was changed is still broken. */
function isWorse(others: readonly Asked[], own: Question, trial: Trial, limit: number): boolean {
  const { lever } = trial.alteration;
  return others.some(({ question, reading }) => {
    if (question === own || reading === null) return false;
    const now = trial.answer(question);
    if (now === undefined) return true;
    const found = rank(now?.severity ?? null);
    if (now?.code === "rule-forbids" && found === rank("stop") && question.levers.includes(lever))
      return true;
    return found >= limit && found > rank(reading.severity);
  });
}

/** The trials of each lever, made once; they share what rigs and drifts there are. */
function trials(at: Seen, tried: Seen[]): (lever: Lever) => readonly Trial[] {
  const made = new Map<Lever, readonly Trial[]>();
  let drifts = 0;
  const trialOf = (alteration: Alteration): Trial => {
    const answers = new Map<Question, Reading | null>();
    let seen: Seen | undefined;
    let drifted = false;
    const answer = (question: Question): Reading | null | undefined => {
      const known = answers.get(question);
      if (known !== undefined) return known;
      if (seen === undefined && tried.length >= mostTrialRigs) return undefined;
      if (question.drifts && !drifted) {
        if (drifts >= mostTrialDrifts) return undefined;
        drifts++;
        drifted = true;
      }
      if (seen === undefined) {
        seen = look(alteration.pieces, alteration.stop, at);
        tried.push(seen);
      }
      const found = question.ask(seen);
      answers.set(question, found);
      return found;
    };
    return { alteration, answer };
  };
  return (lever) => {
    const all = made.get(lever) ?? alterations(lever, at).map(trialOf);
    made.set(lever, all);
    return all;
  };
}

function remedyOf({ what, pieces, stop }: Alteration, effect: Effect): Remedy {
  return "part" in what
    ? { kind: "retie", ...what, pieces, effect }
    : { kind: "fish", ...what, stop, effect };
}
