/** One measure for the gate and for every report. */
import type { Case } from "./case.js";
import { evaluations } from "./evaluations.js";

export interface Measurement {
  readonly id: string;
  readonly value: number;
  readonly expected: number;
  readonly error: number;
  readonly tolerance: number;
  readonly pass: boolean;
}

export function measure(one: Case): Measurement {
  const expected = Number(one.printed);
  const value = evaluations[one.evaluates](one.inputs);
  const error = Math.abs(value - expected);
  const tolerance = toleranceOf(one);
  // the last bits of the subtraction are not the core's fault
  const pass = error <= tolerance + 4 * Number.EPSILON * Math.abs(expected);
  return { id: one.id, value, expected, error, tolerance, pass };
}

export function toleranceOf({ printed, tolerance }: Case): number {
  if (tolerance?.absolute !== undefined) return tolerance.absolute;
  if (tolerance?.relative !== undefined) return tolerance.relative * Math.abs(Number(printed));
  return halfLastDigit(printed);
}

/** Half of the last digit of a printed number: 0.0005 for 1.160, 5e-10 for 6.370e-6. */
export function halfLastDigit(printed: string): number {
  const parts = /^-?\d+(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(printed);
  if (parts === null) throw new RangeError(`printed digits must be a number, got ${printed}`);
  return 0.5 * 10 ** (Number(parts[2] ?? 0) - (parts[1]?.length ?? 0));
}

/** A case that shows something: outside evidence that was seen, and that the core agrees with. */
export function isVerified(one: Case): boolean {
  const evidence = one.kind === "published" || one.kind === "independent" || one.kind === "analytic";
  return evidence && one.seen !== "from-memory" && one.disagrees === undefined;
}
