import type { SourceCases } from "../case.js";

const inputs = { units: "m", width: 2, run: 1.5, n: 0.03, slope: 0.0025, discharge: 50 };

export const cruise: SourceCases = {
  source: "Cruise, Sherif and Singh, Elementary Hydraulics",
  locator: "solution of problem 11.1, read at scribd.com",
  kind: "published",
  seen: "read",
  cases: [{ id: "U-25", evaluates: "normal depth", inputs: inputs, printed: "3.207" }],
};
