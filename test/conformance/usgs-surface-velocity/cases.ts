import type { SourceCases } from "../case.js";

export const usgsSurface: SourceCases = {
  source: "USGS SurfBoard, after Rantz 1982 and Turnipseed and Sauer 2010",
  locator: "my.usgs.gov/confluence/display/SurfBoard, surface velocity coefficient",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "V-11.power6",
      evaluates: "mean over surface",
      inputs: { exponent: 6 },
      printed: "0.87",
      tolerance: { absolute: 0.03, because: "the published range is 0.84 to 0.90" },
    },
    {
      id: "V-11.power7",
      evaluates: "mean over surface",
      inputs: { exponent: 7 },
      printed: "0.87",
      tolerance: { absolute: 0.03, because: "the published range is 0.84 to 0.90" },
    },
    {
      id: "V-11.granule",
      evaluates: "mean over surface, bed",
      inputs: { bed: "granule", depth: 0.9 },
      printed: "0.87",
      tolerance: { absolute: 0.03, because: "the published range is 0.84 to 0.90" },
    },
    {
      id: "V-11.pebble",
      evaluates: "mean over surface, bed",
      inputs: { bed: "pebble", depth: 0.9 },
      printed: "0.87",
      tolerance: { absolute: 0.03, because: "the published range is 0.84 to 0.90" },
      disagrees: "0.838 at 56 stone sizes of depth",
    },
    {
      id: "V-11.cobble",
      evaluates: "mean over surface, bed",
      inputs: { bed: "cobble", depth: 0.9 },
      printed: "0.87",
      tolerance: { absolute: 0.03, because: "the published range is 0.84 to 0.90" },
      disagrees: "rough water: 7 stone sizes of depth, see V-17",
    },
    {
      id: "V-11.boulder",
      evaluates: "mean over surface, bed",
      inputs: { bed: "boulder", depth: 0.9 },
      printed: "0.87",
      tolerance: { absolute: 0.03, because: "the published range is 0.84 to 0.90" },
      disagrees: "rough water: 2.5 stone sizes of depth, see V-17",
    },
  ],
};
