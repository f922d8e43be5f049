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

/** W = (m − ρV) g + ½ (ρ_l − ρ) g A L over ½ L · ½ of ½ ρ π d Cf, a root: 2 g of 100 mm³, 1 m of 2 mm and 1780 kg/m³. */
function steadySpeed(skinFriction: number): number {
  const weight = 9.80665 * (2e-3 - 1e-4 + 0.5 * 780 * Math.PI * 1e-6);
  const friction = 0.5 * 1000 * Math.PI * 2e-3 * skinFriction;
  return Math.sqrt(weight / (friction / 4));
}

/** The float with half of its water, and half of the line with its own: 0.1 N over this. */
const heldMass = 1e-3 + 0.5 * 1000 * 0.04 * 0.02 * 0.02 * (Math.PI / 4) + 0.5 * 2780 * Math.PI * 1e-6;
const exact = { relative: 1e-5, because: "a closed form; the surface holds the float to a millionth" };
const symmetry = { relative: 1e-9, because: "a symmetry of the equations" };

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
    ...[1, 2].map(
      (skinFriction): CaseRow => ({
        id: `along its line, skin friction ${skinFriction}`,
        evaluates: "fall along a line over that at the speed given",
        inputs: { skinFriction, speed: steadySpeed(skinFriction) },
        printed: "1",
        tolerance: exact,
      }),
    ),
    ...["sinker", "height", "float"].flatMap((of) =>
      [0.3, 1].map(
        (seconds): CaseRow => ({
          id: `cast across, ${of} after ${seconds} s`,
          evaluates: "place of a rig cast across over one cast along",
          inputs: { of, seconds },
          printed: "1",
          tolerance: symmetry,
        }),
      ),
    ),
    {
      id: "window of all the water",
      evaluates: "seconds in the window over all, the window being all",
      inputs: {},
      printed: "1",
      tolerance: symmetry,
    },
    {
      id: "float held back",
      evaluates: "first acceleration of a float held back, m/s²",
      inputs: {},
      printed: String(0.1 / heldMass),
      tolerance: { relative: 1e-4, because: "the drag at its first millimetres a second" },
      kind: "practice",
    },
    { id: "added mass, sphere", evaluates: "added mass of a sphere, g", inputs: {}, printed: "0.2617994" },
    {
      id: "added mass, cylinder",
      evaluates: "added mass of a cylinder, g",
      inputs: {},
      printed: "1.5707963",
    },
  ],
};
