/** What a ranking costs, by what it is asked. */

import { type Box, generalBox } from "@plumbdrift/core";
import type { Counted } from "../cost.js";
import type { Decoded } from "../quantity/wire.js";
import type { AskedSetups } from "./ranking.js";

type Sizes = { readonly [K in keyof Box]: number };

function sizesOf({ box = generalBox }: Decoded<AskedSetups>): Sizes {
  const { dries, nymphs, tippets, dropperLengths } = box;
  return {
    dries: dries.length,
    nymphs: nymphs.length,
    tippets: tippets.length,
    dropperLengths: dropperLengths.length,
  };
}

/** A rig in hand is compared with what one change makes of it: a box with one piece free, for each piece. */
export const rankingTerms: readonly Counted<AskedSetups>[] = [
  {
    counts: "candidates: dries times nymphs times tippets times dropper lengths",
    each: 6,
    of: (body) => Object.values(sizesOf(body)).reduce((product, size) => product * size, 1),
  },
  {
    counts: "curves: nymphs times tippets times dropper lengths, and for a rig in hand their sum and one",
    each: 400,
    of: (body) => {
      const { nymphs, tippets, dropperLengths } = sizesOf(body);
      const around = body.inHand === undefined ? 0 : nymphs + tippets + dropperLengths + 1;
      return nymphs * tippets * dropperLengths + around;
    },
  },
  {
    counts: "coarse drifts: nymphs times dropper lengths, and for a rig in hand their sum and two",
    each: 700,
    of: (body) => {
      const { nymphs, dropperLengths } = sizesOf(body);
      return nymphs * dropperLengths + (body.inHand === undefined ? 0 : nymphs + dropperLengths + 2);
    },
  },
  {
    counts: "drifts in full: five for each setup to return, and two for a rig in hand",
    each: 2500,
    of: ({ top = 5, inHand }) => 5 * top + (inHand === undefined ? 0 : 2),
  },
];
