/** A rig as a request says it: every part either measured, or described as tackle. */

import { z } from "@hono/zod-openapi";
import {
  type Built,
  buildDry,
  buildNymph,
  buildShot,
  buildTippet,
  type Float,
  type Grounds,
  joinGrounds,
  type Line,
  type Rig,
  rig,
  type Sinker,
} from "@plumbdrift/core";
import type { Counted } from "../cost.js";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Said, type Strict, strict, tag } from "../quantity/wire.js";
import { at } from "../refusal.js";
import {
  FloatBodySchema,
  floatOf,
  LineBodySchema,
  lineOf,
  SinkerBodySchema,
  sinkerOf,
  type WireFloatBody,
  type WireLineBody,
  type WireSinkerBody,
} from "./bodies.js";
import {
  DrySchema,
  dryOf,
  NymphSchema,
  nymphOf,
  ShotSchema,
  TippetSchema,
  tippetOf,
  type WireDry,
  type WireNymph,
  type WireShot,
  type WireTippet,
} from "./tackle.js";

interface WireDryFloat extends WireDry {
  readonly kind: "dry";
}

interface WireNymphSinker extends WireNymph {
  readonly kind: "nymph";
}

interface WireTippetLine extends WireTippet {
  readonly kind: "tippet";
  readonly length: Said<"length">;
}

type WireFloat = WireDryFloat | WireFloatBody;
type WireLine = WireTippetLine | WireLineBody;
type WireSinker = WireNymphSinker | WireShot | WireSinkerBody;

interface WireSection {
  readonly line: WireLine;
  readonly sinker: WireSinker;
}

export interface WireRig {
  readonly float: WireFloat;
  readonly sections: readonly WireSection[];
}

const DryFloat = strict<WireDryFloat>({ kind: tag("dry"), ...DrySchema.shape }).openapi("DryFloat", {
  description: "A dry fly by name.",
});
const NymphSinker = strict<WireNymphSinker>({ kind: tag("nymph"), ...NymphSchema.shape }).openapi(
  "NymphSinker",
  { description: "A nymph by name." },
);
const TippetLine = strict<WireTippetLine>({
  kind: tag("tippet"),
  length: quantity("length", "Length.", 0.01, 10, "m"),
  ...TippetSchema.shape,
}).openapi("TippetLine", { description: "A length of tippet by name." });

const FloatSchema = z
  .discriminatedUnion("kind", [DryFloat, FloatBodySchema])
  .openapi("Float", { description: "What floats, by name or measured." });
const LineSchema = z
  .discriminatedUnion("kind", [TippetLine, LineBodySchema])
  .openapi("Line", { description: "What the sinker hangs on, by name or measured." });
const SinkerSchema = z
  .discriminatedUnion("kind", [NymphSinker, ShotSchema, SinkerBodySchema])
  .openapi("Sinker", { description: "What hangs, by name or measured." });

export const RigSchema: Strict<WireRig> = strict<WireRig>({
  float: FloatSchema,
  sections: z
    .array(
      strict<WireSection>({ line: LineSchema, sinker: SinkerSchema }).openapi("Section", {
        description: "A line and the sinker at its lower end.",
      }),
    )
    .min(1)
    .max(10)
    .openapi({ description: "From the float down: a line and the sinker at its lower end." }),
}).openapi("Rig", { description: "A float, and below it one to ten sections." });

/** What settling a rig costs. */
export const settledSections: Counted<{ readonly rig: WireRig }> = {
  counts: "sections of the rig, settled",
  each: 500,
  of: ({ rig }) => rig.sections.length,
};

/** A rig, and what its tackle was assumed to be. */
export interface BuiltRig {
  readonly rig: Rig;
  readonly grounds: Grounds;
}

export function rigOf(given: Decoded<WireRig>): BuiltRig {
  const float = at("/rig/float", () => builtFloat(given.float));
  const sections = given.sections.map(({ line, sinker }, i) => ({
    line: at(`/rig/sections/${i}/line`, () => builtLine(line, `/rig/sections/${i}/line`)),
    sinker: at(`/rig/sections/${i}/sinker`, () => builtSinker(sinker, `/rig/sections/${i}/sinker`)),
  }));
  const bodies = sections.map(({ line, sinker }) => ({ line: line.body, sinker: sinker.body }));
  const grounds = sections.flatMap(({ line, sinker }) => [line.grounds, sinker.grounds]);
  return { rig: rig(float.body, ...bodies), grounds: joinGrounds(float.grounds, ...grounds) };
}

type Part<T> = Pick<Built<T>, "body" | "grounds">;

function measured<T>(body: T): Part<T> {
  return { body, grounds: { relations: [], assumptions: [], caveats: [] } };
}

function builtFloat(given: Decoded<WireFloat>): Part<Float> {
  if (given.kind === "body") return measured(floatOf(given));
  const { kind: _, ...dry } = given;
  return buildDry(dryOf(dry, "/rig/float"));
}

function builtLine(given: Decoded<WireLine>, path: string): Part<Line> {
  if (given.kind === "body") return measured(lineOf(given));
  const { kind: _, length, ...tippet } = given;
  return buildTippet(tippetOf(tippet, path), length);
}

function builtSinker(given: Decoded<WireSinker>, path: string): Part<Sinker> {
  if (given.kind === "body") return measured(sinkerOf(given));
  if (given.kind === "shot") return buildShot(given);
  const { kind: _, ...nymph } = given;
  return buildNymph(nymphOf(nymph, path));
}
