/** An invented stop for the tests of ranking. */

import { type Column, waterColumn } from "../column/index.js";
import { fishWindow } from "../lie/index.js";
import { type Box, generalBox } from "../tackle/index.js";
import { inches, metres, metresPerSecond } from "../units/index.js";
import { type Judgement, judge, type Pieces, type Stop } from "./index.js";

/** Boulders under 0.9 m of water. */
export const run: Column = waterColumn({
  depth: metres(0.9),
  surfaceSpeed: metresPerSecond(0.9),
  bed: { d84: metres(0.3) },
});

/** A sixth of the general box, so that a ranking takes no time. */
export const box: Box = {
  dries: generalBox.dries.filter((_, i) => i % 3 === 0),
  nymphs: generalBox.nymphs.filter((_, i) => i % 2 === 0),
  tippets: generalBox.tippets,
  dropperLengths: [12, 18, 24, 30, 36, 48].map(inches),
};

export const stop: Stop = { column: run, box };

export function judgedAt(at: Stop, pieces: Pieces): Judgement {
  const window = fishWindow(at.column, at.lie);
  return judge({ stop: at, window, runLength: at.runLength ?? 6, excessScale: 0.3 }, pieces);
}

/** How many candidates a ranking refused in all. */
export function refusals(refused: readonly { readonly count: number }[]): number {
  return refused.reduce((sum, { count }) => sum + count, 0);
}
