/** What is wrong with the query of a URL: a parameter is as strict as a key of a body. */

import { type FieldError, MAX_ERRORS, shown } from "./field-errors.js";
import { clip } from "./quantity/walk.js";
import { nearest } from "./spelling.js";

/** The values that each parameter of a path may have. */
export type Parameters = Readonly<Record<string, readonly string[]>>;

/** The parameters of a computation that can say its equations, and their values. */
export const EXPLAIN: { readonly explain: readonly string[] } = { explain: ["steps"] };

/** Parameters and values that a path does not know, at most twenty. */
export function parameterErrors(
  sent: Iterable<readonly [string, string]>,
  known: Parameters,
): readonly FieldError[] {
  const names = Object.keys(known);
  const errors: FieldError[] = [];
  for (const [name, value] of sent) {
    if (errors.length >= MAX_ERRORS) break;
    const values = Object.hasOwn(known, name) ? known[name] : undefined;
    if (values?.includes(value)) continue;
    const expected = values
      ? `one of ${values.join(", ")}`
      : names.length === 0
        ? "no query parameters"
        : `a known parameter: ${names.join(", ")}`;
    const near = values ? nearest(value, values) : nearest(name, names);
    errors.push({
      path: `?${clip(name)}`,
      expected,
      received: shown(value),
      ...(near === undefined ? {} : { suggestion: `did you mean "${near}"?` }),
    });
  }
  return errors;
}
