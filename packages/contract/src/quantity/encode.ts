/** From a result of the core to what an answer says: the way back of decoding. */

import type { z } from "@hono/zod-openapi";
import { RefusedError } from "../refusal.js";
import { largest, quantityFacts } from "./schema.js";
import { fromSi, type Units, unitIn } from "./units.js";
import { definition, isRecord, settled } from "./walk.js";
import type { Decoded } from "./wire.js";

/** Says a result as its schema has it: quantities in the system, nulls absent, and nothing that the schema does not name.
 *  Throws RefusedError for a quantity beyond what a value may say. */
export function encode<W>(schema: z.ZodType<W>, value: NoInfer<Decoded<W, null>>, units: Units): W {
  return said(schema, value, units, "answer") as W;
}

function said(given: z.ZodType, value: unknown, units: Units, name: string): unknown {
  const schema = settled(given, value);
  const facts = quantityFacts(schema);
  if (facts) {
    const unit = unitIn(units, facts.unit);
    const converted = fromSi(facts.dimension, Number(value), unit);
    if (Math.abs(converted) > largest) throw beyond(name, converted, unit);
    return { value: converted, unit };
  }
  const { element, shape = {} } = definition(schema);
  if (Array.isArray(value)) return element ? value.map((item) => said(element, item, units, name)) : value;
  if (!isRecord(value)) return value;
  const fields = Object.entries(shape).filter(([key]) => value[key] !== undefined && value[key] !== null);
  return Object.fromEntries(fields.map(([key, field]) => [key, said(field, value[key], units, key)]));
}

function beyond(name: string, value: number, unit: string): RefusedError {
  const received = `${value.toPrecision(6)} ${unit}`;
  return new RefusedError("impossible", `${name} of the answer would be ${received}: check the request.`, {
    path: "",
    expected: `values that give an answer of at most ${largest} ${unit}`,
    received,
  });
}
