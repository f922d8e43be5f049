/** What is expected at a place in a body. */

import type { z } from "@hono/zod-openapi";
import { quantityFacts } from "./quantity/schema.js";
import { definition } from "./quantity/walk.js";

/** What a place in a body should hold, in words. */
export function expectation(issue: z.core.$ZodIssue, at: z.ZodType | undefined): string {
  const facts = at && quantityFacts(at);
  if (facts) return `a ${facts.dimension} such as {"value": 1, "unit": "${facts.unit}"}`;
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
  const { type, shape, entries } = definition(schema);
  if (entries) return `one of ${Object.values(entries).join(", ")}`;
  if (shape) return `an object with ${Object.keys(shape).join(", ")}`;
  if (type === "array") return "an array";
  const tags = tagsOf(schema);
  return tags && `one of ${tags.join(", ")}`;
}

/** The words that tell the members of a union apart. */
export function tagsOf(schema: z.ZodType): readonly string[] | undefined {
  const { options, discriminator } = definition(schema);
  if (!options || discriminator === undefined) return undefined;
  return options.flatMap((option) => {
    const tag = definition(option).shape?.[discriminator];
    return Object.values((tag && definition(tag).entries) ?? {});
  });
}

function article(noun: string): string {
  return /^[aeiou]/.test(noun) ? "an" : "a";
}
