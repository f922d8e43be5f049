import type { CaseRow, SourceCases } from "../case.js";
import { critical, type HeldLine, type LineAnswer, normalForce, weightless } from "../closed-form.js";
import type { SettledQuantity } from "../evaluations-drift.js";

const stream = { relativeSpeed: 1, diameter: 1e-3, normalDrag: 1.2 };

type Towed = HeldLine & Pick<LineAnswer, "pull" | "load">;

function rows(
  id: string,
  line: Towed,
  printed: Partial<Record<SettledQuantity, string>>,
): readonly CaseRow[] {
  return Object.entries(printed).map(([quantity, digits]) => ({
    id: `${id}.${quantity}`,
    evaluates: "held line in a uniform stream",
    inputs: { ...line, quantity },
    printed: digits,
  }));
}

const angles = { "0.1": "17.964", "0.5": "38.668", "1": "51.827", "2": "65.530", "5": "78.896" };
const limp: HeldLine = { ...stream, length: 2, weightPerMetre: 0, sinkerWeight: 1, sinkerDrag: 0.1 };
const atRest = {
  ...stream,
  relativeSpeed: 0,
  length: 3,
  weightPerMetre: 0.3,
  sinkerWeight: 1,
  sinkerDrag: 0,
  pull: 0,
  load: 1.9,
};

export const lineInAStream: SourceCases = {
  source: "Pode 1951 and Glauert 1934, closed forms of a line in a stream",
  locator: "critical angle; weightless line; critical configuration; statics",
  kind: "analytic",
  seen: "derived",
  cases: [
    ...Object.entries(angles).flatMap(([ratio, digits]) => {
      const weightPerMetre = Number(ratio) * normalForce({ ...stream, length: 1, weightPerMetre: 0 });
      const line = critical({ ...stream, length: 3, weightPerMetre }, 1);
      return rows(`K-01.${ratio}`, line, { "chord from the stream, degrees": digits });
    }),
    ...rows(
      "K-02",
      { ...limp, ...weightless(limp) },
      {
        "speed of the water past it, m/s": "1.00000000",
        "tension at the float, N": "1.00498756",
        "tension at the sinker, N": "1.00498756",
        "angle at the float, degrees": "37.69580",
        "set downstream, m": "1.05593716",
        "drop, m": "1.63307245",
      },
    ),
    ...rows("K-04", critical({ ...stream, length: 3, weightPerMetre: 0.3 }, 1), {
      "speed of the water past it, m/s": "1.00000000",
      "tension at the float, N": "1.56232948",
      "set downstream over length": "0.78077641",
      "drop over length": "0.62481053",
    }),
    ...rows("K-06", atRest, {
      "load, N": "1.900000000000",
      "drop, m": "3.000000000000",
      "lean, degrees": "0.000000000000",
      "tow, N": "0.000000000000",
    }),
  ],
};
