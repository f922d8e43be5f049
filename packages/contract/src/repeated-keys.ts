/** Keys that a JSON text says twice. A parser keeps the last of them and says nothing (RFC 8259, section 4), so what was sent would be lost. */

import { type FieldError, MAX_ERRORS } from "./field-errors.js";
import { pointer } from "./quantity/walk.js";

/** An object or an array that is not closed yet: the keys said so far, and the key or the index that is read now. */
interface Open {
  readonly keys: Set<string> | undefined;
  at: string | number;
}

/** No schema goes so deep: what lies below is refused for being there. */
const DEEPEST = 32;

/** The repeated keys of a text that is JSON. Read in one pass, without recursion. */
export function repeatedKeys(text: string): readonly FieldError[] {
  const errors: FieldError[] = [];
  const open: Open[] = [];
  for (let i = 0; i < text.length && errors.length < MAX_ERRORS; i++) {
    const inner = open.at(-1);
    const sign = text[i];
    if (sign === "{") open.push({ keys: new Set(), at: "" });
    else if (sign === "[") open.push({ keys: undefined, at: 0 });
    else if (sign === "}" || sign === "]") open.pop();
    else if (sign === "," && typeof inner?.at === "number") inner.at++;
    else if (sign === '"') {
      const end = endOf(text, i);
      if (inner?.keys !== undefined && open.length <= DEEPEST && isKey(text, end)) {
        inner.at = JSON.parse(text.slice(i, end));
        if (inner.keys.has(String(inner.at))) errors.push(repeated(open));
        inner.keys.add(String(inner.at));
      }
      i = end - 1;
    }
  }
  return errors;
}

function repeated(open: readonly Open[]): FieldError {
  const path = pointer(open.map(({ at }) => at));
  return { path, expected: "a key that is given once", received: "the same key again" };
}

/** Where a string ends that begins with the quotation mark at a place. */
function endOf(text: string, from: number): number {
  let i = from + 1;
  while (text[i] !== '"') i += text[i] === "\\" ? 2 : 1;
  return i + 1;
}

/** In JSON a colon follows keys and nothing else. */
function isKey(text: string, end: number): boolean {
  let i = end;
  while (text[i] === " " || text[i] === "\n" || text[i] === "\r" || text[i] === "\t") i++;
  return text[i] === ":";
}
