/** A token bucket for each caller, which fills evenly and is paid in units of work. */

/** A bucket holds `units` and fills from empty in `seconds`. */
export interface Policy {
  readonly units: number;
  readonly seconds: number;
}

/** What is asked of a bucket. */
export interface Ask {
  readonly policy: Policy;
  /** Milliseconds of any steady clock. */
  readonly now: number;
  /** Units to take, if they are there. */
  readonly cost: number;
}

export interface Taken {
  readonly ok: boolean;
  /** Units left. */
  readonly left: number;
  /** Milliseconds until the bucket is full, or where it was refused until `cost` is there. */
  readonly wait: number;
}

/** Keeps the buckets. `take` must be atomic: a store that several hosts share does it in one step (`spend` is the arithmetic). */
export interface RateStore {
  readonly take: (caller: string, ask: Ask) => Taken | Promise<Taken>;
}

/** Takes from a bucket that will be full at a time: that one number is all there is to keep. */
export function spend(
  fullAt: number,
  { policy: { units, seconds }, now, cost }: Ask,
): Taken & { readonly fullAt: number } {
  const perUnit = (1000 * seconds) / units;
  const level = units - Math.max(0, fullAt - now) / perUnit;
  // a millionth of a unit for rounding: who waits as told is let in
  if (level + 1e-6 < cost) {
    return { ok: false, left: level, wait: (cost - level) * perUnit, fullAt };
  }
  const left = Math.max(0, level - cost);
  const wait = (units - left) * perUnit;
  return { ok: true, left, wait, fullAt: now + wait };
}

/** Buckets of this process. A full bucket is forgotten; beyond `most` callers the one not seen for longest is. */
export function memoryStore(most: number = 10_000): RateStore {
  const buckets = new Map<string, number>();
  return {
    take: (caller, ask) => {
      const { fullAt, ...taken } = spend(buckets.get(caller) ?? ask.now, ask);
      buckets.delete(caller);
      if (fullAt > ask.now) buckets.set(caller, fullAt);
      for (const [oldest] of buckets) {
        if (buckets.size <= most) break;
        buckets.delete(oldest);
      }
      return taken;
    },
  };
}
