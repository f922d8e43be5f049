import type { SourceCases } from "../case.js";

export const isoViscosity: SourceCases = {
  source: "ISO/TR 3666:1998, Viscosity of water",
  locator: "reference value at 20 °C",
  kind: "published",
  seen: "recomputed",
  cases: [{ id: "W-27", evaluates: "viscosity, µPa s, at °C", inputs: { celsius: 20 }, printed: "1001.6" }],
};
