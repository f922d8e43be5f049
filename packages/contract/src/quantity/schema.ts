/** A quantity on the wire: `{ "value": 18, "unit": "in" }`. One strict schema per dimension; ranges and conversion stay outside zod. */

import { z } from "@hono/zod-openapi";
import { type Dimension, dimensions, type Unit } from "./units.js";

/** The range of a quantity, in the unit it is best said in. Ends are inside. */
export interface Range {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

interface Facts {
  readonly dimension: Dimension;
  readonly range: Range | undefined;
}

const largest = 1e9;
const facts = new WeakMap<object, Facts>();

function component<D extends Dimension>(dimension: D, id: string) {
  const units = Object.keys(dimensions[dimension]) as [Unit<D>, ...Unit<D>[]];
  const schema = z
    .strictObject({ value: z.number().min(-largest).max(largest), unit: z.enum(units) })
    .openapi(id, { description: `${id}, in ${units.join(", ")}.` });
  facts.set(schema, { dimension, range: undefined });
  return schema;
}

/** The components of the document, by dimension. */
export const quantitySchemas = {
  length: component("length", "Length"),
  speed: component("speed", "Speed"),
  time: component("time", "Time"),
  mass: component("mass", "Mass"),
  force: component("force", "Force"),
  temperature: component("temperature", "Temperature"),
  angle: component("angle", "Angle"),
  density: component("density", "Density"),
  rate: component("rate", "Rate"),
  volume: component("volume", "Volume"),
} as const;

/** A field that holds a quantity: what it means, and from `min` to `max` of `unit`. */
export function quantity<D extends Dimension>(
  dimension: D,
  description: string,
  ...range: [] | [min: number, max: number, unit: Unit<D>]
): (typeof quantitySchemas)[D] {
  const [min, max, unit] = range;
  const limits = unit === undefined ? undefined : { min: Number(min), max: Number(max), unit: String(unit) };
  const says = limits ? `${description} From ${limits.min} to ${limits.max} ${limits.unit}.` : description;
  const schema = quantitySchemas[dimension].openapi({ description: says });
  facts.set(schema, { dimension, range: limits });
  return schema as (typeof quantitySchemas)[D];
}

/** What a schema of this file means, or nothing for any other schema. */
export function quantityFacts(schema: object): Facts | undefined {
  return facts.get(schema);
}
