import type { CaseRow, Seen, SourceCases } from "../case.js";

const because = "a stated limit, not a rounded one";

function limit(of: string, end: "least" | "greatest", printed: string, seen: Seen = "quoted"): CaseRow {
  return {
    id: `range.${of}, ${end}`,
    evaluates: `${end} value of a range`,
    inputs: { of },
    printed,
    seen,
    tolerance: { relative: 1e-5, because },
  };
}

export const publishedRanges: SourceCases = {
  source: "The sources of the relations",
  locator: "the range each gives",
  kind: "published",
  seen: "quoted",
  cases: [
    limit("surface tension", "least", "-25"),
    limit("surface tension", "greatest", "373.946"),
    limit("sphere", "greatest", "2e5"),
    limit("cylinder", "least", "1e-4"),
    limit("cylinder", "greatest", "2e5"),
    limit("power", "least", "2"),
    limit("power", "greatest", "12"),
    limit("mixing layer", "least", "0.2", "from-memory"),
    limit("mixing layer", "greatest", "7", "from-memory"),
    limit("dip", "least", "4.1", "from-memory"),
    limit("dip", "greatest", "15", "from-memory"),
    limit("turbulence", "least", "0.1", "from-memory"),
    limit("turbulence", "greatest", "0.9", "from-memory"),
    {
      id: "dip strength, five depths wide",
      evaluates: "dip strength at the wall",
      inputs: { width: 5 },
      // 1.3 e^(−2.5)
      printed: "0.1067105",
      seen: "from-memory",
    },
    {
      id: "turbulence across",
      evaluates: "turbulence across over u*",
      inputs: { relativeHeight: 0 },
      printed: "1.63",
      seen: "from-memory",
    },
    {
      id: "turbulence upright",
      evaluates: "turbulence upright over u*",
      inputs: { relativeHeight: 0 },
      printed: "1.27",
      seen: "from-memory",
    },
  ],
};
