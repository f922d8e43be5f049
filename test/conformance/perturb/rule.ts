/** The rule that says which numbers of the core are constants of its relations. Each entry was read and decided on. */

/** Rooms whose files hold relations. Left out: `units` (definitions), `numerics` (methods that know no water), `tackle` (tables of common
 *  practice: data), `setup` and `check` (judgement, not physics), `sources`. */
export const rooms = ["water", "channel", "column", "forces", "drift", "lie"] as const;

/** Numbers that only start a sum or a range: 1 % of 0 is 0. */
export const structure: readonly number[] = [0];

/** What a 1 or a 2 beside them counts: places in a list, not metres. `x + 1`, `x - 1`, `x + 2` of these are steps to a neighbour. */
export const places: readonly string[] = [
  "length",
  "i",
  "j",
  "s",
  "last",
  "links",
  "knot",
  "low",
  "middle",
  "high",
];

/** Comparisons with a 1 or a 2 that ask how many there are, or tell one case from another: `=== 1` and these beside a number of things. */
export const counted: readonly string[] = ["length", "n", "last"];

/** Calls that state which input is accepted. */
export const boundChecks: readonly string[] = [
  "requireWithin",
  "requirePositive",
  "QuantityError",
  "checkMeasurement",
];

/** Calls whose plain numbers are brackets, tolerances, sizes, digits or places in an array. */
export const solvers: readonly string[] = [
  "findRoot",
  "rootsOver",
  "Float64Array",
  "Int32Array",
  "Uint8Array",
  "subarray",
  "toPrecision",
  "toFixed",
  "at",
  "slice",
  "fill",
];

/** Files that only say how an answer is found, with what they do. */
export const methodFiles: Readonly<Record<string, string>> = {
  "channel/every-root.ts": "finds every root: bisections, roundings, the greatest depth looked at",
  "channel/root-in-depth.ts": "finds a root between two depths",
  "channel/surface-curve.ts": "steps along a surface profile",
  "channel/surface-jump.ts": "looks for the place of a jump",
  "channel/surface-points.ts": "steps along a surface profile",
  "channel/surface-profile.ts": "how many stations a profile has",
  "channel/survey-table.ts": "places in the table of a survey",
  "drift/balance.ts":
    "finds the balance: guesses, brackets, tolerances; its one relation, the force at the float, has no number",
  "drift/unsteady-bed.ts": "keeps nodes out of the bed: the stiffness of a wall that yields a micrometre",
  "drift/unsteady-links.ts": "keeps links at their length: their stiffness and tolerance",
  "drift/unsteady-path.ts": "thins the path that is kept",
  "drift/unsteady-solve.ts": "solves the equations of a step: places in arrays",
  "drift/unsteady-step.ts": "how often a step is tried and halved",
};

/** Names of constants and functions whose numbers only say how an answer is found, or are settings that every caller can set. */
export const methodNames: Readonly<Record<string, string>> = {
  atEnd: "a tolerance on the stage of zero flow",
  bestZero: "a tolerance on the stage of zero flow",
  checkFlow: "coefficients that are not given, for a check of input",
  checkGaugings: "how many gaugings a rating needs",
  checkVerticals: "how many verticals a discharge needs",
  compileTally: "places in an array",
  curveName: "names of classes of profile",
  defaults: "settings of a cast and of the solver, each an option and each said to be assumed",
  evenly: "places in a list of knots",
  fitGeometry: "how many measurements a fit needs",
  flowClass: "how near 1 counts as critical: an option",
  fullTolerance: "a tolerance of the integration",
  hangFrom: "keeps a division from zero",
  heightOf: "steps of a search",
  hermite: "interpolation between the knots of a line that was integrated",
  hold: "the range and the points of a curve: options",
  inStepBand: "below which a hold is not worth finding",
  inverseRootFriction: "the first guess of a root and how far a step may fall",
  isSlack: "rounding of a test for no shear",
  isStationary: "when a drift may stop early",
  land: "places in an array",
  lateralFlow: "how many verticals are reported",
  loadMemory: "damps the load on the float from step to step",
  mark: "places in a list of knots",
  mechanicalEnergy: "a check on the solver, no part of an answer",
  mostIterations: "a budget",
  mostSegments: "a budget",
  mostSteps: "a budget",
  ratedDischarge: "the confidence of an interval: an option",
  roughCourse: "the step of the rough shot",
  same: "a tolerance between depths",
  stoneSize: "millimetres in a text",
  streamAt: "the confidence of an interval: an option",
  surfaced: "the name of a state",
  target: "a bracket, and millinewtons in a text",
  terminalSpeed: "a bracket",
  trace: "places in a list of knots",
  tracePieces: "points of a trace",
};
