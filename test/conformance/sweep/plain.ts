/** Sweeps of relations between plain numbers: water, drag coefficients, powers, interpolation. */
import {
  celsius,
  cylinderDrag,
  fixedPower,
  incompleteBeta,
  logGamma,
  monotoneCubic,
  oddsBelow,
  oddsQuantile,
  seconds,
  sphereDrag,
  studentQuantile,
  waterDensity,
  waterSurfaceTension,
  waterViscosity,
  weighTakes,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

const six = [0, 1, 2, 3, 4, 5];

export const plainSweeps: readonly Sweep[] = [
  {
    relation: "density, viscosity and surface tension of water",
    file: "water.csv",
    by: "iapws 1.5.2 (SR6-08 liquid at 0.1 MPa, R1-76)",
    outputs: ["density", "viscosity", "tension"],
    evaluate: (row) => {
      const temperature = celsius(cell(row, "celsius"));
      return {
        density: waterDensity(temperature),
        viscosity: waterViscosity(temperature),
        tension: waterSurfaceTension(temperature),
      };
    },
    tolerance: 1e-9,
  },
  {
    relation: "drag coefficients of sphere and cylinder",
    file: "drag-coefficients.csv",
    by: "the printed formulas in Python (fluids 1.0.22 has neither Brown and Lawler nor Sucker and Brauer)",
    outputs: ["sphere", "cylinder"],
    evaluate: (row) => ({
      sphere: sphereDrag(cell(row, "reynolds")),
      cylinder: cylinderDrag(cell(row, "reynolds")),
    }),
    tolerance: 1e-9,
  },
  {
    relation: "drag coefficient of a sphere against another fit",
    file: "sphere-by-another-fit.csv",
    by: "fluids 1.0.22, Clift, Grace and Weber 1978",
    outputs: ["sphere"],
    evaluate: (row) => ({ sphere: sphereDrag(cell(row, "reynolds")) }),
    tolerance: 0.08,
    because: "another curve through the same measurements: two published fits, 0.01 < Re < 1e5",
  },
  {
    relation: "powers with a fixed exponent",
    file: "powers.csv",
    by: "Python's **",
    outputs: ["power"],
    evaluate: (row) => ({ power: fixedPower(cell(row, "p"))(cell(row, "x")) }),
    tolerance: 1e-9,
  },
  {
    relation: "monotone cubic and its integral",
    file: "monotone-cubic.csv",
    by: "scipy 1.10.1, PchipInterpolator",
    outputs: ["value", "integral"],
    evaluate: monotone,
    tolerance: 1e-9,
    because: "relative to the greatest ordinate: the curve crosses zero",
    scale: (_, row) => Math.max(...six.map((i) => Math.abs(cell(row, `y${i}`)))),
  },
  {
    relation: "incomplete beta function and ln Γ",
    file: "incomplete-beta.csv",
    by: "scipy 1.10.1, special.betainc and gammaln",
    outputs: ["share", "logGamma"],
    evaluate: (row) => ({
      share: incompleteBeta(cell(row, "x"), cell(row, "a"), cell(row, "b")),
      logGamma: logGamma(cell(row, "a")),
    }),
    tolerance: 1e-9,
  },
  {
    relation: "odds of a beta variable, whole shapes to 2,000",
    file: "beta-exact.csv",
    by: "the binomial tail summed in Python's fractions",
    outputs: ["below"],
    evaluate: (row) => ({ below: oddsBelow(shapeOf(row)) }),
    tolerance: 3e-13,
  },
  {
    relation: "odds of a beta variable and their quantile, shapes to 5,000",
    file: "beta-odds.csv",
    by: "scipy 1.10.1, stats.beta",
    outputs: ["below", "quantile"],
    evaluate: (row) => ({
      below: oddsBelow(shapeOf(row)),
      quantile: oddsQuantile({ ...shapeOf(row), probability: cell(row, "p") }),
    }),
    tolerance: 3e-13,
  },
  {
    relation: "probability that the dry out-fishes the nymph",
    file: "takes.csv",
    by: "scipy 1.10.1, quad over the two gamma densities",
    outputs: ["probability"],
    evaluate: outFishes,
    tolerance: 1e-9,
  },
  {
    relation: "quantile of Student's t",
    file: "student-t.csv",
    by: "scipy 1.10.1, brentq on special.stdtr (stats.t.ppf itself is 4e-9 off)",
    outputs: ["t"],
    evaluate: (row) => ({ t: studentQuantile(cell(row, "p"), cell(row, "freedom")) }),
    tolerance: 1e-9,
  },
];

function shapeOf(row: Row): { readonly odds: number; readonly a: number; readonly b: number } {
  return { odds: cell(row, "odds"), a: cell(row, "a"), b: cell(row, "b") };
}

function outFishes(row: Row): Row {
  const at = (name: string): number => cell(row, name);
  const { probability } = weighTakes({
    dry: { takes: at("dry") },
    nymph: { takes: at("nymph") },
    effort: { kind: "time", dry: seconds(at("onDry")), nymph: seconds(at("onNymph")) },
    prior: { dry: at("a"), nymph: at("b") },
    threshold: at("threshold"),
  });
  return { probability };
}

function monotone(row: Row): Row {
  const curve = monotoneCubic(
    six.map((i) => cell(row, `x${i}`)),
    six.map((i) => cell(row, `y${i}`)),
  );
  return { value: curve.at(cell(row, "at")), integral: curve.integral };
}
