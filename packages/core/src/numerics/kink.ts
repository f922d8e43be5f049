/** Where steps go around a kink of the slope: to it, graded, and away from it. */

/** A kink of the slope on the way: where it is, how far before and after it steps are graded, how often it may still be aimed at anew. */
export interface Kink {
  readonly at: number;
  readonly before: number;
  readonly after: number;
  readonly aims: number;
}

export const none: Kink = { at: Number.NEGATIVE_INFINITY, before: 0, after: 0, aims: 0 };

/** How much longer the next step may be: away from a kink, steps even in the square root of the distance are as 1, 3 and 5. */
export function growth(factor: number, lean: number): number {
  return Math.min(6, Math.max(0.2, lean < 0 ? (1 - 2 * lean) * factor : factor));
}

/** The length of the next step, at most `most`: half of the way to a kink and from it evenly, the rest in two graded steps, the nearer one a
 *  quarter of the longer: equal steps of the square root of the distance. */
export function stepFrom(done: number, most: number, span: number, kink: Kink): number {
  const ahead = kink.at - done;
  const left = span - done;
  if (isPast(done, kink)) return most >= left ? left : Math.min(most, left / 2);
  if (ahead > (1 + 1e-9) * kink.before) return Math.min(most, left, ahead - kink.before);
  if (ahead > (1 / 4 + 1e-9) * kink.before) return Math.min(most, left, 0.75 * ahead);
  if (ahead > 0) return Math.min(most, left, ahead);
  return Math.min(most, left, ahead === 0 ? kink.after / 4 : kink.after + ahead);
}

/** How much a step near a kink leans, that is even in the square root of the distance from it. */
export function leanOf(done: number, h: number, kink: Kink): number {
  const ahead = kink.at - done;
  if (ahead > (1 + 1e-9) * kink.before || isPast(done, kink)) return 0;
  const from = Math.sqrt(Math.abs(ahead));
  const to = Math.sqrt(Math.abs(ahead - h));
  return (from - to) / (from + to);
}

export function isPast(done: number, { at, after }: Kink): boolean {
  return done >= at + (1 - 1e-9) * after;
}
