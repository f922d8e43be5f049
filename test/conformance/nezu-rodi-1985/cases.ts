import type { SourceCases } from "../case.js";

export const nezuRodi: SourceCases = {
  source: "Nezu and Rodi 1985, as cited in Appl. Water Sci. (2017)",
  locator: "doi 10.1007/s13201-017-0587-4",
  kind: "published",
  seen: "quoted",
  cases: [{ id: "V-20", evaluates: "widest channel with a dip, depths", inputs: {}, printed: "5.000" }],
};
