import type { SourceCases } from "../case.js";

export const arcementSchneider: SourceCases = {
  source: "Arcement and Schneider 1989, USGS WSP 2339",
  locator: "Table 4, example p. 35",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "R-13", evaluates: "n by Cowan, base and vegetation", inputs: { base: 0.025 }, printed: "0.030" },
  ],
};
