import type { SourceCases } from "../case.js";

const streamgager: SourceCases = {
  source: "Lane, S. L.; Fay, R. G., USGS National Field Manual A9 (1997)",
  locator: "depth times velocity in feet, as quoted",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "S-01", evaluates: "rule of ten, m2/s", inputs: {}, printed: "0.92903", unit: "m2/s" },
    {
      id: "S-01.example",
      evaluates: "rule of ten, level in feet",
      inputs: { depthFeet: 2, speedFeet: 5 },
      printed: "3",
      seen: "from-memory",
    },
  ],
};

const person = { height: 1.75, mass: 75 };

const rescdam: SourceCases = {
  source: "Karvonen, R. A. et al., RESCDAM (2000)",
  locator: "product at loss of stability; formulas by footing, 1.75 m and 75 kg",
  kind: "analytic",
  seen: "from-memory",
  cases: [
    {
      id: "S-02.least",
      evaluates: "least lost footing, m2/s",
      inputs: {},
      printed: "0.64",
      kind: "published",
      seen: "quoted",
    },
    {
      id: "S-02.greatest",
      evaluates: "greatest lost footing, m2/s",
      inputs: {},
      printed: "1.29",
      kind: "published",
      seen: "quoted",
    },
    {
      id: "S-03.good",
      evaluates: "rescue product, m2/s",
      inputs: { ...person, footing: "good" },
      printed: "1.0875",
    },
    {
      id: "S-03.normal",
      evaluates: "rescue product, m2/s",
      inputs: { ...person, footing: "normal" },
      printed: "0.7250",
    },
    {
      id: "S-03.poor",
      evaluates: "rescue product, m2/s",
      inputs: { ...person, footing: "poor" },
      printed: "0.3625",
    },
  ],
};

type Row = readonly [id: string, heightMass: number, depth: number, speed: number, level: string];

const bands: readonly Row[] = [
  ["adult.low", 60, 0.5, 1.19, "1"],
  ["adult.some", 60, 0.5, 1.21, "2"],
  ["adult.most", 60, 0.5, 1.61, "3"],
  ["adult.deep", 60, 1.21, 0.1, "3"],
  ["adult.quick", 60, 0.1, 3.01, "3"],
  ["child.low", 40, 0.4, 0.99, "1"],
  ["child.most", 40, 0.4, 1.01, "3"],
  ["child.deep", 40, 0.51, 0.1, "3"],
  ["infant", 24.9, 0.1, 0.1, "3"],
];

const cox: SourceCases = {
  source: "Cox, R. J.; Shand, T. D.; Blacka, M. J., P10/S1/006 (2010)",
  locator: "bands of depth times velocity, either side of each limit",
  kind: "published",
  seen: "from-memory",
  cases: bands.map(([id, heightMass, depth, speed, printed]) => ({
    id: `S-05.${id}`,
    evaluates: "hazard level, 1 low to 3 most",
    inputs: { heightMass, depth, speed },
    printed,
  })),
};

const small: SourceCases = {
  source: "Cox, R. J.; Yee, M.; Ball, J. E. (2004)",
  locator: "abstract: 0.4 m2/s does not do for every child, and below 20 m kg for none",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "S-06",
      evaluates: "hazard level, 1 low to 3 most",
      inputs: { heightMass: 19.9, depth: 0.4, speed: 1 },
      printed: "3",
    },
  ],
};

/** Either side of each limit: depth, speed and the class. */
type Flooded = readonly [id: string, depth: number, speed: number, printed: string];

const flooded = (row: string, source: string, limits: readonly Flooded[]): SourceCases["cases"] =>
  limits.map(([id, depth, speed, printed]) => ({
    id: `${row}.${id}`,
    evaluates: "flood class, mildest 1",
    inputs: { source, depth, speed },
    printed,
  }));

/** What a class means for a person of so much height times mass. */
const barred = (
  row: string,
  source: string,
  people: readonly (readonly [...Flooded, heightMass: number])[],
): SourceCases["cases"] =>
  people.map(([id, depth, speed, printed, heightMass]) => ({
    id: `${row}.${id}`,
    evaluates: "level in a flood, 0 silent or 3 beyond",
    inputs: { source, depth, speed, heightMass },
    printed,
  }));

const streets: SourceCases = {
  source: "Australian Institute for Disaster Resilience, guideline 7-3 (2017)",
  locator: "tables 1 and 2, either side of each limit of depth times speed, depth and speed",
  kind: "published",
  seen: "from-memory",
  cases: [
    ...flooded("S-07", "AIDR2017", [
      ["H1.product", 0.29, 1.03, "1"],
      ["H2.product", 0.29, 1.04, "2"],
      ["H1.depth", 0.3, 0.1, "1"],
      ["H2.depth", 0.31, 0.1, "2"],
      ["H1.speed", 0.1, 2, "1"],
      ["H5.speed", 0.1, 2.01, "5"],
      ["H2.upper", 0.5, 1.19, "2"],
      ["H4.product", 0.5, 1.21, "4"],
      ["H3.depth", 0.51, 0.1, "3"],
      ["H3.upper", 1.2, 0.49, "3"],
      ["H4.depth", 1.21, 0.1, "4"],
      ["H4.upper", 2, 0.49, "4"],
      ["H5.product", 2, 0.51, "5"],
      ["H5.depth", 2.01, 0.1, "5"],
      ["H5.upper", 1, 3.99, "5"],
      ["H6.product", 1.01, 3.99, "6"],
      ["H6.depth", 4.01, 0.1, "6"],
      ["H6.speed", 0.1, 4.01, "6"],
    ]),
    ...barred("S-07", "AIDR2017", [
      ["H4.people", 0.5, 1.21, "3", 130],
      ["H3.adult", 1.2, 0.49, "0", 130],
      ["H3.child", 0.51, 0.1, "3", 40],
    ]),
  ],
};

const dams: SourceCases = {
  source: "Swiss danger levels of flood waves below dams",
  locator: "table 2 of a trade page, either side of each limit of depth and depth times speed",
  kind: "published",
  seen: "read",
  cases: flooded("S-08", "FOWG2002", [
    ["1", 0.5, 0.99, "1"],
    ["2.product", 0.5, 1.01, "2"],
    ["2.depth", 0.51, 0.1, "2"],
    ["3.product", 0.5, 2.01, "3"],
    ["3.depth", 1.01, 0.1, "3"],
    ["4.product", 0.5, 4.01, "4"],
    ["4.depth", 2.01, 0.1, "4"],
  ]),
};

const rating: SourceCases = {
  source: "Defra and Environment Agency, FD2320 and FD2321 (2005 and 2006)",
  locator: "d (v + 0.5) + DF and the limits of its classes, 0.75, 1.25 and 2.0",
  kind: "published",
  seen: "from-memory",
  cases: [
    {
      id: "S-10",
      evaluates: "hazard rating",
      inputs: { depth: 0.5, speed: 1, debris: 0 },
      printed: "0.75",
      kind: "analytic",
    },
    {
      id: "S-10.debris",
      evaluates: "hazard rating",
      inputs: { depth: 0.5, speed: 1, debris: 1 },
      printed: "1.75",
      kind: "analytic",
    },
    ...flooded("S-10", "Defra2006", [
      ["1", 0.5, 0.99, "1"],
      ["2", 0.5, 1, "2"],
      ["3", 0.5, 2, "3"],
      ["4", 0.5, 3.5, "4"],
    ]),
    ...barred("S-10", "Defra2006", [
      ["3.people", 0.5, 2, "3", 130],
      ["2.adult", 0.5, 1.99, "0", 130],
      ["2.child", 0.5, 1, "3", 40],
    ]),
  ],
};

const houses: SourceCases = {
  source: "RESCDAM thresholds as used by a public code of USACE, lifeloss/stability.go",
  locator:
    "32.3 and 75.3 ft2/s, 6.6 ft/s, and their metric equivalents: a conversion; nothing here judges houses",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "S-09.partial", evaluates: "ft2/s in m2/s", inputs: { value: 32.3 }, printed: "3.0" },
    { id: "S-09.total", evaluates: "ft2/s in m2/s", inputs: { value: 75.3 }, printed: "7.0" },
    { id: "S-09.speed", evaluates: "ft/s in m/s", inputs: { value: 6.6 }, printed: "2.0" },
  ],
};

const letter: SourceCases = {
  source: "Letter of a former hazard engineer to a newspaper",
  locator: "an adult swept off at less than 4 ft/s, mid-thigh: 0.65 m and 1.2 m/s",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "S-11",
      evaluates: "wading level, 1 to 3",
      inputs: { depth: 0.65, speed: 1.2 },
      printed: "2.5",
      tolerance: {
        absolute: 0.5,
        because: "doubtful or beyond; the letter gives no limit, and under is wrong",
      },
    },
  ],
};

export const wadingSources: readonly SourceCases[] = [
  streamgager,
  rescdam,
  cox,
  small,
  streets,
  dams,
  rating,
  houses,
  letter,
];
