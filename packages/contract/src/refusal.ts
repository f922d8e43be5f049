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

/** Runs a builder of the core; what it refuses is laid at `path`. */
export function at<T>(path: string, build: () => T): T {
  try {
    return build();
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    throw refusedAt(path + placeIn(placesInside, error), error);
  }
}

/** How the name of a quantity starts, and where a body says it. `#` stands for a number counted from 1 in the name, from 0 in the path. */
export type Places = readonly (readonly [start: string, path: string])[];

/** Runs the core; what it refuses is laid where `places` say. */
export function within<T>(call: () => T, places: Places = waterPlaces): T {
  try {
    return call();
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    throw refusedAt(placeIn(places, error), error);
  }
}

function refusedAt(path: string, error: QuantityError): RefusedError {
  const field = fieldOf(error, path);
  return new RefusedError("impossible", detailOf(error, field), field);
}

function placeIn(places: Places, { quantity }: QuantityError): string {
  for (const [start, path] of places) {
    const found = new RegExp(`^${start.replace("#", "(\\d+)")}`).exec(quantity);
    if (found) return path.replace("#", String(Number(found[1]) - 1));
  }
  return "";
}

/** Where a part says the quantities that its builder names. */
const placesInside: Places = [
  ["hook size", "/size"],
  ["distance of the cast", "/distance"],
  ["direction of the cast", "/upstream"],
  ["turnover", "/turnover"],
  ["slack", "/slack"],
  ["speed of lane #", "/lanes/#/surfaceSpeed"],
  ["place of lane #", "/lanes/#/across"],
  ["lanes", "/lanes"],
  ["bead diameter on", "/bead/diameter"],
  ["station of point #", "/points/#/station"],
  ["elevation of point #", "/points/#/elevation"],
  ["rise to point #", "/points/#"],
  ["point #", "/points/#"],
  ["survey", "/points"],
  ["Manning n of zone #", "/zones/#/manning"],
  ["station of zone #", "/zones/#/from"],
  ["stations of the ineffective ends", "/ineffective"],
];

/** Where the quantities that the core names are said in a body with water. */
export const waterPlaces: Places = [
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
  ["moment of mend #", "/mends/#/at"],
  ["held force of mend #", "/mends/#/held"],
  ["steps of the drift", "/timeStep"],
  ["holding height", "/fish/holdingHeight"],
  ["reach of the fish", "/fish/reach"],
  ["lower edge of the window", "/window/low"],
  ["upper edge of the window", "/window/high"],
  ["sections of the rig", "/rig/sections"],
  ["speed of a timed drift", "/seen"],
  ["uncertainty of water and rig", "/uncertainty"],
  ["single changes that the box allows", "/box"],
];

/** The problem that an error stands for, or nothing when it is a failure of ours. */
export function problemOf(error: unknown): Problem | undefined {
  if (error instanceof RefusedError) return problem(error.code, error.message, { errors: [...error.errors] });
  if (!(error instanceof QuantityError)) return undefined;
  return problemOf(refusedAt(placeIn(waterPlaces, error), error));
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
