/** What is wrong with a body, field by field, said so that the sender can mend it. */

import type { z } from "@hono/zod-openapi";
import { quantityFacts, type Range } from "./quantity/schema.js";
import { dimensionOf, unitsOf } from "./quantity/units.js";
import { clip, definition, isRecord, lookUp, pointer } from "./quantity/walk.js";
import { nearest } from "./spelling.js";

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
    return {
      path: pointer([...issue.path, key]),
      expected: `no such key; known here: ${known.join(", ")}`,
      received: shown(isRecord(at.value) && Object.hasOwn(at.value, key) ? at.value[key] : undefined),
      ...(near === undefined ? {} : { suggestion: `did you mean "${near}"?` }),
    };
  });
}

function fieldError(schema: z.ZodType, given: unknown, issue: Issue): FieldError {
  const at = lookUp(schema, given, issue.path);
  // an unknown kind of a union is reported at its discriminator, which only the union knows
  const blamed = at.schema ?? lookUp(schema, given, issue.path.slice(0, -1)).schema;
  const suggestion = suggest(schema, given, issue, at.value);
  return {
    path: pointer(issue.path),
    expected: expectation(issue, blamed),
    received: shown(at.value),
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}

function expectation(issue: Issue, at: z.ZodType | undefined): string {
  const facts = at && quantityFacts(at);
  if (facts) {
    const unit = facts.range?.unit ?? unitsOf(facts.dimension)[0];
    return `a ${facts.dimension} such as {"value": 1, "unit": "${unit}"}`;
  }
  switch (issue.code) {
    case "invalid_type":
      return describe(at) ?? `${article(issue.expected)} ${issue.expected}`;
    case "invalid_value":
      return `one of ${issue.values.map(String).join(", ")}`;
    case "too_small":
      return `at least ${issue.minimum}${issue.origin === "array" ? " items" : ""}`;
    case "too_big":
      return `at most ${issue.maximum}${issue.origin === "array" ? " items" : ""}`;
    case "invalid_format":
      return "1 to 80 characters, no control characters";
    case "invalid_union":
      return describe(at) ?? "one of the forms that the document names";
    default:
      return issue.message;
  }
}

function describe(schema: z.ZodType | undefined): string | undefined {
  if (!schema) return undefined;
  const { type, shape, options, discriminator, entries } = definition(schema);
  if (entries) return `one of ${Object.values(entries).join(", ")}`;
  if (shape) return `an object with ${Object.keys(shape).join(", ")}`;
  if (!options || discriminator === undefined) return type === "array" ? "an array" : undefined;
  const tags = options.flatMap((option) => {
    const tag = definition(option).shape?.[discriminator];
    return Object.values((tag && definition(tag).entries) ?? {});
  });
  return `one of ${tags.join(", ")}`;
}

function suggest(schema: z.ZodType, given: unknown, issue: Issue, value: unknown): string | undefined {
  if (issue.code !== "invalid_value") return undefined;
  const near = typeof value === "string" ? nearest(value, issue.values.map(String)) : undefined;
  if (issue.path.at(-1) !== "unit") return near === undefined ? undefined : `did you mean "${near}"?`;
  const parent = lookUp(schema, given, issue.path.slice(0, -1)).schema;
  const facts = parent && quantityFacts(parent);
  const other = dimensionOf(value);
  if (facts && other) return `"${value}" is a unit of ${other}; a ${facts.dimension} is wanted here`;
  return near === undefined ? undefined : `did you mean "${near}"?`;
}

function article(noun: string): string {
  return /^[aeiou]/.test(noun) ? "an" : "a";
}
