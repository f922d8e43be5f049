/** Every depth at which a quantity of the section has a given value, piece by piece of the depths it can be filled to. */

import { findRoot } from "../numerics/index.js";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Metres,
  metres,
  QuantityError,
} from "../units/index.js";
import type { CrossSection } from "./section.js";

/** A range of depths over which a section is smooth. `band` names the row of the tables of a survey. */
export interface Piece {
  readonly band: number;
  readonly low: number;
  readonly high: number;
}

/** A function of depth inside a band: below 0 where it is short of what is asked. */
export type InBand = (band: number, depth: number) => number;

export type DepthsFor =
  /** `depths` holds every depth that answers, shallowest first. */
  | { readonly kind: "found"; readonly depth: Metres; readonly depths: readonly Metres[] }
  /** More than the section can carry so at any depth it reaches. */
  | {
      readonly kind: "over-capacity";
      readonly greatestDischarge: CubicMetresPerSecond;
      readonly atDepth: Metres;
    }
  /** The section begins to carry more at this depth by a step, and the discharge lies within the step. */
  | { readonly kind: "within-step"; readonly atDepth: Metres };

/** Every depth at which a function gives the discharge, over pieces in which it only rises or only falls. */
export function depthsFor(
  dischargeIn: InBand,
  discharge: CubicMetresPerSecond,
  pieces: readonly Piece[],
): DepthsFor {
  const excess = (band: number, y: number): number => Math.log(dischargeIn(band, y) / discharge);
  const depths = rootsOver(excess, pieces, -1).map(metres);
  const [depth] = depths;
  if (depth !== undefined) return { kind: "found", depth, depths };
  let [greatest, atDepth] = [0, 0];
  for (const { band, low, high } of pieces) {
    for (const y of low > 0 ? [low, high] : [high]) {
      const carried = dischargeIn(band, y);
      if (carried > discharge) return { kind: "within-step", atDepth: metres(low) };
      if (carried > greatest) [greatest, atDepth] = [carried, y];
    }
  }
  return {
    kind: "over-capacity",
    greatestDischarge: cubicMetresPerSecond(greatest),
    atDepth: metres(atDepth),
  };
}

export function piecesOf(section: CrossSection): readonly Piece[] {
  if (section.shape === "circular") return [{ band: 0, low: 0, high: section.diameter }];
  if (section.shape !== "surveyed") return [{ band: 0, low: 0, high: Number.POSITIVE_INFINITY }];
  return section.bands.map((low, band) => ({
    band,
    low,
    high: section.bands[band + 1] ?? section.greatestDepth,
  }));
}

/** Cuts the pieces at the given depths. */
export function cutAt(pieces: readonly Piece[], depths: readonly number[]): readonly Piece[] {
  return pieces.flatMap(({ band, low, high }) => {
    const ends = [low, ...depths.filter((y) => y > low && y < high), high];
    return ends.slice(1).map((end, n) => ({ band, low: ends[n] ?? low, high: end }));
  });
}

/** The pieces of a section cut where a function turns: `rise` has the sign of its slope, above 0 as depth goes to 0. */
export function turningPieces(section: CrossSection, rise: InBand): readonly Piece[] {
  const pieces = piecesOf(section);
  if (section.shape !== "circular" && section.shape !== "surveyed") return pieces;
  const turns = rootsOver(rise, pieces, 1);
  return turns.length === 0 ? pieces : cutAt(pieces, turns);
}

/** What the sums over two neighbouring bands may differ by where they meet, and roots nearer than this are one. */
const rounding = 1e-12;

/** The roots of f, a relative excess, over pieces in which it only rises or only falls, in order of depth.
 *  `dry` is the sign of f as depth goes to 0; as depth grows without end f is above 0. */
export function rootsOver(f: InBand, pieces: readonly Piece[], dry: 1 | -1): number[] {
  const found: number[] = [];
  const keep = (root: number): void => {
    if (!(root <= (found.at(-1) ?? 0) * (1 + rounding))) found.push(root);
  };
  let before = Number.NaN;
  for (const { band, low, high } of pieces) {
    const fa = low === 0 ? dry * Number.POSITIVE_INFINITY : f(band, low);
    const fb = high === Number.POSITIVE_INFINITY ? high : f(band, high);
    if (fa === 0 || (before < 0 !== fa < 0 && Math.abs(before - fa) <= rounding)) keep(low);
    if (fb === 0) keep(high);
    else if (fa < 0 !== fb < 0 && fa !== 0) keep(rootIn((y) => f(band, y), { a: low, b: high, fa, fb }));
    before = fb;
  }
  return found;
}

interface Bracket {
  readonly a: number;
  readonly b: number;
  readonly fa: number;
  readonly fb: number;
}

/** Moves an end at infinity, or at the dry bed, in until the sign there can be seen; then finds the root. */
function rootIn(f: (depth: number) => number, { a, b, fa, fb }: Bracket): number {
  if (b === Number.POSITIVE_INFINITY) {
    const [from, value] = steppedFrom(f, a > 0 ? 2 * a : 1, 16, fb);
    if (a > 0) return bracketed(f, { a, b: from, fa, fb: value });
    return rootIn(f, { a, b: from, fa, fb: value });
  }
  if (a > 0) return bracketed(f, { a, b, fa, fb });
  const [near, value] = steppedFrom(f, b / 16, 1 / 16, fa);
  return bracketed(f, { a: near, b, fa: value, fb });
}

/** Steps from y by a factor until f has the wanted sign. */
function steppedFrom(
  f: (depth: number) => number,
  start: number,
  factor: number,
  wanted: number,
): readonly [depth: number, value: number] {
  let y = start;
  let value = f(y);
  while (value < 0 !== wanted < 0) {
    y *= factor;
    value = f(y);
    if (y === 0 || y === Number.POSITIVE_INFINITY) {
      throw new QuantityError(
        "depth that balances",
        "between 1e-308 and 1e308 m: the given values leave no such depth",
        y,
      );
    }
  }
  return [y, value];
}

/** The root by the logarithm of depth, in which the relations of hydraulics are nearly straight. */
function bracketed(f: (depth: number) => number, { a, b, fa, fb }: Bracket): number {
  if (fa === 0) return a;
  if (fb === 0) return b;
  const [low, high] = [Math.log(a), Math.log(b)];
  const finite = (value: number): number => Math.max(-1e9, Math.min(1e9, value));
  // the ends keep their own depths: their logarithms need not come back to them
  const at = (x: number): number => finite(x === low ? fa : x === high ? fb : f(Math.exp(x)));
  const { root } = findRoot(at, low, high, 1e-16);
  return root === low ? a : root === high ? b : Math.exp(root);
}
