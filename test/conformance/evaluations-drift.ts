/** Settled rigs, as the cases ask for them. */
import {
  celsius,
  cubicMetres,
  degrees,
  explicitWater,
  float,
  floatKernel,
  heightAboveBed,
  kilograms,
  kilogramsPerCubicMetre,
  type Line,
  line,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
  type Observation,
  rig,
  type Settled,
  type Sinker,
  settle,
  sinker,
  squareMetresPerSecond,
  standardGravity,
  waterColumn,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

const depth = 50;
const streamSpeed = 2;
const density = 1000;
const clean = explicitWater({
  density: kilogramsPerCubicMetre(density),
  kinematicViscosity: squareMetresPerSecond(1e-6),
  temperature: celsius(15),
});
const uniform = waterColumn({
  depth: metres(depth),
  water: clean,
  points: [0, depth].map((z) => ({ heightAboveBed: heightAboveBed(z), speed: metresPerSecond(streamSpeed) })),
});
/** Big enough for every load here, and almost without drag. */
const buoy = float({
  length: metres(1),
  width: metres(1),
  height: metres(1),
  mass: kilograms(1e-3),
  treatment: 0,
  drag: 1e-6,
});

/** A line held by its float in a uniform stream: everything by its forces, so that books' problems fit.
 *  `pull` and `load` are the forces at the float when the water passes at `relativeSpeed` exactly: from the closed form of the case.
 *  Lines and sinkers are plain data: some are heavier than `line()` accepts. */
function towed(i: Inputs): Settled {
  const speed = number(i, "relativeSpeed");
  const diameter = number(i, "diameter");
  const rope: Line = {
    length: metres(number(i, "length")),
    diameter: metres(diameter),
    density: kilogramsPerCubicMetre(
      density + number(i, "weightPerMetre") / (standardGravity * (Math.PI / 4) * diameter ** 2),
    ),
    normalDrag: { coefficient: number(i, "normalDrag") },
    tangentialDrag: 0,
  };
  const bead = 0.1;
  const dynamic = 0.5 * density * speed ** 2 * (Math.PI / 4) * bead ** 2;
  const weight: Sinker = {
    mass: kilograms(number(i, "sinkerWeight") / standardGravity),
    volume: cubicMetres(0),
    bead: metres(bead),
    dressing: 1,
    knot: "tight",
    beadDrag: { coefficient: speed === 0 ? 1 : number(i, "sinkerDrag") / dynamic },
    bodyDrag: "standard",
  };
  const kernel = floatKernel(buoy, clean);
  const held = newtons(number(i, "pull") + kernel.dragAt(speed, kernel.draft(number(i, "load"))));
  return settle(rig(buoy, { line: rope, sinker: weight }), uniform, { held });
}

/** The rig of rows K-20 to K-23: a nymph of 1.5 mN in the water, 0.4572 m of line, a float of 1.0 mN. */
function wholeRig(i: Inputs): Settled {
  const rho = 999.1;
  const water = explicitWater({
    density: kilogramsPerCubicMetre(rho),
    kinematicViscosity: squareMetresPerSecond(1.138e-6),
    temperature: celsius(15),
  });
  const dry = float({
    length: millimetres(22),
    width: millimetres(5),
    height: millimetres(4.5),
    mass: kilograms(1e-3 / standardGravity),
    treatment: 0,
  });
  const volume = 25e-9;
  const nymph = sinker({
    mass: kilograms(1.5e-3 / standardGravity + rho * volume),
    volume: cubicMetres(volume),
    bead: millimetres(2.8),
    body: { length: millimetres(6), diameter: millimetres(1.8) },
  });
  const tippet = line({
    length: metres(0.4572),
    diameter: millimetres(0.1524),
    density: kilogramsPerCubicMetre(1780),
  });
  const column = waterColumn({
    depth: metres(0.9144),
    surfaceSpeed: metresPerSecond(number(i, "surfaceSpeed")),
    water,
    ...lawOf(text(i, "law")),
  });
  return settle(rig(dry, { line: tippet, sinker: nymph }), column, { held: newtons(number(i, "held")) });
}

function lawOf(law: string): Partial<Observation> {
  if (law === "log") return { roughnessLength: metres(0.15 / 30) };
  if (law === "power") return { exponent: 6 };
  if (law === "mixing-layer") return { law, bed: { d84: metres(0.4572) } };
  throw new TypeError(`no law is called ${law}`);
}

/** A named quantity of a settled rig. */
const quantities = {
  "drift speed, m/s": (s: Settled): number => s.driftSpeed,
  "speed of the water past it, m/s": (s: Settled): number => -s.slip,
  "height of the sinker, m": (s: Settled): number => s.sinkers.at(-1)?.heightAboveBed ?? Number.NaN,
  "drop, m": (s: Settled): number => s.sinkers.at(-1)?.depthBelowSurface ?? Number.NaN,
  "set downstream, m": (s: Settled): number => s.sinkers.at(-1)?.downstreamOfFloat ?? Number.NaN,
  "drop over length": (s: Settled, i: Inputs): number =>
    (s.sinkers.at(-1)?.depthBelowSurface ?? Number.NaN) / number(i, "length"),
  "set downstream over length": (s: Settled, i: Inputs): number =>
    (s.sinkers.at(-1)?.downstreamOfFloat ?? Number.NaN) / number(i, "length"),
  "lean, degrees": (s: Settled): number => s.lean / degrees(1),
  "chord from the stream, degrees": (s: Settled): number => 90 - Math.abs(s.lean) / degrees(1),
  "excess, m/s": (s: Settled): number => s.sinkers.at(-1)?.excess ?? Number.NaN,
  "tow, N": (s: Settled): number => s.tow,
  "load, N": (s: Settled): number => s.load,
  "tension at the float, N": (s: Settled): number => Math.hypot(s.tow, s.load),
  "tension at the sinker, N": (s: Settled): number => s.sinkers.at(-1)?.tension ?? Number.NaN,
  "angle at the float, degrees": (s: Settled): number => Math.atan2(s.load, Math.abs(s.tow)) / degrees(1),
  "draft, m": (s: Settled): number => s.draft,
} as const;

export type SettledQuantity = keyof typeof quantities;

function quantityOf(i: Inputs, settled: Settled): number {
  if (settled.regime !== "hanging" && settled.regime !== "slack-water") return Number.NaN;
  const name = text(i, "quantity");
  if (!isQuantity(name)) throw new TypeError(`no quantity is called ${name}`);
  return quantities[name](settled, i);
}

function isQuantity(name: string): name is SettledQuantity {
  return name in quantities;
}

export const driftEvaluations = {
  "held line in a uniform stream": (i: Inputs): number => quantityOf(i, towed(i)),
  "settled rig": (i: Inputs): number => quantityOf(i, wholeRig(i)),
} as const;
