/** What is wrong with a body, field by field, said so that the sender can mend it. */

import type { z } from "@hono/zod-openapi";
import { expectation, tagsOf } from "./expectation.js";
import { quantityFacts, type Range } from "./quantity/schema.js";
import { dimensionOf } from "./quantity/units.js";
import { clip, definition, isRecord, lookUp, pointer } from "./quantity/walk.js";
import { nearest, unitNamed } from "./spelling.js";

export interface FieldError {
  /** JSON pointer into the body. */
  readonly path: string;
  readonly expected: string;
  readonly received: string;
  readonly suggestion?: string | undefined;
}

/** The most errors one problem lists. */
export const MAX_ERRORS = 20;

type Issue = z.core.$ZodIssue;

/** The issues of a parse as field errors, at most twenty. */
export function fieldErrors(
  schema: z.ZodType,
  given: unknown,
  issues: readonly Issue[],
): readonly FieldError[] {
  const found: FieldError[] = [];
  for (const issue of issues) {
    if (found.length >= MAX_ERRORS) break;
    if (issue.code === "unrecognized_keys") found.push(...unknownKeys(schema, given, issue));
    else found.push(fieldError(schema, given, issue));
  }
  return found.slice(0, MAX_ERRORS);
}

/** A quantity outside its range. */
export function rangeError(
  path: readonly PropertyKey[],
  value: Readonly<Record<string, unknown>>,
  { min, max, unit }: Range,
): FieldError {
  return {
    path: pointer(path),
    expected: `from ${min} to ${max} ${unit}`,
    received: clip(`${value.value} ${value.unit}`),
  };
}

/** A value of any size and depth in at most 60 characters. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return `an array of ${value.length}`;
  if (isRecord(value)) {
    const keys = Object.keys(value);
    return clip(keys.length === 0 ? "an empty object" : `an object with ${keys.slice(0, 4).join(", ")}`);
  }
  return clip(typeof value === "string" ? `"${value}"` : String(value));
}

function unknownKeys(
  schema: z.ZodType,
  given: unknown,
  issue: Issue & { code: "unrecognized_keys" },
): readonly FieldError[] {
  const at = lookUp(schema, given, issue.path);
  const known = Object.keys((at.schema && definition(at.schema).shape) ?? {});
  const free = known.filter((key) => !(isRecord(at.value) && Object.hasOwn(at.value, key)));
  return issue.keys.slice(0, MAX_ERRORS).map((key) => {
    const near = nearest(key, free);
    const inside = known.find((name) => at.schema && knows(at.schema, name, key));
    const suggestion = near ? `did you mean "${near}"?` : inside && `it belongs inside "${inside}"`;
    return {
      path: pointer([...issue.path, key]),
      expected: `a known key: ${known.join(", ")}`,
      received: shown(isRecord(at.value) && Object.hasOwn(at.value, key) ? at.value[key] : undefined),
      ...(suggestion === undefined ? {} : { suggestion }),
    };
  });
}

/** Whether the object in a field of a schema has a key. */
function knows(schema: z.ZodType, field: string, key: string): boolean {
  const { shape } = definition(lookUp(schema, {}, [field]).schema ?? schema);
  return shape !== undefined && Object.hasOwn(shape, key);
}

function fieldError(schema: z.ZodType, given: unknown, issue: Issue): FieldError {
  const at = lookUp(schema, given, issue.path);
  // an unknown kind of a union is reported at its discriminator, which only the union knows
  const blamed = at.schema ?? lookUp(schema, given, issue.path.slice(0, -1)).schema;
  const suggestion = suggest(schema, given, issue, blamed);
  return {
    path: pointer(issue.path),
    expected: expectation(issue, blamed),
    received: shown(at.value),
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}

/** What was probably meant: a unit by its everyday name, or the nearest word that is allowed here. */
function suggest(
  schema: z.ZodType,
  given: unknown,
  issue: Issue,
  blamed: z.ZodType | undefined,
): string | undefined {
  const { value } = lookUp(schema, given, issue.path);
  const allowed =
    issue.code === "invalid_value" ? issue.values.map(String) : ((blamed && tagsOf(blamed)) ?? []);
  if (typeof value !== "string") return undefined;
  const parent = lookUp(schema, given, issue.path.slice(0, -1)).schema;
  const facts = parent && issue.path.at(-1) === "unit" ? quantityFacts(parent) : undefined;
  const word = (facts && unitNamed(value)) ?? value;
  const other = facts && dimensionOf(word);
  if (facts && other && other !== facts.dimension)
    return `"${value}" is a unit of ${other}; a ${facts.dimension} is wanted here`;
  const meant = nearest(word, allowed);
  return meant === undefined ? undefined : `did you mean "${meant}"?`;
}
