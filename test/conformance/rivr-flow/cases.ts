import type { SourceCases } from "../case.js";

const ofU27 = { units: "us-1.486", width: 100, n: 0.045, slope: 0.001, discharge: 250 };
const ofC09 = { units: "m", width: 6.1, run: 1.5, discharge: 126, gravity: 9.81 };
const ofC10 = { units: "us-1.486", width: 4, run: 2, discharge: 150, gravity: 32.174 };
const ofT2 = { units: "us-1.486", width: 4, run: 2, discharge: 150, gravity: 32.2 };
const ofC17 = { units: "us-1.486", width: 100, discharge: 250, gravity: 32.2 };

export const rivrFlow: SourceCases = {
  source: "rivr (Koohafkan and Younis 2015, R Journal 7(2):249)",
  locator:
    "normal_depth, critical_depth and froude, github:mkoohafkan/rivr@837fb8b; C-10 as run in iemisc's vignette",
  kind: "published",
  seen: "read",
  cases: [
    { id: "U-27", evaluates: "normal depth", inputs: ofU27, printed: "1.711301" },
    { id: "C-09", evaluates: "critical depth", inputs: ofC09, printed: "2.783155" },
    { id: "C-10", evaluates: "critical depth", inputs: ofC10, printed: "2.40582", seen: "quoted" },
    {
      id: "T2",
      evaluates: "critical depth",
      inputs: ofT2,
      printed: "2.40582",
      disagrees: "g = 32.2 ft/s² instead of 32.174: six digits are not reproduced",
      seen: "quoted",
    },
    {
      id: "C-17.slow",
      evaluates: "class of a flow, −1 slow, 1 fast",
      inputs: { ...ofC17, depth: 1.71 },
      printed: "-1",
      tolerance: { absolute: 0, because: "a class, not a number" },
    },
    {
      id: "C-17.critical",
      evaluates: "class of a flow, −1 slow, 1 fast",
      inputs: { ...ofC17, depth: 0.579 },
      printed: "0",
      tolerance: { absolute: 0, because: "a class, not a number" },
    },
    {
      id: "C-17.fast",
      evaluates: "class of a flow, −1 slow, 1 fast",
      inputs: { ...ofC17, depth: 0.45 },
      printed: "1",
      tolerance: { absolute: 0, because: "a class, not a number" },
    },
  ],
};
