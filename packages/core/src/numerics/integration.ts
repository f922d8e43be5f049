/** Integration of smooth ordinary differential equations: the explicit Runge-Kutta method of order 8 by Dormand and Prince, with its 5th and 3rd order error estimates.
 *  Coefficients: Hairer, Norsett and Wanner 1993, Solving Ordinary Differential Equations I, sec. II.5 and appendix (DOP853), read as tabulated in scipy 1.10. */

import { QuantityError } from "../units/index.js";

/** One term of a stage: which earlier slope, and its weight. */
type Term = readonly [stage: number, weight: number];

// biome-ignore format: a table of numbers, one stage a line
const stages: readonly (readonly Term[])[] = [
  [[0, 0.05260015195876773]],
  [[0, 0.0197250569845379], [1, 0.0591751709536137]],
  [[0, 0.02958758547680685], [2, 0.08876275643042054]],
  [[0, 0.2413651341592667], [2, -0.8845494793282861], [3, 0.924834003261792]],
  [[0, 0.037037037037037035], [3, 0.17082860872947386], [4, 0.12546768756682242]],
  [[0, 0.037109375], [3, 0.17025221101954405], [4, 0.06021653898045596], [5, -0.017578125]],
  [[0, 0.03709200011850479], [3, 0.17038392571223998], [4, 0.10726203044637328], [5, -0.015319437748624402], [6, 0.008273789163814023]],
  [[0, 0.6241109587160757], [3, -3.3608926294469414], [4, -0.868219346841726], [5, 27.59209969944671], [6, 20.154067550477894], [7, -43.48988418106996]],
  [[0, 0.47766253643826434], [3, -2.4881146199716677], [4, -0.590290826836843], [5, 21.230051448181193], [6, 15.279233632882423], [7, -33.28821096898486], [8, -0.020331201708508627]],
  [[0, -0.9371424300859873], [3, 5.186372428844064], [4, 1.0914373489967295], [5, -8.149787010746927], [6, -18.52006565999696], [7, 22.739487099350505], [8, 2.4936055526796523], [9, -3.0467644718982196]],
  [[0, 2.273310147516538], [3, -10.53449546673725], [4, -2.0008720582248625], [5, -17.9589318631188], [6, 27.94888452941996], [7, -2.8589982771350235], [8, -8.87285693353063], [9, 12.360567175794303], [10, 0.6433927460157636]],
];
// biome-ignore format: as above
const end: readonly Term[] = [[0, 0.054293734116568765], [5, 4.450312892752409], [6, 1.8915178993145003], [7, -5.801203960010585], [8, 0.3111643669578199], [9, -0.1521609496625161], [10, 0.20136540080403034], [11, 0.04471061572777259]];
// biome-ignore format: as above
const error5: readonly Term[] = [[0, 0.01312004499419488], [5, -1.2251564463762044], [6, -0.4957589496572502], [7, 1.6643771824549864], [8, -0.35032884874997366], [9, 0.3341791187130175], [10, 0.08192320648511571], [11, -0.022355307863886294]];
// biome-ignore format: as above
const error3: readonly Term[] = [[0, -0.18980075407240762], [5, 4.450312892752409], [6, 1.8915178993145003], [7, -5.801203960010585], [8, -0.4226823213237919], [9, -0.1521609496625161], [10, 0.20136540080403034], [11, 0.02265179219836082]];

/** Right-hand side: writes dy/ds for state `y` into `slope`. */
export type Slope = (y: Float64Array, slope: Float64Array) => void;
/** Size of an error against the state it belongs to: 1 means "as large as the thing itself". */
export type ErrorNorm = (y: Float64Array, error: Float64Array) => number;

export interface Integrator {
  /** Carries `y` over the length `span` in place, error per step at most `tolerance` in the norm;
   *  `mark` is told the length done after every step. Returns the number of evaluations. */
  readonly advance: (
    y: Float64Array,
    span: number,
    tolerance: number,
    mark?: (done: number) => void,
  ) => number;
}

/** An integrator for an autonomous system of up to four equations (states and slopes always have four components); it owns its working space.
 *  Where the slope has a kink at the zero of `kink`, a step that would cross it ends there instead.
 *  Steps below 1e-12 of the span are accepted as they are: `advance` passes a jump of the slope.
 *  Throws QuantityError for a span that is not 0 or more, and where the slope is not finite. */
export function integrator(
  slope: Slope,
  norm: ErrorNorm,
  kink: (y: Float64Array) => number = () => 1,
): Integrator {
  // slopes of the twelve stages, four components each
  const k = new Float64Array(48);
  const slopeNow = new Float64Array(4);
  const trial = new Float64Array(4);
  const e5 = new Float64Array(4);
  const e3 = new Float64Array(4);
  let nearKink = 0;

  /** The step, no longer than a part of the way to the kink while that is far, and to the kink itself when near: slopes are rough around it. */
  function upToKink(y: Float64Array, step: number, side: number): number {
    for (let i = 0; i < 4; i++) trial[i] = y[i]! + step * k[i]!;
    const before = side / (side - kink(trial));
    if (!(before > 1e-3 && before < 3)) return step;
    return step * (before < 0.995 && step * before <= nearKink ? before : Math.min(1, 0.9 * before));
  }
  function evaluate(stage: number, at: Float64Array): void {
    slope(at, slopeNow);
    const offset = 4 * stage;
    k[offset] = slopeNow[0]!;
    k[offset + 1] = slopeNow[1]!;
    k[offset + 2] = slopeNow[2]!;
    k[offset + 3] = slopeNow[3]!;
  }
  /** into = from + step × (weighted slopes) */
  function combine(
    { offsets, weights }: Combination,
    step: number,
    from: Float64Array,
    into: Float64Array,
  ): void {
    let a = 0;
    let b = 0;
    let c = 0;
    let d = 0;
    for (let t = 0; t < weights.length; t++) {
      const w = weights[t]!;
      const at = offsets[t]!;
      a += w * k[at]!;
      b += w * k[at + 1]!;
      c += w * k[at + 2]!;
      d += w * k[at + 3]!;
    }
    into[0] = from[0]! + step * a;
    into[1] = from[1]! + step * b;
    into[2] = from[2]! + step * c;
    into[3] = from[3]! + step * d;
  }
  /** One step from `y` into `trial`; returns its error in the norm. */
  function attempt(y: Float64Array, step: number): number {
    for (let s = 1; s < 12; s++) {
      combine(stageRows[s - 1]!, step, y, trial);
      evaluate(s, trial);
    }
    combine(row5, step, nothing, e5);
    combine(row3, step, nothing, e3);
    combine(endRow, step, y, trial);
    const fifth = norm(trial, e5);
    const third = 0.1 * norm(trial, e3);
    return fifth === 0 ? 0 : (fifth * fifth) / Math.sqrt(fifth * fifth + third * third);
  }

  function advance(y: Float64Array, span: number, tolerance: number, mark?: (done: number) => void): number {
    if (!(span >= 0 && span < Number.POSITIVE_INFINITY)) throw new QuantityError("span", "0 or more", span);
    const least = 1e-12 * span;
    nearKink = 2e-2 * span;
    let done = 0;
    let step = span;
    let evaluations = 0;
    let side = kink(y);
    while (done < span) {
      evaluate(0, y);
      const left = span - done;
      step = upToKink(y, step >= left ? left : Math.min(step, left / 2), side);
      let error = attempt(y, step);
      evaluations += 12;
      while (!(error <= tolerance) && step > least) {
        const factor = 0.9 * (tolerance / error) ** 0.125;
        step *= Number.isNaN(factor) ? 0.1 : Math.min(0.9, Math.max(0.1, factor));
        error = attempt(y, step);
        evaluations += 11;
      }
      if (!Number.isFinite(error)) throw new QuantityError("slope", "finite", error);
      y.set(trial);
      side = kink(y);
      done = span - done - step <= 1e-14 * span ? span : done + step;
      step = Math.max(least, step * Math.min(6, Math.max(0.2, 0.9 * (tolerance / error) ** 0.125)));
      mark?.(done);
    }
    return evaluations;
  }
  return { advance };
}

const nothing = new Float64Array(4);

interface Combination {
  readonly offsets: Int32Array;
  readonly weights: Float64Array;
}

function combination(terms: readonly Term[]): Combination {
  return {
    offsets: Int32Array.from(terms, ([stage]) => 4 * stage),
    weights: Float64Array.from(terms, ([, w]) => w),
  };
}

const stageRows = stages.map(combination);
const endRow = combination(end);
const row5 = combination(error5);
const row3 = combination(error3);
