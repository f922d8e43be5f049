/** A ranked setup as an answer says it. */

import { z } from "@hono/zod-openapi";
import { describeTippet, type Setup } from "@plumbdrift/core";
import type { Say } from "../answer.js";
import { quantitySchemas as q } from "../quantity/schema.js";
import { SettlingSchema, settlingOf } from "./drift.js";
import { HoldTargetSchema, holdTargetOf } from "./held.js";
import { marginOf, SettledSchema, settledOf } from "./settled.js";

const TiedSchema = z
  .strictObject({
    dry: z.string(),
    nymph: z.string(),
    tippet: z.string(),
    dropper: q.length.openapi({ description: "Length of tippet from dry to nymph." }),
  })
  .openapi("Tied", { description: "What to tie on." });

const ForceNameSchema = z
  .enum(["sinker-weight", "sinker-drag", "line-drag", "float-drag"])
  .openapi("ForceName", { description: "A force on the rig." });

const CautionSchema = z
  .strictObject({
    code: z.enum([
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
    ]),
    text: z.string(),
  })
  .openapi("Caution", { description: "Something to watch, with a stable code." });

const WhySchema = z
  .strictObject({
    dominant: ForceNameSchema,
    forces: z
      .array(
        z
          .strictObject({ name: ForceNameSchema, size: q.force })
          .openapi("NamedForce", { description: "A force and its size." }),
      )
      .openapi({ description: "On the settled rig, the greatest first." }),
    text: z.string(),
  })
  .openapi("Why", { description: "The force that dominates, and the others." });

const ChangeSchema = z
  .strictObject({
    part: z.enum(["nymph", "dry", "tippet", "dropper"]),
    from: z.string(),
    to: z.string(),
    gain: q.time.openapi({ description: "Effective seconds gained." }),
    cost: z.string(),
  })
  .openapi("Change", { description: "The single change that would gain most, and what it costs." });

export const SetupSchema = z
  .strictObject({
    place: z.number().int().min(1).max(1e9).openapi({ description: "1 is the best." }),
    placeIsExact: z.boolean().openapi({ description: "False for a rig in hand that is placed by estimate." }),
    tied: TiedSchema,
    settled: SettledSchema,
    settling: SettlingSchema,
    secondsInWindow: q.time.openapi({ description: "In one drift over the run." }),
    effectiveSeconds: q.time.openapi({
      description: "The same, weighted by how little the sinker is towed.",
    }),
    floatMargin: z
      .number()
      .optional()
      .openapi({ description: "What the float can carry over what it carries." }),
    hold: HoldTargetSchema,
    landAbove: q.length
      .openapi({ description: "How far upstream of the fish to land the dry; absent when it never settles." })
      .optional(),
    cautions: z.array(CautionSchema),
    why: WhySchema,
    next: ChangeSchema.optional(),
  })
  .openapi("Setup", { description: "A setup, judged." });

export function setupOf(setup: Setup, say: Say): z.output<typeof SetupSchema> {
  const { why, next } = setup;
  return {
    place: setup.place,
    placeIsExact: setup.placeIsExact,
    tied: {
      dry: setup.dry.name,
      nymph: setup.nymph.name,
      tippet: describeTippet(setup.tippet),
      dropper: say.length(setup.dropper),
    },
    settled: settledOf(setup.settled, say),
    settling: settlingOf(setup.settling, say),
    secondsInWindow: say.time(setup.secondsInWindow),
    effectiveSeconds: say.time(setup.effectiveSeconds),
    ...marginOf(setup.floatMargin),
    hold: holdTargetOf(setup.hold, say),
    ...(setup.landAbove === null ? {} : { landAbove: say.length(setup.landAbove) }),
    cautions: setup.cautions.map(({ code, text }) => ({ code, text })),
    why: {
      dominant: why.dominant,
      forces: why.forces.map(({ name, size }) => ({ name, size: say.force(size) })),
      text: why.text,
    },
    ...(next === null
      ? {}
      : {
          next: { part: next.part, from: next.from, to: next.to, gain: say.time(next.gain), cost: next.cost },
        }),
  };
}
