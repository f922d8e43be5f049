import type { SourceCases } from "../case.js";

const ofU31 = { units: "us-exact", run: 2, n: 0.03, slope: 0.02, discharge: 150 };
const ofC02 = { units: "m", width: 6, run: 1, discharge: 9.2 };
const ofT4hds4 = { units: "m", width: 6, run: 1, discharge: 9.2 };

export const fhwaHds: SourceCases = {
  source: "FHWA HDS-3 and HDS-4",
  locator: "HDS-4 (2008) example 4.5 p. 4-29, and a variant of HDS-3 example 2, both as quoted by iemisc",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "U-31.normal",
      evaluates: "normal depth",
      inputs: ofU31,
      printed: "2.975079",
      tolerance: { absolute: 5e-5, because: "its root is found to 5e-5 ft" },
    },
    {
      id: "U-31.froude",
      evaluates: "Froude number in a section",
      inputs: ofU31,
      printed: "1.224835",
      tolerance: { absolute: 5e-5, because: "its root is found to 5e-5 ft" },
    },
    { id: "C-02.critical", evaluates: "critical depth", inputs: ofC02, printed: "0.6" },
    { id: "C-02.critical-speed", evaluates: "critical speed", inputs: ofC02, printed: "2.3" },
    {
      id: "T4.hds-4",
      evaluates: "critical depth",
      inputs: ofT4hds4,
      printed: "0.621",
      disagrees: "the function that printed it is wrong; HDS-4 itself prints 0.6",
    },
  ],
};
