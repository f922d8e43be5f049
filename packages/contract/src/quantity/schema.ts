/** The schemas of quantities, one per dimension; ranges and conversion stay outside zod. */

import { z } from "@hono/zod-openapi";
import { type Dimension, type Unit, unitsOf } from "./units.js";
import type { Said, Strict } from "./wire.js";

/** The range of a quantity, in the unit it is best said in. Ends are inside. */
export interface Range {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

interface Facts {
  readonly dimension: Dimension;
  /** The SI unit that an answer says it in. */
  readonly unit: string;
  readonly range: Range | undefined;
}

/** The largest value that a quantity may say, in a request and in an answer. */
export const largest = 1e9;
const facts = new WeakMap<object, Facts>();

function component<D extends Dimension>(dimension: D, id: string, unit: Unit<D>): Strict<Said<D>> {
  const units = unitsOf(dimension);
  const built = z
    .strictObject({
      value: z.number().min(-largest).max(largest).openapi({ description: "How many of the unit." }),
      unit: z.enum(units).openapi({ description: "Symbol of the unit." }),
    })
    .openapi(id, { description: `${id}, in ${units.join(", ")}.` });
  // the compiler does not follow the units of a dimension that is not known yet
  const schema = built as unknown as Strict<Said<D>>;
  facts.set(schema, { dimension, unit, range: undefined });
  return schema;
}

/** The components of the document, by dimension. */
export const quantitySchemas: { readonly [D in Dimension]: Strict<Said<D>> } = {
  length: component("length", "Length", "m"),
  speed: component("speed", "Speed", "m/s"),
  time: component("time", "Time", "s"),
  mass: component("mass", "Mass", "g"),
  force: component("force", "Force", "mN"),
  temperature: component("temperature", "Temperature", "degC"),
  angle: component("angle", "Angle", "deg"),
  density: component("density", "Density", "kg/m3"),
  rate: component("rate", "Rate", "1/s"),
  area: component("area", "Area", "m2"),
  volume: component("volume", "Volume", "mm3"),
  discharge: component("discharge", "Discharge", "m3/s"),
  unitDischarge: component("unitDischarge", "UnitDischarge", "m2/s"),
  stress: component("stress", "Stress", "Pa"),
  power: component("power", "Power", "W"),
};

/** A field that holds a quantity: what it means, from `min` to `max` where it has a range, and the SI unit it is best said in. */
export function quantity<D extends Dimension>(
  dimension: D,
  description: string,
  ...[first, max, unit]: [] | [unit: Unit<D>] | [min: number, max: number, unit: Unit<D>]
): Strict<Said<D>> {
  const range = unit === undefined ? undefined : { min: Number(first), max: Number(max), unit };
  const says = range ? `${description} From ${range.min} to ${range.max} ${range.unit}.` : description;
  const component = quantitySchemas[dimension];
  const schema = component.openapi({ description: says });
  const preferred = typeof first === "string" ? first : unit;
  facts.set(schema, { dimension, unit: preferred ?? quantityFacts(component)!.unit, range });
  return schema;
}

/** What a schema of this file means, or nothing for any other schema. */
export function quantityFacts(schema: object): Facts | undefined {
  return facts.get(schema);
}
