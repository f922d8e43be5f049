import type { SourceCases } from "../case.js";

const ofU12 = { units: "us-exact", run: 4, depth: 6, n: 0.025, slope: 0.006 };
const ofC11 = { units: "us-exact", width: 8, discharge: 745, gravity: 32.174 };

export const hauser: SourceCases = {
  source: "Hauser, Practical Hydraulics Handbook, as evaluated by iemisc and rivr",
  locator: "problems 1 and 17, github:cran/iemisc",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "U-12.discharge",
      evaluates: "discharge of uniform flow",
      inputs: ofU12,
      printed: "1351.443",
      tolerance: { relative: 1e-6, because: "K_u is 1.48592 there" },
    },
    {
      id: "U-12.froude",
      evaluates: "Froude number in a section",
      inputs: ofU12,
      printed: "0.9552611",
      tolerance: { absolute: 1e-6, because: "K_u is 1.48592 there" },
    },
    {
      id: "U-12.critical",
      evaluates: "critical depth",
      inputs: ofU12,
      printed: "5.89115",
      tolerance: { relative: 1e-6, because: "K_u is 1.48592 there" },
    },
    {
      id: "C-11",
      evaluates: "critical depth",
      inputs: ofC11,
      printed: "6.459654",
      tolerance: { absolute: 2e-6, because: "its root is found to about 1e-6 ft: (q²/g)^(1/3) is 6.4596527" },
    },
  ],
};
