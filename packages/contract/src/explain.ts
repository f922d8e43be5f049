/** The chain of equations behind an answer, each with its numbers. In SI whatever the answer speaks, so that the numbers fit the equation. */

import { z } from "@hono/zod-openapi";
import type { SourceKey } from "@plumbdrift/core";
import { type Dimension, dimensions, siUnit, type Unit, unitsOf } from "./quantity/units.js";
import { type Strict, strict } from "./quantity/wire.js";

interface SaidSi {
  readonly value: number;
  readonly unit: Unit;
}

interface Known {
  readonly symbol: string;
  readonly quantity?: SaidSi | undefined;
  readonly number?: number | undefined;
}

export interface Step {
  readonly equation: string;
  readonly relation?: SourceKey | undefined;
  readonly symbols: readonly Known[];
  readonly result: Known;
}

type WireStep = Omit<Step, "relation"> & { readonly relation?: string | undefined };

const everyUnit = (Object.keys(dimensions) as Dimension[]).flatMap((dimension) => unitsOf(dimension));

export const SiQuantitySchema: Strict<SaidSi> = strict<SaidSi>({
  value: z.number().openapi({ description: "In the unit." }),
  unit: z.enum(everyUnit as [Unit, ...Unit[]]).openapi({ description: "The SI unit." }),
}).openapi("SiQuantity", { description: "A value in its SI unit." });

const KnownSchema = strict<Known>({
  symbol: z.string().openapi({ description: "As the equation writes it." }),
  quantity: SiQuantitySchema.openapi({ description: "What it is, where it has a dimension." }).optional(),
  number: z.number().optional().openapi({ description: "In place of a quantity where it has no dimension." }),
}).openapi("KnownSymbol", { description: "A symbol of an equation and what it stands for." });

export const StepsSchema: z.ZodType<readonly WireStep[]> = z
  .array(
    strict<WireStep>({
      equation: z.string().openapi({
        description:
          "In plain text: + - * / ^, sqrt, ln, cosh, tanh, atan2, log10, abs, betainc (regularised) and pi.",
      }),
      relation: z.string().optional().openapi({ description: "Key of its source; absent for a definition." }),
      symbols: z.array(KnownSchema).openapi({ description: "What stands right of the equals sign." }),
      result: KnownSchema.openapi({ description: "What stands left of it, as the engine has it." }),
    }).openapi("Step", { description: "One equation with its numbers." }),
  )
  .openapi({ description: "The chain of equations behind the answer, with `?explain=steps`. In SI." });

/** A number of a dimension, in SI. */
export function si(dimension: Dimension, value: number): SaidSi {
  return { value, unit: siUnit(dimension) };
}

/** A step from an equation and everything that it names; the result is what stands left of the equals sign. */
export function step(
  equation: string,
  relation: SourceKey | undefined,
  symbols: Readonly<Record<string, number | SaidSi>>,
): Step {
  const [name] = equation.split(" = ");
  const known = Object.entries(symbols).map(
    ([symbol, value]): Known =>
      typeof value === "number" ? { symbol, number: value } : { symbol, quantity: value },
  );
  return {
    equation,
    ...(relation === undefined ? {} : { relation }),
    symbols: known.filter(({ symbol }) => symbol !== name),
    result: known.find(({ symbol }) => symbol === name)!,
  };
}
