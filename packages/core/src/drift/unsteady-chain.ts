/** A rig as a chain: nodes with mass and weight, and links between them that can pull but not push. */

import type { FloatKernel, LineKernel, SinkerKernel } from "../forces/index.js";
import { addedMass, floatKernel, lineKernel, sinkerKernel, submergedWeight } from "../forces/index.js";
import type { Rig } from "../rig/index.js";
import { requirePositive } from "../units/index.js";
import type { Water } from "../water/index.js";

/** Node 0 is the float; every section ends at the node of its sinker. Positions, velocities in triples x, y, z; plain SI numbers. */
export interface Chain {
  readonly nodes: number;
  readonly links: number;
  /** Mass with added mass, and weight in water, per node. */
  readonly mass: Float64Array;
  readonly weight: Float64Array;
  /** Length of each link without load. */
  readonly rest: Float64Array;
  /** Section of each link. */
  readonly section: Int32Array;
  /** Node of each sinker. */
  readonly sinkerNode: Int32Array;
  /** Which sinker a node carries, or -1. */
  readonly sinkerOf: Int32Array;
  readonly position: Float64Array;
  readonly velocity: Float64Array;
  readonly tension: Float64Array;
  readonly float: FloatKernel;
  readonly lines: readonly LineKernel[];
  readonly sinkers: readonly SinkerKernel[];
  /** Whether a sinker falls head first. */
  readonly headFirst: readonly boolean[];
}

/** Share of the water of its box that a float moves with it. Our assumption; no effect on where it settles. */
export const floatAddedShare = 0.5;

/** Cuts each line of a rig into `segments` links and lumps line and sinkers on the nodes. Added mass of the line is that of a cylinder
 *  across its axis, taken for every direction [Lamb1932]. Throws QuantityError for a sinker or line that floats. */
export function buildChain(rig: Rig, water: Water, segments: number): Chain {
  const count = rig.sections.length;
  const links = count * segments;
  const chain = emptyChain(rig, water, links);
  const { length, width, height, fill } = rig.float;
  chain.mass[0] = rig.float.mass + floatAddedShare * water.density * length * width * height * fill;
  rig.sections.forEach(({ line, sinker }, s) => {
    const rest = line.length / segments;
    const area = (Math.PI * line.diameter ** 2) / 4;
    const mass = (line.density + water.density) * area * rest;
    const weight = (chain.lines[s]?.weight ?? 0) * rest;
    for (let j = s * segments; j < (s + 1) * segments; j++) {
      chain.rest[j] = rest;
      chain.section[j] = s;
      for (const node of [j, j + 1]) {
        chain.mass[node]! += mass / 2;
        chain.weight[node]! += weight / 2;
      }
    }
    const node = (s + 1) * segments;
    const load = submergedWeight(sinker, water);
    requirePositive("submerged weight of the sinker", load, "N");
    chain.mass[node]! += sinker.mass + addedMass(sinker, water);
    chain.weight[node]! += load;
    chain.sinkerNode[s] = node;
    chain.sinkerOf[node] = s;
  });
  return chain;
}

function emptyChain(rig: Rig, water: Water, links: number): Chain {
  const nodes = links + 1;
  return {
    nodes,
    links,
    mass: new Float64Array(nodes),
    weight: new Float64Array(nodes),
    rest: new Float64Array(links),
    section: new Int32Array(links),
    sinkerNode: new Int32Array(rig.sections.length),
    sinkerOf: new Int32Array(nodes).fill(-1),
    position: new Float64Array(3 * nodes),
    velocity: new Float64Array(3 * nodes),
    tension: new Float64Array(links),
    float: floatKernel(rig.float, water),
    lines: rig.sections.map(({ line }) => lineKernel(line, water)),
    sinkers: rig.sections.map(({ sinker }) => sinkerKernel(sinker, water)),
    headFirst: rig.sections.map(({ sinker }) => sinker.knot === "loop"),
  };
}

/** Kinetic energy with that of the water carried along, energy of height of what hangs below the surface, and the little that the links store, J. */
export function mechanicalEnergy(chain: Chain, stiffness: number): number {
  const { mass, weight, position, velocity, tension, rest } = chain;
  let energy = 0;
  for (let i = 0; i < chain.nodes; i++) {
    const x = velocity[3 * i]!;
    const y = velocity[3 * i + 1]!;
    const z = velocity[3 * i + 2]!;
    energy += 0.5 * mass[i]! * (x * x + y * y + z * z) + weight[i]! * position[3 * i + 2]!;
  }
  for (let j = 0; j < chain.links; j++) energy += (0.5 * tension[j]! ** 2 * rest[j]!) / stiffness;
  return energy;
}
