import type { SourceCases } from "../case.js";

const ofU33 = { units: "m", diameter: 0.2, n: 0.013, slope: 0.001, discharge: 0.01 };
const ofT9 = { units: "us-1.486", width: 20, run: 1, n: 0.015, depth: 3, discharge: 360 };

export const maurer: SourceCases = {
  source: "R package hydraulics (Maurer)",
  locator: "manningc help, github:EdM44/hydraulics@f055507, and its vignette",
  kind: "published",
  seen: "read",
  cases: [
    { id: "U-33.normal", evaluates: "normal depth", inputs: ofU33, printed: "0.158" },
    { id: "U-33.critical", evaluates: "critical depth", inputs: ofU33, printed: "0.085" },
    {
      id: "T9.vignette",
      evaluates: "slope of friction at a depth",
      inputs: ofT9,
      printed: "0.00088",
      disagrees: "a loose root: putting its own depth into the formula gives 0.000853",
    },
    {
      id: "T9.us-1.486",
      evaluates: "slope of friction at a depth",
      inputs: ofT9,
      printed: "0.000853",
      kind: "independent",
      seen: "derived",
    },
    {
      id: "T9.us-1.49",
      evaluates: "slope of friction at a depth",
      inputs: { ...ofT9, units: "us-1.49" },
      printed: "0.000848",
      kind: "independent",
      seen: "derived",
    },
  ],
};
