/** The bed under a chain: it pushes but never pulls, and holds a sinker by friction up to a limit. The surface above: nothing leaves the water. */

import { bedFriction } from "./bed-friction.js";
import type { Chain } from "./unsteady-chain.js";
import type { BlockChain } from "./unsteady-solve.js";

/** Resistance of the bed, and of the surface to the float, N s/m: it yields less than a micrometre. */
const wall = 1e5;

const clear = 0;
const sticking = 1;
const sliding = 2;
const surfaced = 3;

export interface Bed {
  /** Adds the push and the friction of the bed to the equations of a step, and holds the float to the surface. */
  readonly add: (step: number) => void;
  /** New set of nodes on the bed, and which of them slide; true when nothing changed. */
  readonly update: () => boolean;
  /** Keeps the reactions of a finished step: they limit the friction of the next. */
  readonly finish: (step: number) => void;
}

/** `start` holds the positions at the start of the step, the chain those of the last iterate. */
export function compileBed(chain: Chain, start: Float64Array, blocks: BlockChain, depth: number): Bed {
  const { nodes, position, velocity, sinkerOf } = chain;
  const state = new Uint8Array(nodes);
  const limit = new Float64Array(nodes);
  const slip = new Float64Array(2 * nodes);
  const { diagonal, right } = blocks;
  state[0] = surfaced;

  const addOne = (i: number, step: number): void => {
    diagonal[6 * i + 5]! += wall;
    const level = state[i] === surfaced ? depth : 0;
    right[3 * i + 2]! -= (wall * (start[3 * i + 2]! - level)) / step;
    if (level > 0 || sinkerOf[i]! < 0) return;
    if (state[i] === sticking) {
      diagonal[6 * i]! += wall;
      diagonal[6 * i + 3]! += wall;
    } else {
      right[3 * i]! -= limit[i]! * slip[2 * i]!;
      right[3 * i + 1]! -= limit[i]! * slip[2 * i + 1]!;
    }
  };

  /** A sinker sticks until the friction would pass its limit, and slides until it would turn back. True when that stayed. */
  const updateSlip = (i: number): boolean => {
    const vx = velocity[3 * i]!;
    const vy = velocity[3 * i + 1]!;
    const speed = Math.sqrt(vx * vx + vy * vy);
    if (state[i] === sticking && wall * speed <= limit[i]!) return true;
    if (state[i] === sliding && vx * slip[2 * i]! + vy * slip[2 * i + 1]! < 0) {
      state[i] = sticking;
      return false;
    }
    const stayed = state[i] === sliding;
    state[i] = sliding;
    slip[2 * i] = speed > 0 ? vx / speed : 0;
    slip[2 * i + 1] = speed > 0 ? vy / speed : 0;
    return stayed;
  };

  /** What a clear node meets: one that has just left the bed may still be a trifle below it, and so at the surface. */
  const meets = (z: number, before: number): number => {
    if (z < 0 && z < before) return sliding;
    return z > depth && z > before ? surfaced : clear;
  };

  const updateOne = (i: number): boolean => {
    const z = position[3 * i + 2]!;
    if (state[i] === clear) {
      state[i] = meets(z, start[3 * i + 2]!);
      slip[2 * i] = 0;
      slip[2 * i + 1] = 0;
      return state[i] === clear;
    }
    if (state[i] === surfaced ? z < depth : z > 0) {
      state[i] = clear;
      return false;
    }
    return state[i] === surfaced || sinkerOf[i]! < 0 || updateSlip(i);
  };

  return {
    add: (step) => {
      for (let i = 0; i < nodes; i++) if (state[i] !== clear) addOne(i, step);
    },
    update: () => {
      let settled = true;
      for (let i = 1; i < nodes; i++) if (!updateOne(i)) settled = false;
      return settled;
    },
    finish: (step) => {
      for (let i = 1; i < nodes; i++) {
        const onBed = state[i] === sticking || state[i] === sliding;
        limit[i] = !onBed ? 0 : (-bedFriction * wall * position[3 * i + 2]!) / step;
      }
    },
  };
}
