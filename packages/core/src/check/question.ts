/** One question that a check puts to a rig at a stop: what it answers, and what might help. */

import type { Finding, FindingCode, InputName, Parameter, Severity } from "./finding.js";
import type { Seen } from "./seen.js";

/** The pieces and acts that may answer a fault, in order of preference. */
export type Lever =
  | "dropper"
  | "tippet"
  | "bead"
  | "wire"
  | "knot"
  | "dry"
  | "hold"
  | "cast"
  | "soften"
  | "run"
  | "slack"
  | "obey";

export interface Reading extends Pick<Finding, "code" | "basis" | "numbers"> {
  /** Null where nothing is wrong. */
  readonly severity: Severity | null;
  readonly parameters?: readonly Parameter[];
  /** What the caller has to say, where that alone would answer. */
  readonly supply?: InputName;
}

export interface Question {
  /** Null where another question covers it: a rig that drowns has no time to settle. */
  readonly ask: (seen: Seen) => Reading | null;
  readonly levers: readonly Lever[];
  /** Whether it needs the whole drift, and not the settled one alone. */
  readonly drifts?: true;
}

const ranks: readonly (Severity | null)[] = [null, "note", "watch", "fix", "stop"];

/** 0 for nothing wrong, 4 for stop. */
export function rank(severity: Severity | null): number {
  return ranks.indexOf(severity);
}

/** A reading of the first case that holds, from the worst down; of the last, with nothing wrong, where none does. */
export function readingOf(
  rest: Omit<Reading, "code" | "severity">,
  ...cases: readonly [Case, ...Case[]]
): Reading {
  const found = cases.find(({ when }) => when);
  const { code, severity } = found ?? { code: cases.at(-1)!.code, severity: null };
  return { code, severity, ...rest };
}

interface Case {
  readonly when: boolean;
  readonly severity: Severity;
  readonly code: FindingCode;
}
