/** Is the shortcut honest? The top five of `rankSetups` against judging every candidate in full, on 100 seeded waters. */

import {
  type Box,
  fishWindow,
  generalBox,
  inOrder,
  type Judgement,
  judge,
  metres,
  metresPerSecond,
  rankSetups,
  type Stop,
  waterColumn,
} from "../src/index.js";
import { seeded } from "./seeded.js";

const { dries, nymphs, tippets, dropperLengths } = generalBox;

/** 5 dries, 5 nymphs, 2 tippets and 4 droppers of the general box: 200 candidates. */
const box: Box = {
  dries: [0, 2, 5, 7, 10].map((i) => dries[i]!),
  nymphs: [1, 3, 5, 8, 10].map((i) => nymphs[i]!),
  tippets: [1, 3].map((i) => tippets[i]!),
  dropperLengths: [0, 1, 2, 4].map((i) => dropperLengths[i]!),
};

export interface Agreement {
  readonly waters: number;
  /** Waters on which each of the five places is as good as the exhaustive one, or within 1 % of its effective seconds. */
  readonly agree: number;
  /** The greatest shortfall of any place, as a share of the exhaustive effective seconds. */
  readonly worst: number;
}

export function exhaustiveAgreement(waters: number): Agreement {
  let agree = 0;
  let worst = 0;
  for (let water = 0; water < waters; water++) {
    const shortfall = shortfallAt(stopOf(water));
    if (shortfall <= 0.01) agree++;
    worst = Math.max(worst, shortfall);
  }
  return { waters, agree, worst };
}

function stopOf(water: number): Stop {
  const random = seeded(1000 + water);
  const bed = (["pebble", "cobble", "boulder"] as const)[Math.floor(random(0, 3))]!;
  const depth = metres(random(0.4, 1.6));
  return { box, column: waterColumn({ depth, surfaceSpeed: metresPerSecond(random(0.2, 1.6)), bed }) };
}

function shortfallAt(stop: Stop): number {
  const full = everySetup(stop).slice(0, 5);
  const quick = rankSetups(stop).setups;
  return Math.max(
    0,
    ...full.map((best, i) => 1 - (quick[i]?.effectiveSeconds ?? 0) / Math.max(best.effectiveSeconds, 1e-9)),
  );
}

/** Every candidate within the hard limits judged in full, the best of each pair of flies, in order. */
function everySetup(stop: Stop): readonly Judgement[] {
  const needs = { stop, window: fishWindow(stop.column), runLength: 6, excessScale: 0.3 };
  const best = new Map<string, Judgement>();
  for (const dropper of box.dropperLengths.filter((length) => length < stop.column.depth)) {
    for (const dry of box.dries) {
      for (const nymph of box.nymphs) {
        for (const tippet of box.tippets) {
          const judged = judge(needs, { dry, nymph, tippet, dropper });
          const pair = `${dry.name} ${nymph.name}`;
          const other = best.get(pair)?.effectiveSeconds ?? 0;
          if (judged.floatMargin >= 1.5 && judged.effectiveSeconds > other) best.set(pair, judged);
        }
      }
    }
  }
  return inOrder([...best.values()], "rippled");
}
