/** Where an answer differs from that of another host by more than the mathematics of two engines may. */

import type { Request } from "./exchange.js";

/** Engines differ in the last digit of pow, exp, log, sin and cos. */
const relative = 1e-12;

/** An unsteady drift is marched until its speeds differ by less than a threshold, and its tensions are read from links that
 *  stretch by a millionth: a last digit decides by which step it ends, and of the digits of a tension half are left. */
const marched = { tolerance: 1e-5, operations: /^(driftRig|rankSetups|checkRig|adjustRig): / };

/** What is left over of an equation that was solved: a number that stands for nought. */
const nought = 1e-9;

/** The first difference between two bodies, or nothing. */
export function difference({ name }: Request, expected: string, received: string): string | undefined {
  if (expected === "" || received === "") return expected === received ? undefined : "one body is empty";
  const tolerance = marched.operations.test(name) ? marched.tolerance : relative;
  const [a, b] = [expected, received].map((text) => JSON.parse(comparable(text)));
  return apart(a, b, { at: "", tolerance, scales: scalesOf(a), unit: undefined });
}

interface Place {
  readonly at: string;
  readonly tolerance: number;
  readonly scales: ReadonlyMap<string, number>;
  /** Of the quantity that the value belongs to. */
  readonly unit: string | undefined;
}

function apart(a: unknown, b: unknown, place: Place): string | undefined {
  const { at } = place;
  if (typeof a === "number" && typeof b === "number") {
    return Math.abs(a - b) <= allowed(a, place) ? undefined : `${at}: ${a} and ${b}`;
  }
  if (!isObject(a) || !isObject(b)) return a === b ? undefined : `${at}: ${String(a)} and ${String(b)}`;
  const keys = Object.keys(a);
  if (String(keys.sort()) !== String(Object.keys(b).sort())) return `${at}: other keys`;
  const unit = typeof a.unit === "string" ? a.unit : undefined;
  for (const key of keys) {
    const found = apart(a[key], b[key], { ...place, at: `${at}/${key}`, unit });
    if (found !== undefined) return found;
  }
  return undefined;
}

/** A difference near nought is measured by the largest value of its unit in the answer; an answer says twelve digits, so the twelfth may flip. */
function allowed(a: number, { at, tolerance, scales, unit }: Place): number {
  if (/\/residual(\/|$)/.test(at)) return nought;
  const scale = (unit === undefined ? undefined : scales.get(unit)) ?? Math.abs(a);
  const twelfth = a === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(a))) - 11);
  return Math.max(tolerance * scale, 1.001 * twelfth);
}

/** The largest value that is said in each unit. */
function scalesOf(value: unknown, scales = new Map<string, number>()): Map<string, number> {
  if (!isObject(value)) return scales;
  const { unit, value: said } = value;
  if (typeof unit === "string" && typeof said === "number") {
    scales.set(unit, Math.max(scales.get(unit) ?? 0, Math.abs(said)));
  }
  for (const item of Object.values(value)) scalesOf(item, scales);
  return scales;
}

/** Not every engine says where it met what is no JSON; a request has its own name at the host that names them. */
function comparable(text: string): string {
  return text.replace(/ at position \d+/, "").replace(/,"instance":"urn:uuid:[\da-f-]{36}"/, "");
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
