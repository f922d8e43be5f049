import type { SourceCases } from "../case.js";

const inputs = { units: "us-1.49", width: 4, n: 0.013, slope: 0.00084, discharge: 18 };

export const bengtson: SourceCases = {
  source: "Bengtson, course on the Manning equation",
  locator: "page 21 as read at fliphtml5.com",
  kind: "published",
  seen: "read",
  cases: [{ id: "U-24", evaluates: "normal depth", inputs: inputs, printed: "1.50" }],
};
