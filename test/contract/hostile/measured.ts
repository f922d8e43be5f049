/** Measurements at a stream that cannot be read or cannot be. */

import { type Hostile, row } from "./row.js";

const m = (value: number) => ({ value, unit: "m" });

/** By operation. */
export const measured: Readonly<Record<string, readonly Hostile[]>> = {
  measureDischarge: [
    row("two verticals", (b) => b.verticals.splice(2), 400, "/verticals", "at least 3 items"),
    row(
      "too many verticals",
      (b) => (b.verticals = Array(201).fill(b.verticals[0])),
      400,
      "/verticals",
      "at most 200",
    ),
    row(
      "a dry section",
      (b) => {
        for (const vertical of b.verticals) vertical.depth = m(0);
      },
      422,
      "/verticals",
      "in one of them",
    ),
    row(
      "the triangle rule at a wet edge",
      (b) => {
        b.method = "mid-section, triangle";
        b.verticals[0].depth = m(0.4);
      },
      422,
      "/verticals",
      "0 m",
    ),
    row(
      "an uncertainty that nobody stated",
      (b) => delete b.uncertainty.meter,
      400,
      "/uncertainty/meter",
      "a number",
    ),
  ],
  fitRating: [
    row(
      "a bracket that falls",
      (b) => (b.zeroFlow = { kind: "between", from: m(0.3), to: m(0) }),
      422,
      "/zeroFlow",
      "rising",
    ),
    row(
      "an uncertainty for one gauging only",
      (b) => (b.gaugings[0].uncertainty = 0.1),
      422,
      "/gaugings",
      "for all or for none",
    ),
    row("too many stages", (b) => (b.stages = Array(201).fill(m(1))), 400, "/stages", "at most 200 items"),
  ],
  scaleStream: [
    row(
      "published exponents through three measurements",
      (b) => {
        b.exponents = "downstream";
        b.measurements = Array(3).fill(b.measurements[0]);
      },
      422,
      "/exponents",
      "nothing, or one measurement",
    ),
    row("no discharge", (b) => (b.discharges = []), 400, "/discharges", "at least 1 items"),
  ],
  estimateResistance: [
    row("a description that is no row of the table", (b) => (b.chow = "rocky"), 400, "/chow", "one of clean"),
    row("a stone size as a number", (b) => (b.d84 = 180), 400, "/d84", "a length such as"),
  ],
};
