/** One step of a chain through the stream by backward Euler. With the drag at the current motion the step is a convex problem
 *  (least of kinetic change, drag and height under bounds on the links and the bed); Newton with active sets finds its one answer. */

import { compileBed } from "./unsteady-bed.js";
import type { Chain } from "./unsteady-chain.js";
import { compileDrag, type Stream } from "./unsteady-drag.js";
import { compileLinks } from "./unsteady-links.js";
import { blockChain } from "./unsteady-solve.js";

/** Newton steps before the time step is halved, those taken in full, and how often it may be halved. */
const mostIterations = 24;
const fullIterations = 8;
const mostHalvings = 10;

export interface Stepper {
  readonly chain: Chain;
  /** Carries the chain over `step` seconds. `load` is the pull on the float that sets its draft. */
  readonly advance: (step: number, load: number) => void;
  /** Greatest relative error of a taut link so far. */
  readonly lengthError: () => number;
  /** Linear solves so far, time steps halved, and those that did not come out even so. */
  readonly work: () => { readonly solves: number; readonly halved: number; readonly unfinished: number };
}

export function compileStepper(chain: Chain, stream: Stream): Stepper {
  const { nodes, mass, position, velocity } = chain;
  const blocks = blockChain(nodes);
  const start = new Float64Array(3 * nodes);
  const startVelocity = new Float64Array(3 * nodes);
  const last = new Float64Array(3 * nodes);
  const drag = compileDrag(chain, stream);
  const links = compileLinks(chain, start, blocks);
  const bed = compileBed(chain, start, blocks, stream.depth);
  let solves = 0;
  let halved = 0;
  let unfinished = 0;

  const carry = (step: number, load: number, halvings: number): void => {
    start.set(position);
    startVelocity.set(velocity);
    if (attempt(step, load)) return;
    if (halvings === mostHalvings) {
      unfinished++;
      return;
    }
    halved++;
    position.set(start);
    velocity.set(startVelocity);
    carry(step / 2, load, halvings + 1);
    carry(step / 2, load, halvings + 1);
  };

  const attempt = (step: number, load: number): boolean => {
    move(step);
    // once per step: what is left is then convex, and the order clean
    drag.evaluate(position, velocity, load);
    for (let iteration = 1; iteration <= mostIterations; iteration++) {
      assemble(step);
      blocks.solve();
      solves++;
      last.set(velocity);
      velocity.set(blocks.right);
      move(step);
      const linksHold = links.update();
      if (bed.update() && linksHold) {
        links.finish();
        bed.finish(step);
        return true;
      }
      if (iteration >= fullIterations) {
        for (let k = 0; k < 3 * nodes; k++) velocity[k] = 0.5 * (velocity[k]! + last[k]!);
        move(step);
      }
    }
    return false;
  };

  const move = (step: number): void => {
    for (let k = 0; k < 3 * nodes; k++) position[k] = start[k]! + step * velocity[k]!;
  };

  const assemble = (step: number): void => {
    const { diagonal, coupling, right } = blocks;
    diagonal.set(drag.resistance);
    right.set(drag.force);
    coupling.fill(0);
    for (let i = 0; i < nodes; i++) {
      const inertia = mass[i]! / step;
      diagonal[6 * i]! += inertia;
      diagonal[6 * i + 3]! += inertia;
      diagonal[6 * i + 5]! += inertia;
      for (let k = 3 * i; k < 3 * i + 3; k++) right[k]! += inertia * startVelocity[k]!;
    }
    links.add(step);
    bed.add(step);
  };

  return {
    chain,
    advance: (step, load) => carry(step, load, 0),
    lengthError: links.lengthError,
    work: () => ({ solves, halved, unfinished }),
  };
}
