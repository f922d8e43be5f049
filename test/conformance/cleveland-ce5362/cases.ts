import type { SourceCases } from "../case.js";

const inputs = { units: "m", width: 10, n: 0.033, slope: 0.001, discharge: 100, gravity: 9.81 };

export const cleveland: SourceCases = {
  source: "Cleveland, Texas Tech CE 5362",
  locator: "lesson 9, github:dustykat/ce-5362-webroot",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "U-36.normal",
      evaluates: "normal depth",
      inputs: inputs,
      printed: "5.6",
      disagrees: "the printed depth carries 102.5 m³/s, not 100: it is read off or rounded",
    },
    { id: "U-36.critical", evaluates: "critical depth", inputs: inputs, printed: "2.17" },
  ],
};
