/** The links of a chain: each pulls as hard as it must to stay within its length, and never pushes. */

import type { Chain } from "./unsteady-chain.js";
import type { BlockChain } from "./unsteady-solve.js";

/** Stiffness of a link, N: at 10 mN it stretches by 1e-6. Far stiffer than line; it only keeps the equations regular. */
export const linkStiffness = 1e4;
/** Length error that ends the iteration, relative. */
const lengthTolerance = 1e-7;

export interface Links {
  /** Adds the linearised pull of every taut link to the equations of a step. */
  readonly add: (step: number) => void;
  /** New tensions, and the new set of taut links; true when the set stayed and the lengths hold. */
  readonly update: () => boolean;
  /** Notes the lengths of a finished step. */
  readonly finish: () => void;
  /** Greatest relative error of a taut link so far. */
  readonly lengthError: () => number;
}

/** `start` holds the positions at the start of the step, the chain those of the last iterate. */
export function compileLinks(chain: Chain, start: Float64Array, blocks: BlockChain): Links {
  const { links, rest, position, tension } = chain;
  const direction = new Float64Array(3 * links);
  const taut = new Uint8Array(links);
  let worst = 0;

  /** Pull on the upper end: λ d, λ = (d·E − l)/c along the new link E; λ/L of the last iterate across it. */
  const addTaut = (j: number, step: number): void => {
    const a = 3 * j;
    const length = lengthOf(position, j);
    const dx = (position[a + 3]! - position[a]!) / length;
    const dy = (position[a + 4]! - position[a + 1]!) / length;
    const dz = (position[a + 5]! - position[a + 2]!) / length;
    direction[a] = dx;
    direction[a + 1] = dy;
    direction[a + 2] = dz;
    const across = tension[j]! / length;
    const along = linkStiffness / rest[j]!;
    const ex = start[a + 3]! - start[a]!;
    const ey = start[a + 4]! - start[a + 1]!;
    const ez = start[a + 5]! - start[a + 2]!;
    const project = dx * ex + dy * ey + dz * ez;
    const pull = along * (project - rest[j]!) - across * project;
    const { right, couple } = blocks;
    const fx = pull * dx + across * ex;
    const fy = pull * dy + across * ey;
    const fz = pull * dz + across * ez;
    right[a]! += fx;
    right[a + 1]! += fy;
    right[a + 2]! += fz;
    right[a + 3]! -= fx;
    right[a + 4]! -= fy;
    right[a + 5]! -= fz;
    couple(j, step * across, step * (along - across), dx, dy, dz);
  };

  const updateOne = (j: number): boolean => {
    const a = 3 * j;
    const l = rest[j]!;
    const length = lengthOf(position, j);
    if (taut[j] === 0) {
      if (length <= l * (1 + lengthTolerance)) return true;
      taut[j] = 1;
      return false;
    }
    const project =
      direction[a]! * (position[a + 3]! - position[a]!) +
      direction[a + 1]! * (position[a + 4]! - position[a + 1]!) +
      direction[a + 2]! * (position[a + 5]! - position[a + 2]!);
    tension[j] = Math.max(0, (linkStiffness * (project - l)) / l);
    if (project >= l) return length - project <= lengthTolerance * l;
    taut[j] = 0;
    return false;
  };

  return {
    add: (step) => {
      for (let j = 0; j < links; j++) if (taut[j] === 1) addTaut(j, step);
    },
    update: () => {
      let settled = true;
      for (let j = 0; j < links; j++) if (!updateOne(j)) settled = false;
      return settled;
    },
    finish: () => {
      for (let j = 0; j < links; j++) {
        if (taut[j] === 1) worst = Math.max(worst, Math.abs(lengthOf(position, j) / rest[j]! - 1));
      }
    },
    lengthError: () => worst,
  };
}

function lengthOf(position: Float64Array, j: number): number {
  const a = 3 * j;
  const x = position[a + 3]! - position[a]!;
  const y = position[a + 4]! - position[a + 1]!;
  const z = position[a + 5]! - position[a + 2]!;
  return Math.sqrt(x * x + y * y + z * z);
}
