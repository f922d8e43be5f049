import type { SourceCases } from "../case.js";

const ofU01 = { units: "m", width: 5, depth: 0.8, n: 0.015, slope: 0.0025 };
const ofJ01 = { units: "m", width: 1, discharge: 3, depth: 0.56824 };

export const sdsu: SourceCases = {
  source: "San Diego State University, CIV E 530, midterm 2",
  locator: "sp07 problem 1, sp04 problem 2",
  kind: "published",
  seen: "read",
  cases: [
    { id: "U-01.area", evaluates: "area of a section", inputs: ofU01, printed: "4.0" },
    { id: "U-01.radius", evaluates: "hydraulic radius", inputs: ofU01, printed: "0.606" },
    { id: "U-01.speed", evaluates: "mean speed in a section", inputs: ofU01, printed: "2.387" },
    {
      id: "U-01.discharge",
      evaluates: "discharge of uniform flow",
      inputs: ofU01,
      printed: "9.548",
      tolerance: { absolute: 0.001, because: "the speed was rounded first" },
    },
    { id: "J-01.froude", evaluates: "Froude number in a section", inputs: ofJ01, printed: "2.24" },
    { id: "J-01.ratio", evaluates: "depth after over before a jump", inputs: ofJ01, printed: "2.7" },
    {
      id: "J-01.after",
      evaluates: "depth after a jump",
      inputs: ofJ01,
      printed: "1.53",
      tolerance: { absolute: 0.01, because: "the ratio of depths was rounded to 2.7 first" },
    },
  ],
};
