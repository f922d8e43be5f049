import type { CaseRow, SourceCases } from "../case.js";
import vectors from "./vectors.json" with { type: "json" };

const iterated = { relative: 1e-8, because: "scipy inverts the distribution by iteration" };
const { inputs, ...fitted } = vectors.rating;

const rating = (
  [
    ["coefficient", fitted.coefficient],
    ["exponent", fitted.exponent],
    ["standard error of the exponent", fitted["standard error of the exponent"]],
    ["scatter", fitted.scatter],
    ["discharge", fitted.discharge],
    ["low end of the prediction", fitted["low end of the prediction"]],
    ["high end of the prediction", fitted["high end of the prediction"]],
    ["low end of the curve", fitted["low end of the curve"]],
  ] as const
).map(
  ([name, printed]): CaseRow => ({
    id: `scipy.rating.${name}`,
    evaluates: `rating, ${name}`,
    inputs,
    printed,
    tolerance: { relative: 1e-8, because: "normal equations, and a quantile found by iteration" },
  }),
);

export const scipyStatistics: SourceCases = {
  source: "scipy 1.10.1 and numpy 1.24.2",
  locator: "scipy-statistics/vectors.py",
  kind: "independent",
  seen: "derived",
  cases: [
    ...vectors.quantiles.map(
      ({ value, ...at }): CaseRow => ({
        id: `scipy.student.${at.freedom}.${at.probability}`,
        evaluates: "quantile of Student's t",
        inputs: at,
        printed: value,
        tolerance: iterated,
      }),
    ),
    ...vectors.betas.map(
      ({ value, ...at }): CaseRow => ({
        id: `scipy.beta.${at.a}.${at.b}.${at.x}`,
        evaluates: "incomplete beta function",
        inputs: at,
        printed: value,
        tolerance: { relative: 1e-11, because: "two implementations in double precision" },
      }),
    ),
    ...rating,
  ],
};
