import type { CaseRow, SourceCases } from "../case.js";

const limits = {
  silt: [1 / 256, 1 / 16],
  sand: [1 / 16, 2],
  granule: [2, 4],
  pebble: [4, 64],
  cobble: [64, 256],
  boulder: [256, 512],
};

function rows(grade: string, [least = 0, greatest = 0]: readonly number[]): readonly CaseRow[] {
  const tolerance = { relative: 1e-9, because: "powers of two" };
  const shared = { inputs: { grade }, tolerance };
  const own = grade === "boulder" ? { kind: "practice" as const } : {};
  return [
    { id: `${grade}, from`, evaluates: "lower limit of a grade, mm", printed: String(least), ...shared },
    {
      id: `${grade}, to`,
      evaluates: "upper limit of a grade, mm",
      printed: String(greatest),
      ...shared,
      ...own,
    },
  ];
}

export const wentworth: SourceCases = {
  source: "Wentworth 1922",
  locator: "the table of grades",
  kind: "published",
  seen: "from-memory",
  cases: Object.entries(limits).flatMap(([grade, pair]) => rows(grade, pair)),
};
