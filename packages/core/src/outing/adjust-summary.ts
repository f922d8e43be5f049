/** From weighed points to before and now, and to what is ruled out. */

import type { AdjustedRig, RevisedQuantities, Revision, RuledOut, Spread } from "./adjust-types.js";

/** Share of the distribution that an interval holds. */
export const held = 0.9;
/** A side is ruled out when it had at least this probability, and is now beyond the interval. */
const likelyBefore = 0.2;

/** Values with two weights each: before and now. Either sums to 1. */
export interface Weighed {
  readonly before: readonly number[];
  readonly now: readonly number[];
}

/** Mean, median and central interval of weighted values. */
export function spreadOf<Q extends number>(
  values: readonly number[],
  weights: readonly number[],
  make: (value: number) => Q,
): Spread<Q> {
  const order = values.map((_, i) => i).sort((a, b) => values[a]! - values[b]!);
  const at = (probability: number): number => quantileOf(values, weights, order, probability);
  const mean = values.reduce((sum, value, i) => sum + value * weights[i]!, 0);
  return {
    mean: make(mean),
    lower: make(at((1 - held) / 2)),
    median: make(at(0.5)),
    upper: make(at((1 + held) / 2)),
  };
}

/** The value that a share of the weight stays below: half of its own weight counted, straight between neighbours. */
function quantileOf(
  values: readonly number[],
  weights: readonly number[],
  order: readonly number[],
  probability: number,
): number {
  let below = 0;
  let last: { readonly share: number; readonly value: number } | null = null;
  for (const i of order) {
    const weight = weights[i]!;
    if (weight === 0) continue;
    const here = { share: below + weight / 2, value: values[i]! };
    if (here.share >= probability) {
      if (last === null) return here.value;
      const part = (probability - last.share) / (here.share - last.share);
      return last.value + part * (here.value - last.value);
    }
    below += weight;
    last = here;
  }
  return last?.value ?? Number.NaN;
}

export function revisionOf<Q extends number>(
  values: readonly number[],
  { before, now }: Weighed,
  make: (value: number) => Q,
): Revision<Q> {
  return { before: spreadOf(values, before, make), now: spreadOf(values, now, make) };
}

const words: Readonly<Record<keyof RevisedQuantities, readonly [above: string, below: string]>> = {
  depth: ["deeper water", "shallower water"],
  surfaceSpeed: ["a quicker surface", "a slower surface"],
  speedBelow: ["quicker water below", "slower water below"],
  drag: ["more drag on the nymph", "less drag on the nymph"],
  treatment: ["a better dressed dry", "a worse soaked dry"],
  nymphHeight: ["a nymph higher off the bed", "a nymph nearer the bed"],
  lean: ["a dropper that leans farther", "a dropper nearer plumb, or leaning downstream"],
};

/** The sides of each quantity that were likely before and lie beyond its interval now. Texts have no lengths: the bounds are those of the interval. */
export function ruledOutBy(
  quantities: RevisedQuantities,
  values: Readonly<Record<keyof RevisedQuantities, readonly number[]>>,
  { before, now }: Weighed,
): readonly RuledOut[] {
  const found: RuledOut[] = [];
  for (const quantity of keysOf(words)) {
    const { lower, upper } = quantities[quantity].now;
    for (const side of ["above", "below"] as const) {
      const beyond = (value: number): boolean => (side === "above" ? value > upper : value < lower);
      const shareOf = (weights: readonly number[]): number =>
        share(values[quantity].map((value, i) => (beyond(value) ? weights[i]! : 0)));
      const [was, is] = [shareOf(before), shareOf(now)];
      if (was < likelyBefore || is > was / 2) continue;
      const what = words[quantity][side === "above" ? 0 : 1];
      const percent = (part: number): string => `${Math.round(100 * part)} %`;
      const end = side === "above" ? "upper" : "lower";
      const text = `${what} than the ${end} end of the interval now: ${percent(was)} likely before, ${percent(is)} now`;
      found.push({ quantity, side, before: was, now: is, text });
    }
  }
  return found;
}

function keysOf<K extends string>(record: Readonly<Record<K, unknown>>): readonly K[] {
  const keys: K[] = [];
  for (const key in record) keys.push(key);
  return keys;
}

/** The least of squared distance from what was stated, in spreads, and −2 ln of the likelihood: were all of it normal and linear, χ² of the number n of
 *  sightings, n ± √(2n) by chance. */
export function verdictOf(deviance: number, sightings: number): AdjustedRig["fit"]["verdict"] {
  const chance = Math.sqrt(2 * sightings);
  if (deviance > sightings + 4 * chance) return "contradictory";
  return deviance > sightings + 2 * chance ? "strained" : "explained";
}

/** A sum of parts of 1, which rounding may carry past it. */
export function share(parts: readonly number[]): number {
  return Math.min(1, total(parts));
}

export function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
