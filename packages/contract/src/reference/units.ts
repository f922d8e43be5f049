/** The units that a quantity may say, and what each is in SI. */

import { z } from "@hono/zod-openapi";
import { type Dimension, dimensions, siUnit, toSi, type Unit, unitsOf } from "../quantity/units.js";
import { plain, type Strict, strict } from "../quantity/wire.js";

interface ExplainedUnit {
  readonly unit: Unit;
  readonly inSi: string;
  readonly factor: number;
  readonly zero: number;
}

interface ExplainedDimension {
  readonly dimension: Dimension;
  readonly si: Unit;
  readonly units: readonly ExplainedUnit[];
}

interface ExplainedDimensions {
  readonly dimensions: readonly ExplainedDimension[];
}

/** What a value is in SI, exactly: international foot and pound of 1959, standard gravity of 1901, and their multiples. */
const definitions: Readonly<Record<Unit, string>> = {
  m: "value",
  cm: "value / 100",
  mm: "value / 1000",
  ft: "value × 0.3048",
  in: "value × 0.0254",
  "m/s": "value",
  "cm/s": "value / 100",
  "ft/s": "value × 0.3048",
  mph: "value × 5280 × 0.3048 / 3600",
  "km/h": "value / 3.6",
  s: "value",
  min: "value × 60",
  kg: "value",
  g: "value / 1000",
  mg: "value / 1000000",
  gr: "value × 0.45359237 / 7000",
  N: "value",
  mN: "value / 1000",
  lbf: "value × 0.45359237 × 9.80665",
  degC: "value",
  degF: "(value − 32) × 5 / 9",
  deg: "value × π / 180",
  rad: "value",
  "kg/m3": "value",
  "1/s": "value",
  "m2/s": "value",
  "ft2/s": "value × 0.3048 × 0.3048",
  m2: "value",
  ft2: "value × 0.3048 × 0.3048",
  mm3: "value / 1000000000",
  m3: "value",
  ft3: "value × 0.3048 × 0.3048 × 0.3048",
  "m3/s": "value",
  "L/s": "value / 1000",
  "ft3/s": "value × 0.3048 × 0.3048 × 0.3048",
  Pa: "value",
  "lbf/ft2": "value × 0.45359237 × 9.80665 / (0.3048 × 0.3048)",
  W: "value",
  hp: "value × 550 × 0.3048 × 0.45359237 × 9.80665",
};

const symbol = z.enum(Object.keys(definitions) as [Unit, ...Unit[]]);

const UnitSchema = strict<ExplainedUnit>({
  unit: symbol.openapi({ description: "Its symbol, as a quantity says it." }),
  inSi: z.string().openapi({ description: "What a value is in the SI unit, exactly." }),
  factor: plain("SI units in one, as near as a number can be."),
  zero: plain("What zero of it is in the SI unit."),
}).openapi("ExplainedUnit", { description: "A unit and its exact factor." });

const DimensionSchema = strict<ExplainedDimension>({
  dimension: z
    .enum(Object.keys(dimensions) as [Dimension, ...Dimension[]])
    .openapi({ description: "What is measured." }),
  si: symbol.openapi({ description: "The SI unit that the others are said in." }),
  units: z.array(UnitSchema).openapi({ description: "Every unit that may be said." }),
}).openapi("ExplainedDimension", { description: "A dimension and the units it may be said in." });

export const UnitsPageSchema: Strict<ExplainedDimensions> = strict<ExplainedDimensions>({
  dimensions: z.array(DimensionSchema).openapi({ description: "All of them." }),
}).openapi("ExplainedDimensions", { description: "Every unit, by dimension." });

export function explainedDimensions(): readonly ExplainedDimension[] {
  return (Object.keys(dimensions) as Dimension[]).map((dimension) => {
    const units = unitsOf(dimension).map((unit) => {
      const zero = toSi(dimension, 0, unit);
      return { unit, inSi: definitions[unit], factor: toSi(dimension, 1, unit) - zero, zero };
    });
    return { dimension, si: siUnit(dimension), units };
  });
}
