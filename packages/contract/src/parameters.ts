/** What is wrong with the query of a URL: a parameter is as strict as a key of a body. */

import { type FieldError, MAX_ERRORS, shown } from "./field-errors.js";
import { clip } from "./quantity/walk.js";
import { nearest } from "./spelling.js";

/** The values that each parameter of a path may have. */
export type Parameters = Readonly<Record<string, readonly string[]>>;

/** The parameters of a computation that can say its equations, and their values. */
export const EXPLAIN: { readonly explain: readonly string[] } = { explain: ["steps"] };

/** Parameters and values that a path does not know, and those that are given twice; at most twenty. */
export function parameterErrors(
  sent: Iterable<readonly [string, string]>,
  known: Parameters,
): readonly FieldError[] {
  const names = Object.keys(known);
  const errors: FieldError[] = [];
  const seen = new Set<string>();
  for (const [name, value] of sent) {
    if (errors.length >= MAX_ERRORS) break;
    const values = Object.hasOwn(known, name) ? known[name] : undefined;
    const again = values !== undefined && seen.has(name);
    seen.add(name);
    if (values?.includes(value) && !again) continue;
    const near = values ? nearest(value, values) : nearest(name, names);
    errors.push({
      path: `?${clip(name)}`,
      expected: again ? "a parameter that is given once" : expected(values, names),
      received: shown(value),
      ...(near === undefined || near === value ? {} : { suggestion: `did you mean "${near}"?` }),
    });
  }
  return errors;
}

function expected(values: readonly string[] | undefined, names: readonly string[]): string {
  if (values) return `one of ${values.join(", ")}`;
  return names.length === 0 ? "no query parameters" : `a known parameter: ${names.join(", ")}`;
}
