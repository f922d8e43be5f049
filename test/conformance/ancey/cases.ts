import type { SourceCases } from "../case.js";

const inputs = { units: "m", width: 1000000, chezy: 50, slope: 0.002, discharge: 10000000 };

export const ancey: SourceCases = {
  source: "Ancey, Hydraulique (EPFL)",
  locator: "figure 5.57, github:cancey/hydraulics, Floods/Flume/readme.md",
  kind: "published",
  seen: "read",
  cases: [{ id: "U-14", evaluates: "normal depth", inputs: inputs, printed: "2.71" }],
};
