/** What a builder hands back: the body, what it rests on, and how far the tables may be off. */

import type { Assumption, Grounds } from "../sources/index.js";

export interface Built<T> {
  readonly body: T;
  readonly grounds: Grounds;
  /** Relative half-width of each tabulated value that no measurement replaced: 0.2 is ±20 %. */
  readonly spread: Readonly<Record<string, number>>;
}

/** A value from a table of this room: the field of the body it fills, how to say it, and its relative half-width. */
export interface Tabulated {
  readonly field: string;
  readonly name: string;
  readonly value: string;
  readonly spread: number;
  readonly basis: Assumption["basis"];
}

/** A body with grounds for those tabulated values that were not measured. */
export function built<T>(body: T, measured: object | undefined, tabulated: readonly Tabulated[]): Built<T> {
  const kept = tabulated.filter(({ field }) => !Object.hasOwn(measured ?? {}, field));
  const assumptions = kept.map(({ name, value, spread, basis }) => ({
    name,
    value: spread > 0 ? `${value} ± ${Math.round(100 * spread)} %` : value,
    basis,
  }));
  const relations: Grounds["relations"] = [
    ...(kept.some(({ basis }) => basis === "practice") ? (["CommonPractice"] as const) : []),
    ...(kept.some(({ basis }) => basis === "assumption") ? (["OurAssumption"] as const) : []),
  ];
  return {
    body,
    grounds: { relations, assumptions, caveats: [] },
    spread: Object.fromEntries(
      kept.filter(({ spread }) => spread > 0).map(({ field, spread }) => [field, spread]),
    ),
  };
}

/** A mass in grams, as a person reads it. */
export function inGrams(mass: number): string {
  return `${(1000 * mass).toPrecision(2)} g`;
}

/** A length in millimetres, as a person reads it. */
export function inMillimetres(length: number, digits = 1): string {
  return `${(1000 * length).toFixed(digits)} mm`;
}
