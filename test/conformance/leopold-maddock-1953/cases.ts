import type { SourceCases } from "../case.js";

const tolerance = { absolute: 1e-12, because: "a printed exponent is taken as it is" };
const station = { kind: "at a station" };
const downstream = { kind: "downstream" };

export const leopoldMaddock: SourceCases = {
  source: "Leopold and Maddock 1953, USGS Professional Paper 252",
  locator: "mean exponents",
  kind: "published",
  seen: "read",
  cases: [
    { id: "H-01.width", evaluates: "width exponent", inputs: station, printed: "0.26", tolerance },
    { id: "H-01.depth", evaluates: "depth exponent", inputs: station, printed: "0.40", tolerance },
    { id: "H-01.speed", evaluates: "speed exponent", inputs: station, printed: "0.34", tolerance },
    {
      id: "H-02.width",
      evaluates: "width exponent",
      inputs: downstream,
      printed: "0.5",
      tolerance,
      seen: "from-memory",
    },
    {
      id: "H-02.depth",
      evaluates: "depth exponent",
      inputs: downstream,
      printed: "0.4",
      tolerance,
      seen: "from-memory",
    },
    {
      id: "H-02.speed",
      evaluates: "speed exponent",
      inputs: downstream,
      printed: "0.1",
      tolerance,
      seen: "from-memory",
    },
    {
      id: "H-03.sum",
      evaluates: "sum of fitted exponents",
      inputs: {},
      printed: "1.000000000000",
      kind: "analytic",
      seen: "derived",
    },
    {
      id: "H-03.product",
      evaluates: "product of fitted coefficients",
      inputs: {},
      printed: "1.0000000000",
      kind: "analytic",
      seen: "derived",
    },
    {
      id: "H-04.width",
      evaluates: "width exponent of a wide rectangle",
      inputs: {},
      printed: "0.000000000",
      kind: "analytic",
      seen: "derived",
    },
    {
      id: "H-04.depth",
      evaluates: "depth exponent of a wide rectangle",
      inputs: {},
      printed: "0.60000",
      kind: "analytic",
      seen: "derived",
    },
    {
      id: "H-04.speed",
      evaluates: "speed exponent of a wide rectangle",
      inputs: {},
      printed: "0.40000",
      kind: "analytic",
      seen: "derived",
    },
  ],
};
