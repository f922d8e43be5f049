/** The conformance gate as one call, for a core whose constants can be changed: bundled with a copy of the core's sources. */
import type { Case } from "../case.js";
import { cases } from "../cases.js";
import { measure } from "../measure.js";
import { type Sweep, sweeps, worstOf } from "../sweep/sweeps.js";

export interface Check {
  readonly name: string;
  readonly holds: () => boolean;
}

/** Every case and every sweep; `read` gives the text of a file of vectors. */
export function checks(read: (file: string) => string): readonly Check[] {
  return [
    ...cases.map((one) => ({ name: one.id, holds: () => caseHolds(one) })),
    ...sweeps.map((sweep) => ({ name: `sweep: ${sweep.relation}`, holds: () => sweepHolds(sweep, read) })),
  ];
}

/** As the gate asks: a case that is said to disagree must go on doing so. */
function caseHolds(one: Case): boolean {
  return measure(one).pass === (one.disagrees === undefined);
}

function sweepHolds(sweep: Sweep, read: (file: string) => string): boolean {
  return worstOf(sweep, read(sweep.file)) <= sweep.tolerance;
}
