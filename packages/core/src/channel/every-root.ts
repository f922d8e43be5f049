/** Every depth at which a quantity of the section has a given value, piece by piece of the depths it can be filled to. */

import { ln } from "../elementary/index.js";
import { type CubicMetresPerSecond, cubicMetresPerSecond, type Metres, metres } from "../units/index.js";
import { rootIn } from "./root-in-depth.js";
import type { CrossSection } from "./section.js";
import type { Piece } from "./survey.js";

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
  const excess = (band: number, y: number): number => ln(dischargeIn(band, y) / discharge);
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
  return section.pieces;
}

/** Cuts the pieces at the given depths, which rise. */
export function cutAt(pieces: readonly Piece[], depths: readonly number[]): readonly Piece[] {
  const cut: Piece[] = [];
  let next = 0;
  for (const piece of pieces) {
    let { low } = piece;
    for (; next < depths.length && depths[next]! < piece.high; next++) {
      const depth = depths[next]!;
      if (depth <= low) continue;
      cut.push({ band: piece.band, low, high: depth });
      low = depth;
    }
    cut.push(low === piece.low ? piece : { ...piece, low });
  }
  return cut;
}

/** The pieces of a section cut where a discharge turns: `rise` has the sign of its slope, above 0 as depth goes to 0.
 *  Inside a band the ground only widens. With Q = A^(1+e)/P^e the sign of its slope is that of (1 + e) B P − e P' A, whose own slope
 *  (1 + e) B' P + B P' is above 0, and with Q² = A³/B that of 3 B² − B' A, likewise: a band that rises from its bottom does not turn. */
export function turningPieces(section: CrossSection, rise: InBand): readonly Piece[] {
  const pieces = piecesOf(section);
  if (section.shape !== "circular" && section.shape !== "surveyed") return pieces;
  const mayTurn =
    section.shape === "circular" ? pieces : pieces.filter(({ band, low }) => low > 0 && rise(band, low) < 0);
  const turns = mayTurn.length === 0 ? [] : rootsOver(rise, mayTurn, 1);
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
