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

export const wadingSources: readonly SourceCases[] = [streamgager, rescdam, cox, small, letter];
