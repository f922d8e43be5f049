/** Rigs a person could fish, for the directions that common practice states: a dry, one nymph on a dropper, water at a lie. */

import { type Column, waterColumn } from "../column/index.js";
import { type Float, type Line, line, type Sinker } from "../forces/index.js";
import { type Rig, rig } from "../rig/index.js";
import { type BeadMaterial, buildDry, buildNymph, tippetDensity } from "../tackle/index.js";
import { type Metres, metres, metresPerSecond, millimetres } from "../units/index.js";
import { generator, type Uniform } from "./unsteady.fixture.js";

export interface Fished {
  readonly column: Column;
  readonly float: Float;
  readonly line: Line;
  readonly nymph: Sinker;
}

export const rigOf = ({ float, line, nymph }: Fished): Rig => rig(float, { line, sinker: nymph });

/** Water 0.3 to 2.5 m deep at 0.2 to 2 m/s, a nymph 12 to 18 with a bead of 2 to 4 mm, 0.1 to 0.25 mm tippet as long as 0.3 to 0.9 of the depth
 *  but 0.2 to 1.5 m, a foam dry 8 to 14. */
export function fished(seed: number): Fished {
  const uniform = generator(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(uniform(0, list.length))] ?? list[0]!;
  const column = water(uniform, pick(["log", "log-wake", "dip", "power", "mixing-layer"] as const));
  const size = pick([12, 14, 16]);
  return {
    column,
    float: buildDry({ name: "dry", size: pick([8, 10, 12, 14]), style: "foam" }).body,
    line: line({
      length: metres(Math.min(1.5, Math.max(0.2, column.depth * uniform(0.3, 0.9)))),
      diameter: millimetres(uniform(0.1, 0.25)),
      density: pick([tippetDensity.nylon, tippetDensity.fluorocarbon]),
    }),
    nymph: nymphOf(size, millimetres(uniform(2, 4)), pick(["tungsten", "tungsten", "brass"] as const)),
  };
}

export function nymphOf(size: number, diameter: Metres, material: BeadMaterial): Sinker {
  return buildNymph({ name: "nymph", size, bead: { diameter, material } }).body;
}

function water(uniform: Uniform, law: "log" | "log-wake" | "dip" | "power" | "mixing-layer"): Column {
  const depth = uniform(0.3, 2.5);
  return waterColumn({
    depth: metres(depth),
    surfaceSpeed: metresPerSecond(uniform(0.2, 2)),
    law,
    bed: { d84: metres(depth * (law === "mixing-layer" ? uniform(0.2, 0.8) : uniform(0.01, 0.1))) },
    exponent: uniform(4, 10),
    wake: uniform(0, 0.4),
    channelWidth: metres(depth * uniform(3, 8)),
  });
}
