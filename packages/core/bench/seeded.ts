/** Random numbers that are the same in every run. */

/** A generator of numbers from `low` to `high` from a seed (mulberry32). */
export function seeded(seed: number): (low: number, high: number) => number {
  let state = seed >>> 0;
  return (low, high) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return low + ((high - low) * ((t ^ (t >>> 14)) >>> 0)) / 2 ** 32;
  };
}
