/** The fish, the box and the rig in hand, as a request says them. */

import { z } from "@hono/zod-openapi";
import type { Box, Capture, LieObservation, Pieces } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Said, type Strict, strict, type Wire } from "../quantity/wire.js";
import {
  DrySchema,
  dryOf,
  NymphSchema,
  nymphOf,
  TippetSchema,
  tippetOf,
  type WireDry,
  type WireNymph,
  type WireTippet,
} from "./tackle.js";

export interface WireBox {
  readonly dries: readonly WireDry[];
  readonly nymphs: readonly WireNymph[];
  readonly tippets: readonly WireTippet[];
  readonly dropperLengths: readonly Said<"length">[];
}

/** The four pieces of a rig: in hand on the way in, ranked on the way out. */
export interface WirePieces {
  readonly dry: WireDry;
  readonly nymph: WireNymph;
  readonly tippet: WireTippet;
  readonly dropper: Said<"length">;
}

const CaptureSchema = strict<Wire<Capture>>({
  preyLength: quantity("length", "Length of the prey.", 0.1, 50, "mm"),
  fishLength: quantity("length", "Length of the fish.", 2, 200, "cm"),
  greatestSpeed: quantity("speed", "Greatest speed the fish keeps up.", 0.05, 10, "m/s"),
}).openapi("Capture", { description: "The published geometry of capture, in place of reach." });

export const FishSchema: Strict<Wire<LieObservation>> = strict<Wire<LieObservation>>({
  holdingHeight: quantity(
    "length",
    "Height above the bed where it holds; 12 in, or a third of the depth where shallower, unless given.",
    0,
    10,
    "m",
  ).optional(),
  reach: quantity("length", "How far it lifts; 12 in unless given.", 0.01, 5, "m").optional(),
  capture: CaptureSchema.optional(),
}).openapi("Fish", { description: "Where the fish holds and how far it moves." });

export const BoxSchema: Strict<WireBox> = strict<WireBox>({
  dries: z.array(DrySchema).min(1).max(500).openapi({ description: "1 to 500 dry flies." }),
  nymphs: z.array(NymphSchema).min(1).max(500).openapi({ description: "1 to 500 nymphs." }),
  tippets: z.array(TippetSchema).min(1).max(50).openapi({ description: "1 to 50 tippets for the dropper." }),
  dropperLengths: z
    .array(quantity("length", "Length of a dropper.", 2, 500, "cm"))
    .min(1)
    .max(50)
    .openapi({ description: "1 to 50 lengths of tippet from dry to nymph." }),
}).openapi("Box", {
  description:
    "What there is to choose from. Every combination is a candidate; /v1/limits says what they cost.",
});

export const PiecesSchema: Strict<WirePieces> = strict<WirePieces>({
  dry: DrySchema,
  nymph: NymphSchema,
  tippet: TippetSchema,
  dropper: quantity("length", "Length of tippet from dry to nymph.", 2, 500, "cm"),
}).openapi("Pieces", { description: "A dry, a nymph, and a dropper of tippet between them." });

export function boxOf(given: Decoded<WireBox>): Box {
  const { dries, nymphs, tippets, dropperLengths } = given;
  return {
    dries: dries.map((dry, i) => dryOf(dry, `/box/dries/${i}`)),
    nymphs: nymphs.map((nymph, i) => nymphOf(nymph, `/box/nymphs/${i}`)),
    tippets: tippets.map((tippet, i) => tippetOf(tippet, `/box/tippets/${i}`)),
    dropperLengths,
  };
}

export function handOf({ dry, nymph, tippet, dropper }: Decoded<WirePieces>): Pieces {
  return {
    dry: dryOf(dry, "/inHand/dry"),
    nymph: nymphOf(nymph, "/inHand/nymph"),
    tippet: tippetOf(tippet, "/inHand/tippet"),
    dropper,
  };
}
