import type { SourceCases } from "../case.js";

const evaluates = "depth at the upper end of the profile, ft";
const because = "the page takes K_u = 1.486, the core 1.485919 as SI: 3e-5 of the depth";

export const rivrProfiles: SourceCases = {
  source: "rivr (Koohafkan and Younis 2015), compute_profile",
  locator: "man/compute_profile.Rd, man/normal_depth.Rd",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "G-04.M1",
      evaluates,
      inputs: { depth: 2.7, length: 40_000 },
      printed: "1.711301",
      tolerance: { relative: 5e-5, because },
    },
    {
      id: "G-04.M2",
      evaluates,
      inputs: { depth: 0.64, length: 40_000 },
      printed: "1.711301",
      tolerance: { relative: 5e-5, because },
    },
    {
      id: "G-04.M1-monotone",
      evaluates: "points against the trend of the profile",
      inputs: { depth: 2.7, length: 3000 },
      printed: "0.0",
      kind: "analytic",
      seen: "derived",
    },
    {
      id: "G-04.M2-monotone",
      evaluates: "points against the trend of the profile",
      inputs: { depth: 0.64, length: 3000 },
      printed: "0.0",
      kind: "analytic",
      seen: "derived",
    },
  ],
};
