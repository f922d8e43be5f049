import type { CaseRow, SourceCases } from "../case.js";

const links = { relative: 1e-3, because: "64 links: the error goes with the square of their number" };
const drift = (skinFriction: number): CaseRow => ({
  id: `end of a drift, skin friction ${skinFriction}`,
  evaluates: "excess at the end of a drift over the settled one",
  inputs: { skinFriction },
  printed: "1",
  tolerance: links,
});
const fall = (lineDiameter: number, printed: string): CaseRow => ({
  id: `let go on a line of ${lineDiameter} mm`,
  evaluates: "first acceleration of a sinker on a slack line, m/s²",
  inputs: { lineDiameter },
  printed,
  tolerance: { relative: 1e-5, because: "the fall of some µm is a small difference of heights" },
});

export const unsteadyLimits: SourceCases = {
  source: "Limits of the unsteady drift",
  locator: "README.md",
  kind: "analytic",
  seen: "derived",
  cases: [
    drift(0.02),
    drift(1),
    fall(2, "4.775390"),
    fall(4, "3.416987"),
    { id: "added mass, sphere", evaluates: "added mass of a sphere, g", inputs: {}, printed: "0.2617994" },
    {
      id: "added mass, cylinder",
      evaluates: "added mass of a cylinder, g",
      inputs: {},
      printed: "1.5707963",
    },
  ],
};
