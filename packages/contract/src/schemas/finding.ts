/** A finding as an answer says it: its numbers in the system asked for, and words of the one catalogue. */

import { z } from "@hono/zod-openapi";
import {
  type Effect,
  type Finding,
  findingCodes,
  findingMessage,
  type InputName,
  inputWords,
  inUnit,
  type Measure,
  type Parameter,
  type Remedy,
  remedyMessage,
} from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import { type Dimension, fromSi, type Units, unitIn } from "../quantity/units.js";
import { count, plain, type Strict, strict, tag, type Wire } from "../quantity/wire.js";
import { tiedOf } from "./setup.js";
import { PiecesSchema, type WirePieces } from "./stop.js";

type Of<K extends Remedy["kind"]> = Extract<Remedy, { readonly kind: K }>;
interface Texted {
  readonly text: string;
}
interface SaidRetie extends Omit<Wire<Of<"retie">>, "from" | "to" | "pieces">, Texted {
  readonly from: string;
  readonly to: string;
  readonly tied: WirePieces;
}
interface SaidFish extends Omit<Wire<Of<"fish">>, "stop">, Texted {}
interface SaidSupply extends Wire<Of<"supply">>, Texted {}
interface SaidNone extends Wire<Of<"none">>, Texted {}

type WireRemedy = SaidRetie | SaidFish | SaidSupply | SaidNone;

export interface WireFinding extends Omit<Wire<Finding>, "remedy"> {
  readonly message: string;
  readonly remedy: WireRemedy;
}

/** What each kind of measure is, and the SI unit it is best said in. */
const kinds: Readonly<
  Record<Exclude<Measure["kind"], "number">, readonly [dimension: Dimension, unit: string]>
> = {
  length: ["length", "m"],
  dropper: ["length", "cm"],
  size: ["length", "mm"],
  speed: ["speed", "m/s"],
  time: ["time", "s"],
  force: ["force", "mN"],
  strength: ["force", "N"],
  mass: ["mass", "g"],
  angle: ["angle", "deg"],
  temperature: ["temperature", "degC"],
};
const symbols: Readonly<Record<string, string>> = { degC: "°C", degF: "°F", deg: "°" };

const name = z.string().openapi({ description: "What it is; a message has it as {name}." });

const MeasureSchema: z.ZodType<Wire<Measure>> = z
  .discriminatedUnion("kind", [
    z
      .strictObject({
        name,
        kind: tag("length"),
        value: quantity("length", "A depth, a height or a distance.", "m"),
      })
      .openapi("MeasuredLength", { description: "A length." }),
    z
      .strictObject({ name, kind: tag("dropper"), value: quantity("length", "Of a dropper.", "cm") })
      .openapi("MeasuredDropper", { description: "A length of dropper." }),
    z
      .strictObject({ name, kind: tag("size"), value: quantity("length", "Of something small.", "mm") })
      .openapi("MeasuredSize", { description: "A small length." }),
    z
      .strictObject({ name, kind: tag("speed"), value: quantity("speed", "A speed.", "m/s") })
      .openapi("MeasuredSpeed", { description: "A speed." }),
    z
      .strictObject({ name, kind: tag("time"), value: quantity("time", "A time.", "s") })
      .openapi("MeasuredTime", { description: "A time." }),
    z
      .strictObject({ name, kind: tag("force"), value: quantity("force", "A force on the rig.", "mN") })
      .openapi("MeasuredForce", { description: "A force on the rig." }),
    z
      .strictObject({ name, kind: tag("strength"), value: quantity("force", "What a line bears.", "N") })
      .openapi("MeasuredStrength", { description: "A breaking force." }),
    z
      .strictObject({ name, kind: tag("mass"), value: quantity("mass", "A mass.", "g") })
      .openapi("MeasuredMass", { description: "A mass." }),
    z
      .strictObject({ name, kind: tag("angle"), value: quantity("angle", "An angle.", "deg") })
      .openapi("MeasuredAngle", { description: "An angle." }),
    z
      .strictObject({
        name,
        kind: tag("temperature"),
        value: quantity("temperature", "A temperature.", "degC"),
      })
      .openapi("MeasuredTemperature", { description: "A temperature." }),
    z
      .strictObject({ name, kind: tag("number"), value: plain("Without a dimension.") })
      .openapi("MeasuredNumber", { description: "A number without dimension." }),
  ])
  .openapi("Measure", { description: "A named number with its dimension." });

const severity = z.enum(["stop", "fix", "watch", "note"]);

const EffectSchema = strict<Wire<Effect>>({
  before: MeasureSchema.optional().openapi({ description: "The number that the finding turns on." }),
  after: MeasureSchema.optional().openapi({ description: "The same, once it is done." }),
  left: severity
    .optional()
    .openapi({ description: "The severity that stays; absent where the finding is gone." }),
}).openapi("RemedyEffect", { description: "What a remedy does, recomputed." });

const text = z.string().openapi({ description: "In English, in the system of units asked for." });

const RemedySchema: z.ZodType<WireRemedy> = z
  .discriminatedUnion("kind", [
    strict<SaidRetie>({
      kind: tag("retie"),
      part: z.enum(["dry", "nymph", "tippet", "dropper"]).openapi({ description: "The piece that changes." }),
      from: z.string().openapi({ description: "What it is." }),
      to: z.string().openapi({ description: "What it becomes." }),
      tied: PiecesSchema.openapi({ description: "The rig once it is done; it may be sent back as inHand." }),
      effect: EffectSchema,
      text,
    }).openapi("RemedyRetie", { description: "Tie one piece anew." }),
    strict<SaidFish>({
      kind: tag("fish"),
      act: z
        .enum(["hold", "cast", "soften", "run", "slack", "obey", "stand", "wait"])
        .openapi({ description: "What to do otherwise." }),
      to: MeasureSchema.optional().openapi({
        description: "How much, where the nymph lands, or what to wait for.",
      }),
      effect: EffectSchema,
      text,
    }).openapi("RemedyFish", { description: "Fish it otherwise, with the same rig." }),
    strict<SaidSupply>({
      kind: tag("supply"),
      input: z
        .enum(Object.keys(inputWords) as InputName[])
        .openapi({ description: "What the request can say and does not." }),
      text,
    }).openapi("RemedySupply", { description: "Say something more." }),
    strict<SaidNone>({ kind: tag("none"), tried: count("Changes that were tried."), text }).openapi(
      "RemedyNone",
      {
        description: "No single change that was tried answers it without another fault.",
      },
    ),
  ])
  .openapi("Remedy", { description: "The smallest change found that answers a finding, or lowers it." });

export const FindingSchema: Strict<WireFinding> = strict<WireFinding>({
  code: z.enum(findingCodes).openapi({ description: "Stable; docs/findings.md has a section for each." }),
  severity: severity.openapi({
    description:
      "How grave it is. stop: do not fish it so. fix: change it first. watch: it fishes, with a weakness. note: something to know or to say.",
  }),
  basis: z
    .enum(["published", "practice", "assumption", "stated"])
    .openapi({ description: "What the limit rests on; `stated` is a rule of the caller." }),
  message: text,
  numbers: z.array(MeasureSchema).openapi({ description: "What it rests on; it turns on the first." }),
  parameters: z
    .array(
      strict<Parameter>({ name, value: z.string().openapi({ description: "The word." }) }).openapi(
        "FindingWord",
        {
          description: "A word of the message that is no number.",
        },
      ),
    )
    .openapi({ description: "Words to localise the message with." }),
  remedy: RemedySchema,
}).openapi("Finding", { description: "Something about the rig in hand, and what to do." });

/** A finding in a system of units. */
export function findingOf(finding: Finding, units: Units): WireFinding {
  const say = (measure: Measure): string => sayIn(measure, units);
  const { remedy } = finding;
  const said = {
    ...finding,
    message: findingMessage(finding, say),
    remedy: { ...saidRemedy(remedy, say), text: remedyMessage(remedy, say) },
  };
  return encode(FindingSchema, said, units);
}

function saidRemedy(remedy: Remedy, say: (measure: Measure) => string) {
  if (remedy.kind !== "retie") return remedy;
  const label = (of: string | Measure): string => (typeof of === "string" ? of : say(of));
  return { ...remedy, from: label(remedy.from), to: label(remedy.to), tied: tiedOf(remedy.pieces) };
}

function sayIn({ kind, value }: Measure, units: Units): string {
  if (kind === "number") return inUnit(value, "");
  const [dimension, si] = kinds[kind];
  const unit = unitIn(units, si);
  return inUnit(fromSi(dimension, value, unit), symbols[unit] ?? unit);
}
