/** From a body of unknown shape to SI numbers, or to a list of what is wrong with it. */

import type { z } from "@hono/zod-openapi";
import { type FieldError, fieldErrors, rangeError } from "../field-errors.js";
import { quantityFacts } from "./schema.js";
import { fromSi, toSi } from "./units.js";
import { definition, isRecord, settled, step } from "./walk.js";
import type { Decoded } from "./wire.js";

export type Decoding<T> =
  | { readonly ok: true; readonly body: T }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/** Checks a body against a schema and its ranges, and converts its quantities. */
export function decodeBody<S extends z.ZodType>(
  schema: S,
  given: unknown,
): Decoding<{ readonly wire: z.output<S>; readonly si: Decoded<z.output<S>> }> {
  const parsed = schema.safeParse(given, { reportInput: false });
  if (!parsed.success) return { ok: false, errors: fieldErrors(schema, given, parsed.error.issues) };
  const errors: FieldError[] = [];
  const si = convert(schema, parsed.data, [], errors) as Decoded<z.output<S>>;
  return errors.length > 0 ? { ok: false, errors } : { ok: true, body: { wire: parsed.data, si } };
}

function convert(
  given: z.ZodType,
  value: unknown,
  path: readonly PropertyKey[],
  errors: FieldError[],
): unknown {
  const schema = settled(given, value);
  const facts = quantityFacts(schema);
  if (facts && isRecord(value)) {
    const { dimension, range } = facts;
    const unit = String(value.unit);
    const si = toSi(dimension, Number(value.value), unit);
    const sent = range ? fromSi(dimension, si, range.unit) : 0;
    if (range && !(sent >= range.min && sent <= range.max)) errors.push(rangeError(path, value, range));
    return si;
  }
  if (Array.isArray(value)) {
    const { element } = definition(schema);
    return value.map((item, i) => (element ? convert(element, item, [...path, i], errors) : item));
  }
  if (!isRecord(value)) return value;
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  return Object.fromEntries(
    entries.map(([key, item]) => {
      const next = step(schema, key);
      return [key, next ? convert(next, item, [...path, key], errors) : item];
    }),
  );
}
