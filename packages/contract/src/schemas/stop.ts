/** The fish, the box and the rig in hand, as a request says them. */

import { z } from "@hono/zod-openapi";
import type { Box, Dry, Metres, Nymph, Tippet } from "@plumbdrift/core";
import type { Decoded } from "../quantity/decode.js";
import { quantity } from "../quantity/schema.js";
import { withinBudget } from "../refusal.js";
import { DrySchema, dryOf, NymphSchema, nymphOf, TippetSchema, tippetOf } from "./tackle.js";

/** The most setups that one call may rank. */
export const MAX_CANDIDATES = 50_000;

const CaptureSchema = z
  .strictObject({
    preyLength: quantity("length", "Length of the prey.", 0.1, 50, "mm"),
    fishLength: quantity("length", "Length of the fish.", 2, 200, "cm"),
    greatestSpeed: quantity("speed", "Greatest speed the fish keeps up.", 0.05, 10, "m/s"),
  })
  .openapi("Capture", { description: "The published geometry of capture, in place of reach." });

export const FishSchema = z
  .strictObject({
    holdingHeight: quantity(
      "length",
      "Height above the bed where it holds; 12 in, or a third of the depth where shallower, unless given.",
      0,
      10,
      "m",
    ).optional(),
    reach: quantity("length", "How far it lifts; 12 in unless given.", 0.01, 5, "m").optional(),
    capture: CaptureSchema.optional(),
  })
  .openapi("Fish", { description: "Where the fish holds and how far it moves." });

export const BoxSchema = z
  .strictObject({
    dries: z.array(DrySchema).min(1).max(500),
    nymphs: z.array(NymphSchema).min(1).max(500),
    tippets: z.array(TippetSchema).min(1).max(50),
    dropperLengths: z
      .array(quantity("length", "Length of a dropper.", 0.02, 5, "m"))
      .min(1)
      .max(50),
  })
  .openapi("Box", {
    description: `What there is to choose from. Every combination is a candidate; ${MAX_CANDIDATES} at most.`,
  });

export const HandSchema = z
  .strictObject({
    dry: DrySchema,
    nymph: NymphSchema,
    tippet: TippetSchema,
    dropper: quantity("length", "Length of the dropper.", 0.02, 5, "m"),
  })
  .openapi("Hand", { description: "The rig in hand: judged, and placed among the others." });

export function boxOf(given: Decoded<z.output<typeof BoxSchema>>): Box {
  const { dries, nymphs, tippets, dropperLengths } = given;
  const candidates = dries.length * nymphs.length * tippets.length * dropperLengths.length;
  withinBudget("/box", "candidates", candidates, MAX_CANDIDATES);
  return {
    dries: dries.map((dry, i) => dryOf(dry, `/box/dries/${i}`)),
    nymphs: nymphs.map((nymph, i) => nymphOf(nymph, `/box/nymphs/${i}`)),
    tippets: tippets.map((tippet, i) => tippetOf(tippet, `/box/tippets/${i}`)),
    dropperLengths,
  };
}

export function handOf(hand: Decoded<z.output<typeof HandSchema>>): {
  readonly dry: Dry;
  readonly nymph: Nymph;
  readonly tippet: Tippet;
  readonly dropper: Metres;
} {
  return {
    dry: dryOf(hand.dry, "/inHand/dry"),
    nymph: nymphOf(hand.nymph, "/inHand/nymph"),
    tippet: tippetOf(hand.tippet, "/inHand/tippet"),
    dropper: hand.dropper,
  };
}
