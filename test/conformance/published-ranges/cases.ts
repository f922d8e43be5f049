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

function lawLimit(law: string, quantity: string, least: string | null, greatest: string): readonly CaseRow[] {
  const shared = { inputs: { law, quantity }, tolerance: { relative: 1e-9, because } };
  const upper: CaseRow = {
    id: `range.${law}, ${quantity}, greatest`,
    evaluates: "greatest value of a law's range",
    printed: greatest,
    ...shared,
  };
  if (least === null) return [upper];
  const lower: CaseRow = {
    id: `range.${law}, ${quantity}, least`,
    evaluates: "least value of a law's range",
    printed: least,
    ...shared,
  };
  return [lower, upper];
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
    ...lawLimit("Limerinos", "hydraulic radius over D84", "0.9", "69"),
    ...lawLimit("Limerinos", "hydraulic radius, m", "0.31", "3.32"),
    ...lawLimit("Limerinos", "D84, m", "0.019", "0.747"),
    ...lawLimit("Bathurst", "depth over D84", null, "10"),
    ...lawLimit("Bathurst", "slope", "0.004", "0.04"),
    ...lawLimit("Jarrett", "slope", "0.002", "0.04"),
    ...lawLimit("Jarrett", "hydraulic radius, m", "0.15", "2.1"),
    ...lawLimit("Strickler", "hydraulic radius over D50", "4", "500"),
    // 15 ft
    ...lawLimit("Cowan", "hydraulic radius, m", null, "4.572"),
    limit("power", "least", "2"),
    limit("power", "greatest", "12"),
    limit("mixing layer", "least", "0.2", "from-memory"),
    limit("mixing layer", "greatest", "7", "from-memory"),
    limit("dip", "least", "4.1", "from-memory"),
    limit("dip", "greatest", "15", "from-memory"),
    limit("wake", "least", "50", "from-memory"),
    ...[
      ...lawLimit("Bathurst", "depth, m", "0.102", "1.6"),
      ...lawLimit("Bathurst", "D84, m", "0.113", "0.74"),
      ...lawLimit("Maynord", "D90, m", "0.00457", "0.134"),
    ].map((row): CaseRow => ({ ...row, seen: "from-memory" })),
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
