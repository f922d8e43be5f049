import type { SourceCases } from "../case.js";

const ofU34 = { units: "us-1.486", width: 6, run: 0.83909963117728, n: 0.016, slope: 0.0015, discharge: 300 };
const ofC03 = { units: "us-1.49", width: 10, n: 0.025, discharge: 600, gravity: 32.2 };
const ofT1 = { units: "us-1.486", width: 10, n: 0.025, discharge: 600, gravity: 32.2 };
const ofJ02 = { units: "m", width: 1, discharge: 10, depth: 1.25, gravity: 9.81 };

export const white: SourceCases = {
  source: "White, Fluid Mechanics, ch. 10",
  locator: "problem p0790 read at coursehero.com; others from memory, their inputs give their outputs",
  kind: "published",
  seen: "recomputed",
  cases: [
    { id: "U-34.us-1.486", evaluates: "normal depth", inputs: ofU34, printed: "4.58" },
    {
      id: "U-34.us-1.49",
      evaluates: "normal depth",
      inputs: { ...ofU34, units: "us-1.49" },
      printed: "4.58",
    },
    { id: "C-03.critical", evaluates: "critical depth", inputs: ofC03, printed: "4.82", seen: "read" },
    {
      id: "C-03.critical-slope",
      evaluates: "critical slope",
      inputs: ofC03,
      printed: "0.0132",
      seen: "read",
    },
    {
      id: "T1.C-03",
      evaluates: "critical slope",
      inputs: ofT1,
      printed: "0.0132",
      disagrees: "K_u = 1.486 instead of 1.49 gives 0.01327",
      seen: "read",
    },
    { id: "J-02.after", evaluates: "depth after a jump", inputs: ofJ02, printed: "3.46" },
    { id: "J-02.speed-after", evaluates: "speed after a jump", inputs: ofJ02, printed: "2.89" },
    { id: "J-02.froude-after", evaluates: "Froude number after a jump", inputs: ofJ02, printed: "0.496" },
    { id: "J-02.loss", evaluates: "head lost in a jump", inputs: ofJ02, printed: "0.625" },
    { id: "J-02.loss-share", evaluates: "head lost in a jump, %", inputs: ofJ02, printed: "14" },
  ],
};
