/** What a table of tackle says over HTTP. */

import { z } from "@hono/zod-openapi";
import type * as core from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { plain, strict, tag, type Wire } from "../quantity/wire.js";

interface Spread {
  /** Which fields of the rows. */
  readonly of: string;
  /** Relative half-width: 0.2 is ±20 %. */
  readonly share: number;
}

interface HookRow extends core.Hook {
  readonly size: number;
  readonly mass: Readonly<Record<core.HookWire, core.Kilograms>>;
}

interface BeadRow extends Required<core.Bead> {
  readonly density: core.KilogramsPerCubicMetre;
  readonly lostShare: number;
  readonly mass: core.Kilograms;
}

interface TippetRow extends Omit<core.Tippet, "name"> {
  readonly x: number;
  readonly density: core.KilogramsPerCubicMetre;
  readonly breakingForce: core.Newtons;
}

interface DryRow extends Omit<core.DryProportions, "dressing"> {
  readonly style: core.DryStyle;
  readonly dressing: core.KilogramsPerCubicMetre;
}

interface Table<Name extends string, Row> {
  readonly table: Name;
  readonly basis: string;
  readonly spread: readonly Spread[];
  readonly rows: readonly Row[];
}

export type Tackle =
  | Table<"hooks", HookRow>
  | Table<"beads", BeadRow>
  | Table<"tippets", TippetRow>
  | Table<"dries", DryRow>;

const fields = {
  basis: z.string().openapi({ description: "Where the values come from." }),
  spread: z
    .array(
      strict<Spread>({
        of: z.string().openapi({ description: "Fields of the rows." }),
        share: z.number().min(0).max(1).openapi({ description: "Relative half-width: 0.2 is ±20 %." }),
      }).openapi("Spread", { description: "How far the values of a table may be off." }),
    )
    .openapi({ description: "How far the values may be off." }),
};
const inMillimetres = (description: string) => quantity("length", description, "mm");

const HookRowSchema = strict<Wire<HookRow>>({
  size: plain("Even, from 6 to 20."),
  shank: inMillimetres("Straight part, from behind the eye to the bend."),
  gape: inMillimetres("From the shank to the point."),
  wire: strict<Wire<HookRow["wire"]>>({
    fine: inMillimetres("Of a dry hook."),
    strong: inMillimetres("Of a nymph hook."),
  }).openapi("HookWire", { description: "Diameters of the wire." }),
  mass: strict<Wire<HookRow["mass"]>>({
    fine: quantity("mass", "With fine wire."),
    strong: quantity("mass", "With strong wire."),
  }).openapi("HookMass", {
    description: "Of the bare hook.",
  }),
}).openapi("HookRow", { description: "A standard hook of a size." });

const BeadRowSchema = strict<Wire<BeadRow>>({
  diameter: inMillimetres("As beads are sold."),
  material: z.enum(["tungsten", "brass", "glass"]).openapi({ description: "What it is made of." }),
  cut: z.enum(["slotted", "drilled"]).openapi({ description: "As is usual for the material." }),
  density: quantity("density", "Of the material."),
  lostShare: plain("Share of its sphere that hole and slot have taken."),
  mass: quantity("mass", "Of the bead."),
}).openapi("BeadRow", { description: "A bead of a diameter and a material." });

const TippetRowSchema = strict<Wire<TippetRow>>({
  x: plain("X rating."),
  material: z.enum(["nylon", "fluorocarbon"]).openapi({ description: "What it is made of." }),
  diameter: inMillimetres("0.011 in less X thousandths."),
  density: quantity("density", "Of the material."),
  breakingForce: quantity("force", "Without a knot.", "N"),
}).openapi("TippetRow", { description: "A tippet of an X rating and a material." });

const DryRowSchema = strict<Wire<DryRow>>({
  style: z
    .enum(["foam", "yarn", "hair", "hackle", "low-profile"])
    .openapi({ description: "What floats it." }),
  length: plain("What the water touches, in shanks of the hook."),
  width: plain("In gapes of the hook."),
  height: plain("In gapes of the hook."),
  buoyantShare: plain("Share of the filled volume that keeps water out."),
  shareSpread: plain("Relative half-width of that share."),
  dressing: quantity("density", "Foam, fibre and thread in the filled volume."),
}).openapi("DryRow", { description: "A style of dry fly in proportions of its hook." });

export const TackleSchema: z.ZodType<Wire<Tackle>> = z
  .discriminatedUnion("table", [
    strict<Wire<Table<"hooks", HookRow>>>({
      table: tag("hooks"),
      ...fields,
      rows: z.array(HookRowSchema).openapi({ description: "Line by line." }),
    }).openapi("Hooks", { description: "Hooks by size." }),
    strict<Wire<Table<"beads", BeadRow>>>({
      table: tag("beads"),
      ...fields,
      rows: z.array(BeadRowSchema).openapi({ description: "Line by line." }),
    }).openapi("Beads", { description: "Beads by diameter and material." }),
    strict<Wire<Table<"tippets", TippetRow>>>({
      table: tag("tippets"),
      ...fields,
      rows: z.array(TippetRowSchema).openapi({ description: "Line by line." }),
    }).openapi("Tippets", { description: "Tippets by X rating and material." }),
    strict<Wire<Table<"dries", DryRow>>>({
      table: tag("dries"),
      ...fields,
      rows: z.array(DryRowSchema).openapi({ description: "Line by line." }),
    }).openapi("Dries", { description: "Styles of dry fly." }),
  ])
  .openapi("TackleTable", { description: "A table that tackle is built from." });
