/** What a result rests on: relations by key, assumptions taken, and relations used outside their published range. */

import type { SourceKey } from "./records.js";

/** A relation used outside the range its source gives. The value is still the relation's: never clamped, never hidden. */
export interface Caveat {
  readonly relation: SourceKey;
  readonly quantity: string;
  readonly min: number;
  readonly max: number;
  readonly received: number;
}

/** A value that no measurement and no published relation gave: a default, a habit of the trade, or our own choice. */
export interface Assumption {
  readonly name: string;
  readonly value: string;
  readonly basis: "assumption" | "practice" | "default";
}

export interface Grounds {
  readonly relations: readonly SourceKey[];
  readonly assumptions: readonly Assumption[];
  readonly caveats: readonly Caveat[];
}

/** A range inside which a relation was published, as data beside the relation. */
export interface Validity {
  readonly relation: SourceKey;
  readonly quantity: string;
  readonly min: number;
  readonly max: number;
}

/** The caveat for a value outside a validity range, or nothing. Ends of the range are inside. */
export function caveatFor(validity: Validity, received: number): readonly Caveat[] {
  const { relation, quantity, min, max } = validity;
  return received >= min && received <= max ? [] : [{ relation, quantity, min, max, received }];
}

/** Several grounds as one, each relation, assumption and caveat named once. */
export function joinGrounds(...all: readonly Grounds[]): Grounds {
  const relations: SourceKey[] = [];
  const assumptions: Assumption[] = [];
  const caveats: Caveat[] = [];
  for (const grounds of all) {
    for (const r of grounds.relations) if (!relations.includes(r)) relations.push(r);
    for (const a of grounds.assumptions)
      if (!assumptions.some((b) => sameAssumption(a, b))) assumptions.push(a);
    for (const c of grounds.caveats) if (!caveats.some((d) => sameCaveat(c, d))) caveats.push(c);
  }
  return { relations, assumptions, caveats };
}

function sameAssumption(a: Assumption, b: Assumption): boolean {
  return a === b || (a.name === b.name && a.value === b.value);
}

function sameCaveat(a: Caveat, b: Caveat): boolean {
  return a.relation === b.relation && a.quantity === b.quantity && a.received === b.received;
}
