import type { CaseRow, SourceCases } from "../case.js";
import { catenary, critical, type HeldLine, type LineAnswer, weightless } from "../closed-form.js";
import type { SettledQuantity } from "../evaluations-drift.js";

const because = "a closed form, asked for to 1e-8";

function rows(id: string, line: HeldLine, answer: LineAnswer): readonly CaseRow[] {
  const { pull, load, tension, drop, downstream } = answer;
  const expected: Partial<Record<SettledQuantity, number>> = {
    "speed of the water past it, m/s": line.relativeSpeed,
    "tension at the float, N": tension,
    "drop, m": drop,
    "set downstream, m": downstream,
  };
  return Object.entries(expected).map(([quantity, value]) => ({
    id: `${id}.${quantity}`,
    evaluates: "held line in a uniform stream",
    inputs: { ...line, pull, load, quantity },
    printed: String(value),
    tolerance: value === 0 ? { absolute: 1e-8, because } : { relative: 1e-8, because },
  }));
}

const tippet = { relativeSpeed: 0.3, diameter: 0.15e-3, normalDrag: 1.3 };
const rope = { relativeSpeed: 1, diameter: 2e-3, normalDrag: 1.2 };

const limp: readonly HeldLine[] = [
  { ...tippet, length: 0.5, weightPerMetre: 0, sinkerWeight: 1.5e-3, sinkerDrag: 2e-4 },
  { ...tippet, length: 3, weightPerMetre: 0, sinkerWeight: 2e-4, sinkerDrag: 1e-4 },
  { ...rope, length: 4, weightPerMetre: 0, sinkerWeight: 2, sinkerDrag: 0.5 },
];
const slick: readonly HeldLine[] = [
  { ...tippet, normalDrag: 0, length: 0.5, weightPerMetre: 1.4e-4, sinkerWeight: 1.5e-3, sinkerDrag: 5e-4 },
  { ...tippet, normalDrag: 0, length: 3, weightPerMetre: 1.4e-4, sinkerWeight: 1e-4, sinkerDrag: 4e-4 },
  { ...rope, normalDrag: 0, length: 9, weightPerMetre: 0.4, sinkerWeight: 0.5, sinkerDrag: 2 },
];
const straight = [
  critical({ ...tippet, length: 1, weightPerMetre: 1.4e-4 }, 1e-3),
  critical({ ...rope, length: 8, weightPerMetre: 0.6 }, 0.7),
];
const bare: readonly HeldLine[] = [
  { ...tippet, normalDrag: 0, length: 0.46, weightPerMetre: 0, sinkerWeight: 1.5e-3, sinkerDrag: 1.1e-3 },
  { ...tippet, normalDrag: 0, length: 0.46, weightPerMetre: 0, sinkerWeight: 1.5e-3, sinkerDrag: 1e-5 },
];

/** Weight and drag of the sinker in the direction of the line. */
function pendulum({ length, sinkerWeight, sinkerDrag }: HeldLine): LineAnswer {
  const tension = Math.hypot(sinkerWeight, sinkerDrag);
  return {
    pull: sinkerDrag,
    load: sinkerWeight,
    tension,
    drop: (length * sinkerWeight) / tension,
    downstream: (length * sinkerDrag) / tension,
  };
}

function plumb(line: HeldLine): LineAnswer {
  const tension = line.sinkerWeight + line.weightPerMetre * line.length;
  return { pull: 0, load: tension, tension, drop: line.length, downstream: 0 };
}

const still = [0, 1.4e-4, 0.4].map((weightPerMetre): HeldLine => {
  return { ...tippet, relativeSpeed: 0, length: 0.46, weightPerMetre, sinkerWeight: 1.5e-3, sinkerDrag: 0 };
});

export const closedForms: SourceCases = {
  source: "Closed forms of the settled drift",
  locator: "closed-form.ts",
  kind: "analytic",
  seen: "derived",
  cases: [
    ...still.flatMap((line, n) => rows(`closed-form-1.${n}`, line, plumb(line))),
    ...limp.flatMap((line, n) => rows(`closed-form-2.${n}`, line, weightless(line))),
    ...slick.flatMap((line, n) => rows(`closed-form-3.${n}`, line, catenary(line))),
    ...straight.flatMap((line, n) => rows(`closed-form-4.${n}`, line, line)),
    ...bare.flatMap((line, n) => rows(`closed-form-5.${n}`, line, pendulum(line))),
  ],
};
