/** A ranked setup as an answer says it. */

import { z } from "@hono/zod-openapi";
import {
  type Caution,
  type Change,
  describeTippet,
  type Newtons,
  type Pieces,
  type Setup,
  tippetStrength,
  type Why,
} from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import { fromSi, type Units, unitIn } from "../quantity/units.js";
import { plain, type Strict, strict, type Wire } from "../quantity/wire.js";
import { type SaidSettling, SettlingSchema, saidSettling } from "./drift.js";
import { HoldTargetSchema } from "./held.js";
import { type SaidSettled, SettledSchema, saidSettled } from "./settled.js";
import { PiecesSchema, type WirePieces } from "./stop.js";

interface SaidChange extends Omit<Change, "to"> {
  readonly from: string;
  readonly to: string;
}

interface WireChange extends Wire<SaidChange> {
  readonly tied: WirePieces;
}

type Judged = "place" | "placeIsExact" | "secondsInWindow" | "effectiveSeconds";

interface SaidSetup extends Pick<Setup, Judged | "hold" | "landAbove" | "cautions" | "why"> {
  readonly floatMargin: number | null;
  readonly settled: SaidSettled;
  readonly settling: SaidSettling;
  readonly dropperStrength: Newtons;
}

export interface WireSetup extends Wire<SaidSetup> {
  readonly tied: WirePieces;
  readonly next?: WireChange | undefined;
}

const CautionSchema = strict<Caution>({
  code: z
    .enum([
      "two-flies-rule-unknown",
      "leader-strength-unknown",
      "margin-below-least",
      "margin-thin",
      "leans-far",
      "towed-fast",
      "splash-on-glassy-water",
      "does-not-settle",
      "touches-bed",
      "drowns",
      "close-to-bed",
      "longer-than-deep",
      "outside-window",
      "dropper-may-outlast-leader",
    ])
    .openapi({ description: "Stable: to translate from." }),
  text: z.string().openapi({ description: "In words." }),
}).openapi("Caution", { description: "Something to watch, with a stable code." });

const ForceNameSchema = z
  .enum(["sinker-weight", "sinker-drag", "line-drag", "float-drag"])
  .openapi("ForceName", { description: "A force on the rig." });

const ForceSchema = strict<Wire<Why["forces"][number]>>({
  name: ForceNameSchema,
  size: quantity("force", "Its size, whatever its direction."),
}).openapi("ForceSize", { description: "The size of one force." });

const WhySchema = strict<Wire<Why>>({
  dominant: ForceNameSchema,
  forces: z.array(ForceSchema).openapi({ description: "On the settled rig, the greatest first." }),
  text: z.string().openapi({ description: "In words." }),
}).openapi("Why", { description: "The force that dominates, and the others." });

const ChangeSchema = strict<WireChange>({
  part: z.enum(["nymph", "dry", "tippet", "dropper"]).openapi({ description: "What changes." }),
  from: z.string().openapi({ description: "What it is now, in words." }),
  to: z.string().openapi({ description: "What it would be, in words." }),
  tied: PiecesSchema.openapi({ description: "The setup with the change made." }),
  gain: quantity("time", "Effective seconds gained."),
  cost: z.string().openapi({ description: "What the change costs, in words." }),
}).openapi("Change", { description: "The single change that would gain most, and what it costs." });

export const SetupSchema: Strict<WireSetup> = strict<WireSetup>({
  place: z.number().int().min(1).max(1e9).openapi({ description: "1 is the best." }),
  placeIsExact: z.boolean().openapi({ description: "False for a rig in hand that is placed by estimate." }),
  tied: PiecesSchema.openapi({ description: "What to tie on. It may be sent back as inHand." }),
  dropperStrength: quantity(
    "force",
    "What the dropper bears without a knot: as printed, else by material and diameter, ±35 %.",
    "N",
  ),
  settled: SettledSchema,
  settling: SettlingSchema,
  secondsInWindow: quantity("time", "In one drift over the run."),
  effectiveSeconds: quantity("time", "The same, weighted by how little the sinker is towed."),
  floatMargin: plain("What the float can carry over what it carries.").optional(),
  hold: HoldTargetSchema,
  landAbove: quantity(
    "length",
    "How far upstream of the fish to land the dry; absent when it never settles.",
  ).optional(),
  cautions: z.array(CautionSchema).openapi({ description: "What to watch." }),
  why: WhySchema,
  next: ChangeSchema.optional(),
}).openapi("Setup", { description: "A setup, judged." });

export function setupOf(setup: Setup, units: Units): WireSetup {
  const { next, tippet } = setup;
  const settled = saidSettled(setup.settled);
  const said = {
    ...setup,
    tied: tiedOf(setup),
    dropperStrength: tippetStrength(tippet),
    settled,
    settling: saidSettling(setup.settling),
    floatMargin: settled.floatMargin,
    next: next && {
      ...next,
      from: labelOf(next.part, setup, units),
      to: labelOf(next.part, next.to, units),
      tied: tiedOf(next.to),
    },
  };
  return encode(SetupSchema, said, units);
}

/** The pieces, each with a name. */
export function tiedOf({ dry, nymph, tippet, dropper }: Pieces): Pieces {
  return { dry, nymph, tippet: { ...tippet, name: describeTippet(tippet) }, dropper };
}

function labelOf(part: keyof Pieces, pieces: Pieces, units: Units): string {
  if (part !== "dropper") return tiedOf(pieces)[part].name ?? part;
  const unit = unitIn(units, "cm");
  return `${Math.round(fromSi("length", pieces.dropper, unit))} ${unit}`;
}
