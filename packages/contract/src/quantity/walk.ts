/** Finds one's way through a schema beside the value it describes. */

import type { z } from "@hono/zod-openapi";

/** What is read of a zod schema: the few kinds this contract allows. */
interface Definition {
  readonly type: string;
  readonly innerType?: z.ZodType;
  readonly element?: z.ZodType;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly options?: readonly z.ZodType[];
  readonly discriminator?: string;
  readonly entries?: Readonly<Record<string, string>>;
}

export function definition(schema: z.ZodType): Definition {
  return schema.def as unknown as Definition;
}

/** The schema without `optional`, and the member of a union that the value's discriminator names. */
export function settled(schema: z.ZodType, value: unknown): z.ZodType {
  const def = definition(schema);
  if (def.innerType) return settled(def.innerType, value);
  if (!def.options || def.discriminator === undefined || !isRecord(value)) return schema;
  const { discriminator } = def;
  const kind = Object.hasOwn(value, discriminator) ? value[discriminator] : undefined;
  const member = def.options.find((option) => {
    const tag = definition(option).shape?.[discriminator];
    return tag !== undefined && Object.values(definition(tag).entries ?? {}).some((entry) => entry === kind);
  });
  return member ?? schema;
}

/** The schema one step further, or nothing when there is none. */
export function step(schema: z.ZodType, key: PropertyKey): z.ZodType | undefined {
  const { element, shape } = definition(schema);
  if (typeof key === "number") return element;
  return shape && Object.hasOwn(shape, key) ? shape[String(key)] : undefined;
}

interface Found {
  readonly schema: z.ZodType | undefined;
  readonly value: unknown;
}

/** The schema and the value at a path. */
export function lookUp(schema: z.ZodType, value: unknown, path: readonly PropertyKey[]): Found {
  let here: z.ZodType | undefined = settled(schema, value);
  let held = value;
  for (const key of path) {
    const next: z.ZodType | undefined = here && step(here, key);
    held = isRecord(held) && Object.hasOwn(held, key) ? held[String(key)] : undefined;
    here = next && settled(next, held);
  }
  return { schema: here, value: held };
}

/** A JSON pointer (RFC 6901). */
export function pointer(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${clip(String(key)).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}

export function clip(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
