/** Sweeps of what hangs in the stream: falling sinkers, a line at a stated drift speed, the settled rig. */
import {
  celsius,
  cubicMetres,
  explicitWater,
  type Float,
  float,
  floatKernel,
  hangFrom,
  kilograms,
  kilogramsPerCubicMetre,
  type Line,
  line,
  metres,
  newtons,
  rig,
  type Sinker,
  settle,
  sinker,
  squareMetresPerSecond,
  terminalSpeed,
  type Water,
} from "@plumbdrift/core";
import { columnOf } from "./column.js";
import { cell, type Row, type Sweep } from "./sweep.js";

const by = "scipy 1.10.1 on the equations in line.py";
const roots = `${by}, DOP853 at 1e-12 and fsolve at 1e-13`;

export const driftSweeps: readonly Sweep[] = [
  {
    relation: "terminal speed of a sinker",
    file: "terminal-speeds.csv",
    by: `${by}, brentq`,
    outputs: ["speed"],
    evaluate: (row) => ({ speed: terminalSpeed(sinkerOf(row), waterOf(row)) }),
    tolerance: 1e-9,
  },
  {
    relation: "line in a sheared stream at a stated drift speed",
    file: "line-in-a-sheared-stream.csv",
    by: `${by}, DOP853 at 1e-12`,
    outputs: ["height", "tow", "load"],
    evaluate: lineTop,
    tolerance: 1e-9,
    because: "forces relative to the pull of the line",
    scale: (output, row) => (output === "height" ? 0 : Math.hypot(cell(row, "tow"), cell(row, "load"))),
  },
  {
    relation: "settled rig: scipy's answer in the core's equations",
    file: "settled-rigs.csv",
    by: roots,
    outputs: ["h", "tow", "load", "draft"],
    evaluate: closed,
    tolerance: 3e-9,
    because:
      "scipy steps over a kink of the drag, which leaves about 1e-9 in a few vectors; forces relative to the pull of the line",
    scale: (output, row) => sizes(row)[output] ?? 0,
  },
  {
    relation: "settled rig: the core's own answer",
    file: "settled-rigs.csv",
    by: roots,
    outputs: ["drift", "z", "lean", "tow", "load", "draft"],
    evaluate: settled,
    tolerance: 5e-6,
    because:
      "the core settles to 5e-10 N and 5e-10 m, up to a millionth of the pull of a light rig; speeds relative to the surface speed, heights to the depth, forces to the pull",
    scale: (output, row) => sizes(row)[output] ?? 0,
  },
];

function sizes(row: Row): Row {
  const pull = Math.hypot(cell(row, "tow"), cell(row, "load"));
  return { drift: cell(row, "us"), z: cell(row, "h"), lean: 1, tow: pull, load: pull };
}

function waterOf(row: Row): Water {
  return explicitWater({
    density: kilogramsPerCubicMetre(cell(row, "rho")),
    kinematicViscosity: squareMetresPerSecond(cell(row, "nu")),
    temperature: celsius(15),
  });
}

function sinkerOf(row: Row): Sinker {
  const body = { length: metres(cell(row, "length")), diameter: metres(cell(row, "diameter")) };
  return sinker({
    mass: kilograms(cell(row, "mass")),
    volume: cubicMetres(cell(row, "volume")),
    bead: metres(cell(row, "bead")),
    ...(body.length > 0 ? { body } : {}),
    dressing: cell(row, "dressing"),
    knot: cell(row, "loop") === 1 ? "loop" : "tight",
  });
}

function lineOf(row: Row): Line {
  return line({
    length: metres(cell(row, "L")),
    diameter: metres(cell(row, "d")),
    density: kilogramsPerCubicMetre(cell(row, "dens")),
    // the standard skin friction is left to the core where it is what the row has
    ...(cell(row, "cf") === 0.02 ? {} : { tangentialDrag: cell(row, "cf") }),
  });
}

function floatOf(row: Row): Float {
  return float({
    length: metres(cell(row, "fl")),
    width: metres(cell(row, "fw")),
    height: metres(cell(row, "fh")),
    mass: kilograms(cell(row, "fm")),
    treatment: 0,
  });
}

const anyFloat = { fl: 0.02, fw: 0.01, fh: 0.01, fm: 1e-4 };

function lineTop(row: Row): Row {
  const water = waterOf(row);
  const sections = [{ line: lineOf(row), sinker: sinkerOf(row) }];
  const hung = hangFrom(floatKernel(floatOf(anyFloat), water), sections, columnOf(row, water));
  return { ...hung.shootTo(1e-12)(cell(row, "drift"), cell(row, "z"), 0) };
}

/** The core's line at the drift speed and height that scipy found, and the draft of its float under that load. */
function closed(row: Row): Row {
  const water = waterOf(row);
  const dry = floatKernel(floatOf(row), water);
  const hung = hangFrom(dry, [{ line: lineOf(row), sinker: sinkerOf(row) }], columnOf(row, water));
  const { height, tow, load } = hung.shootTo(1e-12)(cell(row, "drift"), cell(row, "z"), 0);
  return { h: height, tow, load, draft: dry.draft(load) };
}

function settled(row: Row): Row {
  const water = waterOf(row);
  const hung = rig(floatOf(row), { line: lineOf(row), sinker: sinkerOf(row) });
  const state = settle(hung, columnOf(row, water), { held: newtons(cell(row, "held")) });
  const { driftSpeed, lean, tow, load, draft, sinkers, regime } = state;
  const z = regime === "hanging" ? (sinkers[0]?.heightAboveBed ?? Number.NaN) : Number.NaN;
  return { drift: driftSpeed, z, lean, tow, load, draft };
}
