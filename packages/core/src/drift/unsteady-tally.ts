/** What a drift adds up to, step by step: time in the window, when it settled, and the path. */

import type { Chain } from "./unsteady-chain.js";
import { type Stream, waterSpeed } from "./unsteady-drag.js";
import { compilePath, sinkersFrom } from "./unsteady-path.js";

export interface Aims {
  /** Heights between which the fish takes, or null where no window was given. */
  readonly window: { readonly low: number; readonly high: number } | null;
  readonly excessScale: number;
  /** Height of the lowest sinker once settled, or null where it never settles. */
  readonly settledHeight: number | null;
  readonly depth: number;
  /** Most instants kept, 0 for none. */
  readonly instants: number;
}

/** Share of the settled depth that counts as settled. Model §5. */
export const settledBand = 0.05;

export interface Tally {
  /** Counts one step of `span` seconds that has just been made. */
  readonly add: (span: number) => void;
  /** Counts `span` seconds in which nothing changes but the place along the stream. */
  readonly extend: (span: number) => void;
  readonly time: () => number;
  readonly secondsInWindow: () => number;
  readonly effectiveSeconds: () => number;
  readonly firstInWindow: () => number | null;
  readonly settledAt: () => { readonly time: number; readonly distance: number } | null;
  readonly path: () => readonly Float64Array[];
}

export function compileTally(chain: Chain, stream: Stream, aims: Aims): Tally {
  const { position, velocity, sinkerNode, tension } = chain;
  const sinkers = sinkerNode.length;
  const lowest = sinkerNode[sinkers - 1]!;
  const before = new Float64Array(sinkers);
  const path = compilePath(sinkers, aims.instants, (instant) => {
    instant[0] = time;
    instant.set(position.subarray(0, 3), 1);
    instant[4] = excessOf(lowest);
    instant[5] = tension[0]!;
    for (let s = 0; s < sinkers; s++) {
      const at = 3 * sinkerNode[s]!;
      instant.set(position.subarray(at, at + 3), sinkersFrom + 3 * s);
    }
  });
  let time = 0;
  let inWindow = 0;
  let effective = 0;
  let first: number | null = null;
  let settledTime = Number.NaN;
  let settledDistance = 0;
  let floatBefore = position[0]!;

  const excessOf = (node: number): number =>
    velocity[3 * node]! - waterSpeed(stream, position[3 * node + 1]!, position[3 * node + 2]!);

  const remember = (): void => {
    for (let s = 0; s < sinkers; s++) before[s] = position[3 * sinkerNode[s]! + 2]!;
    floatBefore = position[0]!;
  };

  const countWindow = (span: number): void => {
    if (aims.window === null) return;
    const { low, high } = aims.window;
    let most = 0;
    let best = 0;
    for (let s = 0; s < sinkers; s++) {
      const node = sinkerNode[s]!;
      const from = before[s]!;
      const to = position[3 * node + 2]!;
      const share = shareInside(from, to, low, high);
      if (share === 0) continue;
      if (first === null) first = time + span * shareBefore(from, to, low, high);
      most = Math.max(most, share);
      best = Math.max(best, share / (1 + (excessOf(node) / aims.excessScale) ** 2));
    }
    inWindow += span * most;
    effective += span * best;
  };

  const watchSettling = (span: number): void => {
    if (aims.settledHeight === null) return;
    const band = settledBand * (aims.depth - aims.settledHeight);
    const to = Math.abs(position[3 * lowest + 2]! - aims.settledHeight) - band;
    if (to > 0) {
      settledTime = Number.NaN;
      return;
    }
    if (!Number.isNaN(settledTime)) return;
    const from = Math.abs(before[sinkers - 1]! - aims.settledHeight) - band;
    const share = from > 0 ? from / (from - to) : 0;
    settledTime = time + share * span;
    settledDistance = floatBefore + share * (position[0]! - floatBefore);
  };

  const count = (span: number): void => {
    countWindow(span);
    watchSettling(span);
    time += span;
    remember();
    path.add();
  };

  remember();
  path.add();
  return {
    add: count,
    extend: (span) => {
      for (let i = 0; i < chain.nodes; i++) position[3 * i]! += span * velocity[0]!;
      count(span);
      path.end();
    },
    time: () => time,
    secondsInWindow: () => inWindow,
    effectiveSeconds: () => effective,
    firstInWindow: () => first,
    settledAt: () => (Number.isNaN(settledTime) ? null : { time: settledTime, distance: settledDistance }),
    path: () => {
      path.end();
      return path.kept();
    },
  };
}

/** Share of a straight move from one height to another that lies inside the window. */
export function shareInside(from: number, to: number, low: number, high: number): number {
  const bottom = Math.min(from, to);
  const top = Math.max(from, to);
  if (top === bottom) return from >= low && from <= high ? 1 : 0;
  return Math.max(0, Math.min(top, high) - Math.max(bottom, low)) / (top - bottom);
}

/** Share of a straight move that passes before it enters the window. */
function shareBefore(from: number, to: number, low: number, high: number): number {
  if (from >= low && from <= high) return 0;
  return Math.abs((from > high ? high : low) - from) / Math.abs(to - from);
}
