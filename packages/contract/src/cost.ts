/** What a call costs. Counted from the request before anything is computed, never timed: hosts differ, and the clocks of some stand still. */

import type { Decoded } from "./quantity/wire.js";
import { RefusedError } from "./refusal.js";

/** What the counts are measured by. */
export const UNIT_OF_WORK = "about as much as moving one point of a line over one step of a drift";
/** Units of work of reading any request and writing its answer. */
export const WORK_PER_CALL = 1_000;
/** The most units of work that one computation may ask for. */
export const MAX_WORK = 1_000_000;

/** Something done as often as the request says. */
export interface Term {
  /** What is counted, and how. */
  readonly counts: string;
  /** Units of work of each. */
  readonly each: number;
}

export interface Cost<T extends Term = Term> {
  /** The field by which a caller asks for less. */
  readonly lessAt: string;
  readonly terms: readonly T[];
}

/** A term that counts bodies of a kind, in SI. */
export interface Counted<W> extends Term {
  readonly of: (body: Decoded<W>) => number;
}

/** The units of work that a body asks for. Throws RefusedError for more than one call may do. */
export function workOf<W>({ lessAt, terms }: Cost<Counted<W>>, body: Decoded<W>): number {
  const counted = terms.map(({ counts, each, of }) => ({ counts, count: of(body), work: each * of(body) }));
  const work = Math.ceil(counted.reduce((sum, term) => sum + term.work, WORK_PER_CALL));
  if (work <= MAX_WORK) return work;
  const most = counted.reduce((a, b) => (b.work > a.work ? b : a));
  throw new RefusedError(
    "over-budget",
    `This asks for ${work} units of work; one call may ask for ${MAX_WORK}. Most of them: ${most.count} ${most.counts}.`,
    { path: lessAt, expected: `at most ${MAX_WORK} units of work`, received: `${work} units of work` },
  );
}
