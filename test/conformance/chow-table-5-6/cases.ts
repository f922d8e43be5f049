import type { CaseRow, SourceCases } from "../case.js";

/** Least, normal and greatest n of a row. */
const row = (
  id: string,
  channel: string,
  ...printed: readonly [string, string, string]
): readonly CaseRow[] =>
  (["min", "normal", "max"] as const).map(
    (bound, k): CaseRow => ({
      id: `${id}${id.includes(".") ? "-" : "."}${bound}`,
      evaluates: "n by Chow's table",
      inputs: { channel, bound },
      printed: printed[k] ?? "",
      tolerance: { absolute: 1e-12, because: "an entry of a table is the printed number itself" },
    }),
  );

export const chowTableCases: SourceCases = {
  source: "Chow 1959, Open-Channel Hydraulics, Table 5-6",
  locator: "rows for minor streams, excavated channels and concrete",
  kind: "published",
  seen: "quoted",
  cases: [
    ...row("R-30", "clean, straight, full stage", "0.025", "0.030", "0.033"),
    ...row("R-31", "clean, straight, more stones and weeds", "0.030", "0.035", "0.040"),
    ...row("R-32", "clean, winding, some pools and shoals", "0.033", "0.040", "0.045"),
    ...row("R-33", "winding, some weeds and stones", "0.035", "0.045", "0.050"),
    ...row("R-34", "winding, lower stages, more ineffective slopes and sections", "0.040", "0.048", "0.055"),
    ...row("R-35", "winding, more stones", "0.045", "0.050", "0.060"),
    ...row("R-36", "sluggish reaches, weedy, deep pools", "0.050", "0.070", "0.080"),
    ...row(
      "R-37",
      "very weedy reaches, deep pools, or floodways with heavy timber",
      "0.075",
      "0.100",
      "0.150",
    ).map((one): CaseRow => ({ ...one, seen: "from-memory" })),
    ...row("R-38", "mountain stream, gravels, cobbles, few boulders", "0.030", "0.040", "0.050"),
    ...row("R-39", "mountain stream, cobbles with large boulders", "0.040", "0.050", "0.070"),
    ...row("R-40.new", "earth, clean, recently completed", "0.016", "0.018", "0.020"),
    ...row("R-40.weathered", "earth, clean, after weathering", "0.018", "0.022", "0.025"),
    ...row("R-40.gravel", "gravel, uniform section, clean", "0.022", "0.025", "0.030"),
    ...row("R-41.trowel", "concrete, trowel finish", "0.011", "0.013", "0.015"),
    ...row("R-41.float", "concrete, float finish", "0.013", "0.015", "0.016"),
    ...row("R-41.unfinished", "concrete, unfinished", "0.014", "0.017", "0.020"),
  ],
};
