/** A body that fits the schema and still cannot be computed: what is wrong, and where. */

import { QuantityError } from "@plumbdrift/core";
import { type FieldError, shown } from "./field-errors.js";
import { type Problem, type ProblemCode, problem } from "./problems.js";
import { clip } from "./quantity/walk.js";

/** Thrown while decoding, with the path that is to blame. */
export class RefusedError extends Error {
  override readonly name = "RefusedError";
  readonly code: ProblemCode;
  readonly errors: readonly FieldError[];

  constructor(code: ProblemCode, detail: string, ...errors: readonly FieldError[]) {
    super(detail);
    this.code = code;
    this.errors = errors;
  }
}

/** Refuses work beyond a ceiling before any of it is done. */
export function withinBudget(path: string, unit: string, estimate: number, limit: number): void {
  if (estimate <= limit) return;
  throw new RefusedError("over-budget", `This asks for ${estimate} ${unit}; one call may ask for ${limit}.`, {
    path,
    expected: `at most ${limit} ${unit}`,
    received: `${estimate} ${unit}`,
  });
}

/** Runs a builder of the core; what it refuses is laid at `path`. */
export function at<T>(path: string, build: () => T): T {
  try {
    return build();
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    const inside = placesInside.find(([start]) => error.quantity.startsWith(start))?.[1] ?? "";
    const field = fieldOf(error, path + inside);
    throw new RefusedError("impossible", detailOf(error, field), field);
  }
}

/** Where a part says the quantities that its builder names. */
const placesInside: readonly (readonly [start: string, path: string])[] = [
  ["hook size", "/size"],
  ["bead diameter on", "/bead/diameter"],
];

/** Where the quantities that the core names are said in a body. */
const places: readonly (readonly [start: string, path: string])[] = [
  ["surface speed of the", "/water/depth"],
  ["surface speed", "/water/surfaceSpeed"],
  ["speed of the timed floats", "/water/timedFloats"],
  ["distance of a timed float", "/water/timedFloats"],
  ["time of a timed float", "/water/timedFloats"],
  ["height above the bed of a measured point", "/water/points"],
  ["measured points", "/water/points"],
  ["bed", "/water/bed"],
  ["channel width", "/water/channelWidth"],
  ["depth", "/water/depth"],
  ["water temperature", "/water/temperature"],
  ["density of the line", "/rig/sections"],
  ["submerged weight of the sinker", "/rig/sections"],
  ["distance from the float to the lowest sinker", "/cast"],
  ["holding height", "/fish/holdingHeight"],
  ["reach of the fish", "/fish/reach"],
  ["lower edge of the window", "/window/low"],
  ["upper edge of the window", "/window/high"],
  ["sections of the rig", "/rig/sections"],
];

/** The problem that an error stands for, or nothing when it is a failure of ours. */
export function problemOf(error: unknown): Problem | undefined {
  if (error instanceof RefusedError) return problem(error.code, error.message, { errors: [...error.errors] });
  if (!(error instanceof QuantityError)) return undefined;
  const path = places.find(([start]) => error.quantity.startsWith(start))?.[1] ?? "";
  const field = fieldOf(error, path);
  return problem("impossible", detailOf(error, field), { errors: [field] });
}

function detailOf({ quantity, expected }: QuantityError, { received }: FieldError): string {
  return tidy(`${clip(quantity)} must be ${expected}, got ${received}.`);
}

function fieldOf({ quantity, expected, received }: QuantityError, path: string): FieldError {
  const unit = typeof received === "number" ? (/\d( \S+)$/.exec(expected)?.[1] ?? "") : "";
  const said = `${shown(received)}${unit}`;
  return { path, expected: tidy(`${clip(quantity)}: ${expected}`), received: tidy(said) };
}

/** A text with six digits of each number: 0.9144 for three feet, not 0.9144000000000001. */
function tidy(text: string): string {
  return text.replace(/\d+\.\d{7,}/g, (number) => String(Number(Number(number).toPrecision(6))));
}
