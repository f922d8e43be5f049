import type { SourceCases } from "../case.js";

const state: SourceCases = {
  source: "Washington State Department of Ecology (2006)",
  locator: "7-day average of daily maxima, as tabulated by NMFS",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "F-08.spawning",
      evaluates: "criterion, C",
      inputs: { source: "WSDE2006", what: "spawning" },
      printed: "13.0",
    },
    {
      id: "F-08.core",
      evaluates: "criterion, C",
      inputs: { source: "WSDE2006", what: "core" },
      printed: "16.0",
    },
  ],
};

const growth: SourceCases = {
  source: "Brungs, W. A.; Jones, B. R., EPA-600/3-77-061 (1977)",
  locator: "rainbow trout, chronic, as quoted in a state's draft of 2015",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "F-09",
      evaluates: "criterion, C",
      inputs: { source: "BrungsJones1977", what: "growth" },
      printed: "19",
    },
  ],
};

const halfDegree = { absolute: 0.5, because: "the source says about, in whole degrees Fahrenheit" } as const;
const quoted = { kind: "published", seen: "quoted", tolerance: halfDegree } as const;

const region: SourceCases = {
  source: "US EPA Region 10, EPA 910-B-03-002 (2003)",
  locator: "tables 3 and 4; lethal temperatures as quoted, 78 and 70 °F",
  kind: "published",
  seen: "from-memory",
  cases: [
    {
      id: "F-10.juveniles",
      evaluates: "criterion, C",
      inputs: { source: "EPA2003", what: "lethal to juv" },
      printed: "25.6",
      ...quoted,
    },
    {
      id: "F-10.adults",
      evaluates: "criterion, C",
      inputs: { source: "EPA2003", what: "lethal to adults" },
      printed: "21.1",
      ...quoted,
    },
    {
      id: "F-11.core",
      evaluates: "criterion, C",
      inputs: { source: "EPA2003", what: "core" },
      printed: "16",
    },
    {
      id: "F-11.other",
      evaluates: "criterion, C",
      inputs: { source: "EPA2003", what: "migration and" },
      printed: "18",
    },
    {
      id: "F-11.migration",
      evaluates: "criterion, C",
      inputs: { source: "EPA2003", what: "migration alone" },
      printed: "20",
    },
  ],
};

/** Whole degrees Fahrenheit, to the last digit of what they are in Celsius. */
const salmon: readonly (readonly [id: string, what: string, printed: string])[] = [
  ["best.from", "best for juvenile Chinook, from", "10.0"],
  ["best.to", "best for juvenile Chinook, up to", "15.6"],
  ["adverse.from", "adverse to juvenile Chinook, rising", "16.1"],
  ["adverse.to", "adverse to juvenile Chinook, rising fast", "20.0"],
  ["lethal", "lethal to juvenile Chinook", "25.0"],
];

const chinook: SourceCases = {
  source: "Agency review kept by San Joaquin County",
  locator: "page 323: juvenile Chinook 50 to 60 °F, 61 to 68 °F, above 77 °F",
  kind: "published",
  seen: "read",
  cases: salmon.map(([id, what, printed]) => ({
    id: `F-12.${id}`,
    evaluates: "criterion, C",
    inputs: { source: "CountyReview", what },
    printed,
  })),
};

const trade: SourceCases = {
  source: "Common practice, no source",
  locator: "-",
  kind: "practice",
  seen: "derived",
  cases: [
    {
      id: "practice.heat.68F",
      evaluates: "heat advice, 0 usual to 3 leave",
      inputs: { temperature: 20.01 },
      printed: "3",
    },
    {
      id: "practice.heat.cool",
      evaluates: "heat advice, 0 usual to 3 leave",
      inputs: { temperature: 12 },
      printed: "0",
    },
  ],
};

export const temperatureSources: readonly SourceCases[] = [state, growth, region, chinook, trade];
