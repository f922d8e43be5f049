/** A check value as data: what someone else says, how we know, and what the built core must say to it. */
import type { Evaluation } from "./evaluations.js";

/** published: printed by the source · independent: another implementation · analytic: follows from the law itself ·
 *  practice: common practice, no source · regression: our own output, never validation. */
export type Kind = "published" | "independent" | "analytic" | "practice" | "regression";

/** read: in the source or a page that prints it · quoted: in a library or work that quotes it · recomputed: from memory, and its inputs give
 *  its output to the printed digits · from-memory: unconfirmed, never counted as verified · derived: a closed form or a run, nothing to read. */
export type Seen = "read" | "quoted" | "recomputed" | "from-memory" | "derived";

export type Inputs = Readonly<Record<string, number | string | readonly number[]>>;

export interface CaseRow {
  /** Row of the list of check values, with a part after a full stop where the row prints several. */
  readonly id: string;
  readonly evaluates: Evaluation;
  readonly inputs: Inputs;
  /** The digits as printed: half of the last one is the tolerance, unless `tolerance` says why not. */
  readonly printed: string;
  readonly unit?: string;
  readonly tolerance?: { readonly absolute?: number; readonly relative?: number; readonly because: string };
  /** Where the core does not agree, and why: the case must then fail, and says so when it begins to agree. */
  readonly disagrees?: string;
  readonly locator?: string;
  readonly kind?: Kind;
  readonly seen?: Seen;
}

/** The cases of one source. A row may override the locator, kind and how it was seen. */
export interface SourceCases {
  readonly source: string;
  readonly locator: string;
  readonly kind: Kind;
  readonly seen: Seen;
  readonly cases: readonly CaseRow[];
}

export interface Case extends CaseRow {
  readonly source: string;
  readonly locator: string;
  readonly kind: Kind;
  readonly seen: Seen;
}

/** The cases of a source, each complete in itself. */
export function casesOf({ cases, ...shared }: SourceCases): readonly Case[] {
  return cases.map((row) => ({ ...shared, ...row }));
}
