/** What the stream does to every node of a chain, as a matrix on its velocity through the water. */

import type { Chain } from "./unsteady-chain.js";

/** The stream around the rig, plain numbers. */
export interface Stream {
  readonly depth: number;
  readonly speed: (heightAboveBed: number) => number;
  /** Growth of the speed per metre across, as a share of the surface speed, 1/m. */
  readonly laneShare: number;
  /** Wind over the ground along the stream, or null where no air acts. */
  readonly wind: number | null;
  /** Upstream pull on the float, N; a mend changes it. */
  readonly hold: { force: number };
}

/** Drag as linear at the current motion: force = resistance · (water − velocity), six numbers per node (xx, xy, xz, yy, yz, zz);
 *  `force` is what does not depend on the velocity. Both are refreshed by `evaluate`. The resistance is never negative: drag cannot give energy. */
export interface Drag {
  readonly resistance: Float64Array;
  readonly force: Float64Array;
  readonly evaluate: (position: Float64Array, velocity: Float64Array, load: number) => void;
}

/** Water speed along the stream at a height and a place across. */
export function waterSpeed(stream: Stream, across: number, height: number): number {
  return stream.speed(height) * Math.max(0, 1 + stream.laneShare * across);
}

/** Compiles the drag on a chain. Line: cross-flow principle [Hoerner1965] at the middle of each link, half to each end. */
export function compileDrag(chain: Chain, stream: Stream): Drag {
  const resistance = new Float64Array(6 * chain.nodes);
  const force = new Float64Array(3 * chain.nodes);
  const water = new Float64Array(chain.nodes);
  const evaluate = (position: Float64Array, velocity: Float64Array, load: number): void => {
    resistance.fill(0);
    for (let i = 0; i < chain.nodes; i++) {
      water[i] = waterSpeed(stream, position[3 * i + 1]!, position[3 * i + 2]!);
    }
    for (let j = 0; j < chain.links; j++) addLink(chain, j, position, velocity, water, resistance);
    for (let s = 0; s < chain.sinkerNode.length; s++) addSinker(chain, s, velocity, water, resistance);
    for (let i = 0; i < chain.nodes; i++) {
      const u = water[i]!;
      force[3 * i] = resistance[6 * i]! * u;
      force[3 * i + 1] = resistance[6 * i + 1]! * u;
      force[3 * i + 2] = resistance[6 * i + 2]! * u - chain.weight[i]!;
    }
    addFloat(chain, stream, velocity, water, load, resistance, force);
  };
  return { resistance, force, evaluate };
}

function addLink(
  chain: Chain,
  j: number,
  r: Float64Array,
  v: Float64Array,
  water: Float64Array,
  resistance: Float64Array,
): void {
  const a = 3 * j;
  let x = r[a + 3]! - r[a]!;
  let y = r[a + 4]! - r[a + 1]!;
  let z = r[a + 5]! - r[a + 2]!;
  const rest = chain.rest[j]!;
  const length = Math.sqrt(x * x + y * y + z * z);
  // a link folded to nothing has no direction: all its drag is across
  const scale = length > 1e-9 * rest ? 1 / length : 0;
  x *= scale;
  y *= scale;
  z *= scale;
  const wx = 0.5 * (water[j]! + water[j + 1]! - v[a]! - v[a + 3]!);
  const wy = -0.5 * (v[a + 1]! + v[a + 4]!);
  const wz = -0.5 * (v[a + 2]! + v[a + 5]!);
  const along = wx * x + wy * y + wz * z;
  const across = Math.sqrt(Math.max(0, wx * wx + wy * wy + wz * wz - along * along));
  const kernel = chain.lines[chain.section[j]!]!;
  const normal = 0.5 * rest * kernel.normal(across);
  const more = 0.5 * rest * kernel.tangential * Math.abs(along) - normal;
  for (let b = 6 * j; b <= 6 * j + 6; b += 6) {
    resistance[b]! += normal + more * x * x;
    resistance[b + 1]! += more * x * y;
    resistance[b + 2]! += more * x * z;
    resistance[b + 3]! += normal + more * y * y;
    resistance[b + 4]! += more * y * z;
    resistance[b + 5]! += normal + more * z * z;
  }
}

function addSinker(
  chain: Chain,
  s: number,
  v: Float64Array,
  water: Float64Array,
  resistance: Float64Array,
): void {
  const i = chain.sinkerNode[s]!;
  const wx = water[i]! - v[3 * i]!;
  const wy = v[3 * i + 1]!;
  const wz = v[3 * i + 2]!;
  const square = wx * wx + wy * wy + wz * wz;
  const along = chain.headFirst[s] && square > 0 ? (wz * wz) / square : 0;
  const k = chain.sinkers[s]!(Math.sqrt(square), along);
  resistance[6 * i]! += k;
  resistance[6 * i + 3]! += k;
  resistance[6 * i + 5]! += k;
}

function addFloat(
  chain: Chain,
  stream: Stream,
  v: Float64Array,
  water: Float64Array,
  load: number,
  resistance: Float64Array,
  force: Float64Array,
): void {
  const { float } = chain;
  const draft = float.draft(load);
  const wet = Math.sqrt((water[0]! - v[0]!) ** 2 + v[1]! ** 2);
  const wind = stream.wind ?? 0;
  const dry = stream.wind === null ? 0 : Math.sqrt((wind - v[0]!) ** 2 + v[1]! ** 2);
  const inWater = wet > 0 ? float.dragAt(wet, draft) / wet : 0;
  const inAir = dry > 0 ? float.windageAt(dry, draft) / dry : 0;
  resistance[0]! += inWater + inAir;
  resistance[3]! += inWater + inAir;
  force[0]! += inWater * water[0]! + inAir * wind - stream.hold.force;
}
