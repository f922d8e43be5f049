/** Answers that a host keeps for whoever asks the same again: equal requests have equal answers, and nothing else is in them. */

/** An answer as it was sent. */
export interface Answer {
  readonly etag: string;
  /** JSON. */
  readonly text: string;
  /** Units of work that it is charged, computed or not: what a call costs does not depend on who asked before. */
  readonly work: number;
}

/** By what was asked, as text. It may forget any at any time. */
export interface Kept {
  readonly get: (asked: string) => Answer | undefined;
  readonly set: (asked: string, answer: Answer) => void;
}

/** Of a host that keeps nothing. */
export const nothingKept: Kept = { get: () => undefined, set: () => {} };
