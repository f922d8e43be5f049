/** From a result of the core to what an answer says: the way back of decoding. */

import type { z } from "@hono/zod-openapi";
import { quantityFacts } from "./schema.js";
import { fromSi, type Units, unitIn } from "./units.js";
import { definition, isRecord, settled } from "./walk.js";
import type { Decoded } from "./wire.js";

/** Says a result as its schema has it: quantities in the system, nulls absent, and nothing that the schema does not name. */
export function encode<W>(schema: z.ZodType<W>, value: NoInfer<Decoded<W, null>>, units: Units): W {
  return said(schema, value, units) as W;
}

function said(given: z.ZodType, value: unknown, units: Units): unknown {
  const schema = settled(given, value);
  const facts = quantityFacts(schema);
  if (facts) {
    const unit = unitIn(units, facts.unit);
    return { value: fromSi(facts.dimension, Number(value), unit), unit };
  }
  const { element, shape = {} } = definition(schema);
  if (Array.isArray(value)) return element ? value.map((item) => said(element, item, units)) : value;
  if (!isRecord(value)) return value;
  const fields = Object.entries(shape).filter(([key]) => value[key] !== undefined && value[key] !== null);
  return Object.fromEntries(fields.map(([key, field]) => [key, said(field, value[key], units)]));
}
