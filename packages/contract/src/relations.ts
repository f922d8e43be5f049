/** What the numbers rest on: every source of the core, the ranges it was published for, and where it is used. */

import { z } from "@hono/zod-openapi";
import * as core from "@plumbdrift/core";
import { plain, type Strict, strict } from "./quantity/wire.js";

/** By key the files of the core that cite it: put in by the build. */
declare const CITATIONS: Readonly<Record<string, readonly string[]>>;

interface PublishedRange {
  readonly quantity: string;
  /** Absent where there is no end. */
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

export interface Relation extends Omit<core.Source, "authors" | "year"> {
  readonly key: string;
  readonly authors?: string | undefined;
  readonly year?: number | undefined;
  readonly ranges: readonly PublishedRange[];
  readonly usedIn: readonly string[];
}

const RangeSchema = strict<PublishedRange>({
  quantity: z.string().openapi({ description: "With its unit where it has one." }),
  min: plain("Lower end, in the unit of the quantity.").optional(),
  max: plain("Upper end, in the unit of the quantity.").optional(),
}).openapi("PublishedRange", {
  description: "Outside it a value has a caveat. An end that is absent is open.",
});

export const RelationSchema: Strict<Relation> = strict<Relation>({
  key: z.string().openapi({ description: "As meta.relations and caveats name it." }),
  authors: z.string().optional().openapi({ description: "Absent for what nobody signed." }),
  year: z.number().int().min(1).max(9999).optional().openapi({ description: "Of publication." }),
  title: z.string().openapi({ description: "Of the work, or what is assumed." }),
  access: z
    .enum(["read", "second-hand", "from-memory", "common-practice", "assumption"])
    .openapi({ description: "How it was seen: second-hand is in a work that quotes it." }),
  ranges: z.array(RangeSchema).openapi({ description: "Where it was published for." }),
  usedIn: z.array(z.string()).openapi({ description: "Files of the core that cite it." }),
}).openapi("Relation", { description: "A paper, a standard, a habit of the trade or an assumption." });

interface Relations {
  readonly relations: readonly Relation[];
}

export const RelationsSchema: Strict<Relations> = strict<Relations>({
  relations: z.array(RelationSchema).openapi({ description: "In the order of the keys." }),
}).openapi("Relations", { description: "Every relation, by key." });

/** Every relation, in the order of the keys. */
export function relations(): readonly Relation[] {
  const held = validities();
  return Object.entries(core.sources).map(([key, { authors, year, title, access }]) => ({
    key,
    ...(authors === "-" ? {} : { authors }),
    ...(year === null ? {} : { year }),
    title,
    access,
    ranges: held.filter(({ relation }) => relation === key).map(rangeOf),
    usedIn: CITATIONS[key] ?? [],
  }));
}

/** Every range that the core holds as data. */
function validities(): readonly core.Validity[] {
  const laws = core.resistanceLaws.flatMap(({ relation, limits }) =>
    limits.map((limit) => ({ ...limit, relation })),
  );
  return [...Object.values<unknown>(core).filter(isValidity), ...laws];
}

function isValidity(value: unknown): value is core.Validity {
  return (
    typeof value === "object" &&
    value !== null &&
    "relation" in value &&
    "quantity" in value &&
    "max" in value
  );
}

function rangeOf({ quantity, min, max }: core.Validity): PublishedRange {
  return { quantity, ...(Number.isFinite(min) ? { min } : {}), ...(Number.isFinite(max) ? { max } : {}) };
}
