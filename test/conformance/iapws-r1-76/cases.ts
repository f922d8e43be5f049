import type { SourceCases } from "../case.js";

export const iapwsSurfaceTension: SourceCases = {
  source: "IAPWS R1-76(2014), Surface tension of ordinary water substance",
  locator: "Table 1, as evaluated by github:jjgomera/iapws@18d2c48 test.py",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "W-30", evaluates: "surface tension, mN/m, at °C", inputs: { celsius: 0.01 }, printed: "75.65" },
    { id: "W-31", evaluates: "surface tension, mN/m, at °C", inputs: { celsius: 10 }, printed: "74.22" },
    { id: "W-32", evaluates: "surface tension, mN/m, at °C", inputs: { celsius: 20 }, printed: "72.74" },
    { id: "W-34.40", evaluates: "surface tension, mN/m, at °C", inputs: { celsius: 40 }, printed: "69.60" },
    { id: "W-34.60", evaluates: "surface tension, mN/m, at °C", inputs: { celsius: 60 }, printed: "66.24" },
    { id: "W-34.100", evaluates: "surface tension, mN/m, at °C", inputs: { celsius: 100 }, printed: "58.91" },
    {
      id: "W-36.5",
      evaluates: "surface tension, mN/m, at °C",
      inputs: { celsius: 5 },
      printed: "74.94",
      seen: "recomputed",
    },
    {
      id: "W-36.15",
      evaluates: "surface tension, mN/m, at °C",
      inputs: { celsius: 15 },
      printed: "73.49",
      seen: "recomputed",
    },
    {
      id: "W-36.25",
      evaluates: "surface tension, mN/m, at °C",
      inputs: { celsius: 25 },
      printed: "71.97",
      seen: "recomputed",
    },
  ],
};
