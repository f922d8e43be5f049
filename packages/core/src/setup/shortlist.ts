/** From every candidate of a box to the few worth judging in full. */

import type { Field } from "./survey.js";

/** Candidates on the shortlist with one pair of flies. */
const perPair = 3;

/** The candidates most worth a full judgement, at most three of one pair of flies: estimated by falling bound until no bound can reach the
 *  last place. */
export function shortlist(field: Field, places: number): readonly number[] {
  const order = Array.from({ length: field.count }, (_, index) => index)
    .filter((index) => field.bound[index]! > 0)
    .sort((a, b) => field.bound[b]! - field.bound[a]! || a - b);
  let best: { readonly index: number; readonly pair: number; readonly estimate: number }[] = [];
  for (const index of order) {
    const last = best[places - 1];
    if (last !== undefined && field.bound[index]! <= last.estimate) break;
    const pair = field.pairOf(index);
    const twins = best.filter((other) => other.pair === pair);
    const out = twins.length >= perPair ? twins.at(-1) : last;
    const toBeat = out?.estimate ?? -1;
    if (field.bound[index]! <= toBeat) continue;
    const estimate = field.estimate(index);
    if (estimate <= toBeat) continue;
    best = [...best.filter((other) => other !== out), { index, pair, estimate }];
    best.sort((a, b) => b.estimate - a.estimate);
  }
  return best.map(({ index }) => index);
}
