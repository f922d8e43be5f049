import type { SourceCases } from "../case.js";

const line = {
  relativeSpeed: 1,
  diameter: 1e-3,
  length: 29.718969,
  weightPerMetre: 0.8,
  normalDrag: 0,
  sinkerWeight: 1e-9,
  sinkerDrag: 9.664342816,
  pull: 9.664342816,
  load: 23.7751752,
};

export const moorpy: SourceCases = {
  source: "MoorPy, tests/test_catenary.py",
  locator: "github:NREL/MoorPy@30b7fc4, case 2",
  kind: "independent",
  seen: "read",
  cases: [
    {
      id: "K-07.rise",
      evaluates: "held line in a uniform stream",
      inputs: { ...line, quantity: "drop, m" },
      printed: "20",
      tolerance: { relative: 1e-5, because: "the test asks for 1e-5" },
    },
    {
      id: "K-07.run",
      evaluates: "held line in a uniform stream",
      inputs: { ...line, quantity: "set downstream, m" },
      printed: "19.718969",
      tolerance: { absolute: 4e-4, because: "the test asks for 1e-5 of the whole 400 m, here 40 m" },
    },
  ],
};
