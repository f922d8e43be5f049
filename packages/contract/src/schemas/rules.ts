/** Rules as somebody states them, what is known to hold them against, and what they answer. */

import { z } from "@hono/zod-openapi";
import { type Clause, type RuleAnswer, type RuleFacts, type Rules, ruleTopics } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Strict, strict, tag, type Wire } from "../quantity/wire.js";
import { printable } from "./tackle.js";

/** The temperature comes with the water. */
export type WireFacts = Wire<Omit<RuleFacts, "temperature">>;
export type WireRules = Wire<Rules>;
export type WireRuleAnswer = Wire<RuleAnswer>;

const text = (description: string) =>
  z.string().regex(printable).openapi({ description, pattern: printable.source });
const most = (of: string) =>
  z
    .number()
    .int()
    .min(0)
    .max(100)
    .openapi({ description: `At most so many ${of}.` });

const named = {
  id: text("Names the clause in the answer."),
  text: text("As its author words it.").optional(),
};

const WindowOfTimeSchema = strict<NonNullable<WireRules["inForce"]>>({
  from: text("First day or hour, inside."),
  to: text("Last day, inside, or hour, outside; before `from` it runs over new year or midnight."),
}).openapi("TimeWindow", {
  description: "Days MM-DD of each year, hours HH:MM of each day, or two dates YYYY-MM-DD.",
});

const during = z
  .enum(["open", "closed"])
  .openapi({ description: "Whether the windows are when it is open, or when it is closed." });
const windows = z.array(WindowOfTimeSchema).min(1).max(50).openapi({ description: "One or more." });

const ClauseSchema: z.ZodType<Wire<Clause>> = z
  .discriminatedUnion("topic", [
    z
      .strictObject({ topic: tag("flies"), ...named, most: most("flies on the line") })
      .openapi("FliesClause", {
        description: "How many flies.",
      }),
    z.strictObject({ topic: tag("hooks"), ...named, most: most("hook points") }).openapi("HooksClause", {
      description: "How many hook points.",
    }),
    z
      .strictObject({
        topic: tag("barbless"),
        ...named,
        required: z.boolean().openapi({ description: "Whether barbs are forbidden." }),
      })
      .openapi("BarblessClause", { description: "Barbs." }),
    z
      .strictObject({
        topic: tag("added-weight"),
        ...named,
        most: quantity("mass", "Of beads, wire and shot together; 0 forbids them.", 0, 1000, "g"),
      })
      .openapi("WeightClause", { description: "Weight added to the flies or the line." }),
    z
      .strictObject({
        topic: tag("lead"),
        ...named,
        allowed: z.boolean().openapi({ description: "Whether lead may be on the line." }),
      })
      .openapi("LeadClause", { description: "Lead." }),
    z
      .strictObject({
        topic: tag("bait"),
        ...named,
        allowed: z.boolean().openapi({ description: "Whether bait may be used." }),
      })
      .openapi("BaitClause", { description: "Bait." }),
    z.strictObject({ topic: tag("season"), ...named, during, windows }).openapi("SeasonClause", {
      description: "Days MM-DD of each year.",
    }),
    z.strictObject({ topic: tag("hours"), ...named, during, windows }).openapi("HoursClause", {
      description: "Hours HH:MM of each day, on the clock at the water.",
    }),
    z
      .strictObject({
        topic: tag("temperature"),
        ...named,
        closedFrom: quantity(
          "temperature",
          "Closed at this temperature of the water and above.",
          -2,
          45,
          "degC",
        ),
      })
      .openapi("TemperatureClause", { description: "Closed in warm water." }),
  ])
  .openapi("Clause", { description: "One thing that the rules say." });

export const RulesSchema: Strict<WireRules> = strict<WireRules>({
  version: z
    .number()
    .int()
    .min(1)
    .max(1)
    .openapi({ description: "Of this form of rules: 1. Another version is refused by name." }),
  place: text("Where they apply."),
  statedBy: text("Who states them."),
  inForce: WindowOfTimeSchema.optional().openapi({
    description: "First and last date that they apply; outside everything is unknown.",
  }),
  clauses: z.array(ClauseSchema).max(100).openapi({ description: "What they say, in any order." }),
}).openapi("Rules", {
  description:
    "What applies at a place, as the caller states it. None are shipped; what no clause says stays unknown.",
});

const Weight = strict<NonNullable<WireFacts["addedWeight"]>>({
  least: quantity("mass", "At least so much.", 0, 1000, "g"),
  most: quantity("mass", "At most so much.", 0, 1000, "g"),
}).openapi("AddedWeight", { description: "Beads, wire and shot together, between two masses." });

export const FactsSchema: Strict<WireFacts> = strict<WireFacts>({
  flies: z.number().int().min(0).max(100).optional().openapi({ description: "Flies; 2 unless given." }),
  hooks: z.number().int().min(0).max(100).optional().openapi({ description: "Hook points; 2 unless given." }),
  barbless: z.boolean().optional().openapi({ description: "Whether every hook is; unknown unless given." }),
  addedWeight: Weight.optional().openapi({ description: "By the tables of tackle unless given." }),
  lead: z.boolean().optional().openapi({
    description:
      "Whether there is any; read off the tackle unless given, unknown for brass and weighed flies.",
  }),
  bait: z.boolean().optional().openapi({ description: "Whether it is used; unknown unless given." }),
  date: text("Day YYYY-MM-DD at the water.").optional(),
  time: text("Time HH:MM on the clock there.").optional(),
}).openapi("RuleFacts", { description: "What rules ask about and the rig does not tell." });

const facts = [
  "flies",
  "hooks",
  "barbless",
  "addedWeight",
  "lead",
  "bait",
  "date",
  "time",
  "temperature",
] as const satisfies readonly (keyof RuleFacts)[];

export const RuleAnswerSchema: Strict<WireRuleAnswer> = strict<WireRuleAnswer>({
  topic: z.enum(ruleTopics).openapi({ description: "What it speaks of." }),
  answer: z
    .enum(["allowed", "not-allowed", "unknown"])
    .openapi({ description: "By the clauses that were stated, and no further." }),
  because: z
    .enum(["clause", "no-rules", "no-clause", "fact-missing", "not-in-force"])
    .openapi({ description: "Why: a clause decided, or what is missing." }),
  clause: strict<NonNullable<WireRuleAnswer["clause"]>>({
    id: z.string().openapi({ description: "As the rules name it." }),
    text: z.string().optional().openapi({ description: "As its author words it." }),
  })
    .openapi("ClauseNamed", { description: "The clause that decided, or that asks for the missing fact." })
    .optional(),
  missing: z.enum(facts).optional().openapi({ description: "The fact that a clause asks for." }),
}).openapi("RuleAnswer", { description: "What the stated rules say of one topic." });
