/** Which known word a misspelt one was meant to be. */

import type { Unit } from "./quantity/units.js";

/** The known word within a third of its length in edits, the nearest first; nothing when none is near. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  if (word.length > 60) return undefined;
  const ranked = known
    .map((other) => ({ other, edits: editDistance(word.toLowerCase(), other.toLowerCase()) }))
    .filter(({ other, edits }) => edits <= Math.max(1, Math.floor(other.length / 3)))
    .sort((a, b) => a.edits - b.edits);
  return ranked[0]?.other;
}

/** The known word that was probably meant: the nearest, or the first that begins so. */
export function meant(given: string, known: readonly string[]): string | undefined {
  const begins = (word: string): boolean => word.toLowerCase().startsWith(given.toLowerCase());
  return nearest(given, known) ?? (given.length > 2 ? known.find(begins) : undefined);
}

/** Insertions, deletions, substitutions and swaps of neighbours that turn `a` into `b` (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** What people call units whose symbol is another. */
const everydayNames: Readonly<Partial<Record<Unit, string>>> = {
  m: "metre metres meter meters",
  cm: "centimetres centimeters",
  mm: "millimetres millimeters",
  ft: "foot feet '",
  in: 'inch inches "',
  "m/s": "mps",
  "ft/s": "fps",
  "km/h": "kph kmh",
  s: "sec secs second seconds",
  g: "gram grams",
  gr: "grain grains",
  N: "newton newtons",
  lbf: "lb lbs pound pounds",
  degC: "c °c celsius",
  degF: "f °f fahrenheit",
  m2: "m²",
  ft2: "ft²",
  m3: "m³",
  ft3: "ft³",
  "m3/s": "m³/s cumecs",
  "L/s": "lps litres/s liters/s",
  "ft3/s": "ft³/s cfs cusecs",
};

/** The symbol of a unit by its everyday name, or nothing. */
export function unitNamed(name: string): string | undefined {
  const found = Object.entries(everydayNames).find(([, names]) =>
    names.split(" ").includes(name.toLowerCase()),
  );
  return found?.[0];
}
