/** Bodies, lines and floats, what acts on them, and the tables that they come from. */

import { columnOf } from "./dimensions-column.fixture.js";
import {
  force,
  type Kernel,
  kernels,
  length,
  lengthOf,
  none,
  type Scale,
  speed,
  speedOf,
  waterOf,
} from "./dimensions-scaling.fixture.js";
import {
  addedMass,
  beadMass,
  buildShot,
  buildTippet,
  cubicMetres,
  dragFreeTime,
  explicitWater,
  type Float,
  float,
  floatDraft,
  floatKernel,
  floatReserve,
  hangFrom,
  hook,
  hookMass,
  kilograms,
  kilogramsPerCubicMetre,
  type Line,
  line,
  lineKernel,
  lineLength,
  type Newtons,
  newtons,
  type Rig,
  reserveOf,
  rig,
  type Settled,
  type Sinker,
  settle,
  sinker,
  sinkerKernel,
  solve,
  submergedWeight,
  surroundings,
  terminalSpeed,
  tippetStrength,
} from "./index.js";

const sinkerOf = (s: Scale): Sinker =>
  sinker({
    mass: kilograms(2e-4 * s.M),
    volume: cubicMetres(2.7e-8 * s.L ** 3),
    bead: lengthOf(s, 2.8e-3),
    body: { length: lengthOf(s, 6e-3), diameter: lengthOf(s, 1.8e-3) },
  });
/** The density is set past the limits that a line of this world has. */
const lineOf = (s: Scale): Line => ({
  ...line({ length: lengthOf(s, 0.5), diameter: lengthOf(s, 1.5e-4), density: kilogramsPerCubicMetre(1780) }),
  density: kilogramsPerCubicMetre((1780 * s.M) / s.L ** 3),
});
const floatOf = (s: Scale): Float =>
  float({
    length: lengthOf(s, 0.022),
    width: lengthOf(s, 5e-3),
    height: lengthOf(s, 4.5e-3),
    mass: kilograms(1e-4 * s.M),
    treatment: 0.3,
  });
export const rigOf = (s: Scale): Rig => rig(floatOf(s), { line: lineOf(s), sinker: sinkerOf(s) });
export const forceOf = ({ L, M, T }: Scale, value: number): Newtons => newtons((value * M * L) / T ** 2);
const hangOf = (run: typeof hangFrom, s: Scale) =>
  run(floatKernel(floatOf(s), waterOf(s)), rigOf(s).sections, columnOf(s));
export const free = (s: Scale): Settled => settle(rigOf(s), columnOf(s));

/** Gravity has no part: every unit is free. */
export const dragKernels: readonly Kernel[] = [
  ...kernels(explicitWater, [
    "dynamic viscosity",
    { L: -1, M: 1, T: -1 },
    (run, s) => run(waterOf(s)).dynamicViscosity,
  ]),
  ...kernels(sinkerKernel, [
    "drag over speed",
    { M: 1, T: -1 },
    (run, s) => run(sinkerOf(s), waterOf(s))(speedOf(s, 0.4), 0.3),
  ]),
  ...kernels(addedMass, ["mass", { M: 1 }, (run, s) => run(sinkerOf(s), waterOf(s))]),
  ...kernels(
    lineKernel,
    [
      "across, over speed",
      { M: 1, L: -1, T: -1 },
      (run, s) => run(lineOf(s), waterOf(s)).normal(speedOf(s, 0.3)),
    ],
    ["along, over speed squared", { M: 1, L: -2 }, (run, s) => run(lineOf(s), waterOf(s)).tangential],
  ),
  ...kernels(
    floatKernel,
    ["drag", force, (run, s) => run(floatOf(s), waterOf(s)).dragAt(speedOf(s, 0.2), 2e-3 * s.L)],
    ["film", force, (run, s) => run(floatOf(s), waterOf(s)).film],
  ),
  ...kernels(lineLength, ["sum", length, (run, s) => run(rigOf(s).sections)]),
  ...kernels(surroundings, ["held", force, (run, s) => run({ held: forceOf(s, 1e-3) }).held]),
  ...kernels(dragFreeTime, ["time", { T: 1 }, (run, s) => run(lengthOf(s, 0.9), speedOf(s, 0.3))]),
];

/** Gravity is written in. */
export const weighedRigKernels: readonly Kernel[] = [
  ...kernels(submergedWeight, ["weight", force, (run, s) => run(sinkerOf(s), waterOf(s))]),
  ...kernels(terminalSpeed, ["speed", speed, (run, s) => run(sinkerOf(s), waterOf(s))]),
  ...kernels(lineKernel, [
    "weight of a metre",
    { M: 1, T: -2 },
    (run, s) => run(lineOf(s), waterOf(s)).weight,
  ]),
  ...kernels(floatReserve, ["reserve", force, (run, s) => run(floatOf(s), waterOf(s))]),
  ...kernels(floatDraft, ["draft", length, (run, s) => run(floatOf(s), waterOf(s), forceOf(s, 1e-3))]),
  ...kernels(hangFrom, ["weight of all", force, (run, s) => hangOf(run, s).weight]),
  ...kernels(reserveOf, ["reserve", force, (run, s) => run(hangOf(hangFrom, s))]),
  ...kernels(solve, [
    "drift speed under a pull",
    speed,
    (run, s) => run(hangOf(hangFrom, s), surroundings({ held: forceOf(s, 1e-4) })).balance.driftSpeed,
  ]),
  ...kernels(
    settle,
    ["drift speed", speed, (run, s) => run(rigOf(s), columnOf(s)).driftSpeed],
    ["tow", force, (run, s) => run(rigOf(s), columnOf(s)).tow],
    ["lean", none, (run, s) => run(rigOf(s), columnOf(s)).lean],
    ["draft", length, (run, s) => run(rigOf(s), columnOf(s)).draft],
  ),
];

/** Densities and strengths come from tables: masses go with the cube of lengths, forces with the square. */
export const tackleKernels: readonly Kernel[] = [
  ...kernels(hookMass, [
    "mass",
    { L: 3 },
    (run, s) => {
      const { shank, gape, wire } = hook(14);
      const wider = { fine: lengthOf(s, wire.fine), strong: lengthOf(s, wire.strong) };
      return run({ shank: lengthOf(s, shank), gape: lengthOf(s, gape), wire: wider }, "strong");
    },
  ]),
  ...kernels(beadMass, [
    "mass",
    { L: 3 },
    (run, s) => run({ diameter: lengthOf(s, 2.8e-3), material: "tungsten" }),
  ]),
  ...kernels(buildShot, [
    "mass",
    { L: 3 },
    (run, s) => run({ diameter: lengthOf(s, 2.8e-3), material: "tin" }).body.mass,
  ]),
  ...kernels(tippetStrength, ["strength", { L: 2 }, (run, s) => run(tippetOf(s))]),
  ...kernels(buildTippet, ["length", length, (run, s) => run(tippetOf(s), lengthOf(s, 0.5)).body.length]),
];

function tippetOf(s: Scale) {
  return { material: "nylon", diameter: lengthOf(s, 1.5e-4) } as const;
}
