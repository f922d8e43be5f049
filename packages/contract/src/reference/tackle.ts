/** The tables of common practice that tackle is built from, each value with how far it may be off. */

import * as core from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import type { Wire } from "../quantity/wire.js";
import { type Tackle, TackleSchema } from "./tackle-schema.js";

const practice = "Common practice, no source.";

const tables: { readonly [K in Tackle["table"]]: () => Extract<Tackle, { table: K }> } = {
  hooks: () => ({
    table: "hooks",
    basis: practice,
    spread: [
      { of: "shank, gape", share: core.hookLengthSpread },
      { of: "mass", share: core.hookMassSpread },
    ],
    rows: core.hookSizes.map((size) => {
      const hook = core.hook(size);
      return {
        size,
        ...hook,
        mass: { fine: core.hookMass(hook, "fine"), strong: core.hookMass(hook, "strong") },
      };
    }),
  }),
  beads: () => ({
    table: "beads",
    basis: `${practice} Densities: handbook values, tungsten from memory. Lost shares: an assumption.`,
    spread: [{ of: "mass", share: core.beadMassSpread }],
    rows: core.beadMillimetres.flatMap((size) =>
      (["tungsten", "brass", "glass"] as const).map((material) => {
        const cut = material === "tungsten" ? "slotted" : "drilled";
        const bead = { diameter: core.millimetres(size), material, cut } as const;
        return {
          ...bead,
          density: core.beadDensity[material],
          lostShare: core.lostShare[cut],
          mass: core.beadMass(bead),
        };
      }),
    ),
  }),
  tippets: () => {
    const rows = Array.from({ length: 9 }, (_, x) =>
      (["nylon", "fluorocarbon"] as const).map((material) => {
        const tippet = { material, diameter: core.tippetDiameter(x) };
        return {
          x,
          ...tippet,
          density: core.tippetDensity[material],
          breakingForce: core.tippetStrength(tippet),
        };
      }),
    ).flat();
    const { density = 0, diameter = 0 } = core.buildTippet(rows[0]!, core.metres(1)).spread;
    return {
      table: "tippets",
      basis: `${practice} Densities: handbook values.`,
      spread: [
        { of: "diameter", share: diameter },
        { of: "density", share: density },
        { of: "breakingForce", share: core.tippetStrengthSpread },
      ],
      rows,
    };
  },
  dries: () => ({
    table: "dries",
    basis: `${practice} Buoyant shares and dressings: assumptions.`,
    spread: [
      {
        of: "length, width, height",
        share: core.buildDry({ name: "", size: 12, style: "foam" }).spread.length ?? 0,
      },
    ],
    rows: (Object.keys(core.dryStyles) as core.DryStyle[]).map((style) => {
      const { dressing, ...row } = core.dryStyles[style];
      return { style, ...row, dressing: core.kilogramsPerCubicMetre(dressing) };
    }),
  }),
};

export const tackleTables: readonly string[] = Object.keys(tables);

export function tackleTable(name: string): Wire<Tackle> | undefined {
  const found = Object.entries(tables).find(([key]) => key === name);
  return found && encode(TackleSchema, found[1](), "si");
}
