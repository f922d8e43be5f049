import type { SourceCases } from "../case.js";

const ofU20 = { units: "m", width: 3, n: 0.025, slope: 0.002, discharge: 5 };
const ofC15 = { units: "m", width: 3, discharge: 5, depth: 1.215, gravity: 9.81 };

export const leeds: SourceCases = {
  source: "University of Leeds, CIVE3415, example sheets 2024",
  locator: "S2, problem E2.2",
  kind: "published",
  seen: "read",
  cases: [
    { id: "U-20", evaluates: "normal depth", inputs: ofU20, printed: "1.215" },
    { id: "C-15", evaluates: "energy above the least", inputs: ofC15, printed: "0.326" },
  ],
};
