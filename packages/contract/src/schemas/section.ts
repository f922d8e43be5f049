/** A cross-section of a channel, as a request says it. */

import { z } from "@hono/zod-openapi";
import {
  type CrossSection,
  type IneffectiveEnd,
  type PrismaticSection,
  type RoughnessZone,
  type Survey,
  type SurveyPoint,
  surveyedSection,
  triangularSection,
} from "@plumbdrift/core";
import type { Counted } from "../cost.js";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Strict, strict, tag, type Wire } from "../quantity/wire.js";
import { at } from "../refusal.js";

/** The most points that a survey may have. */
export const MAX_SURVEY_POINTS = 300;

type Prism<Shape extends PrismaticSection["shape"]> = Wire<Extract<PrismaticSection, { shape: Shape }>>;

interface WireSurvey extends Wire<Survey> {
  readonly shape: "surveyed";
}

export type WireSection = Wire<PrismaticSection> | WireSurvey;

const width = (what: string): Prism<"rectangular">["width"] extends infer Q ? Strict<Q> : never =>
  quantity("length", what, 0.001, 10_000, "m");
const run = (bank: string): z.ZodNumber =>
  z
    .number()
    .min(0)
    .max(1000)
    .openapi({ description: `Run over rise of the ${bank} bank: 0 is a wall.` });

const Rectangular = strict<Prism<"rectangular">>({
  shape: tag("rectangular"),
  width: width("Width."),
}).openapi("RectangularSection", { description: "Two walls on a level bed." });

const Triangular = strict<Prism<"triangular">>({
  shape: tag("triangular"),
  leftRun: run("left"),
  rightRun: run("right"),
}).openapi("TriangularSection", { description: "A V. One run must be above 0." });

const Trapezoidal = strict<Prism<"trapezoidal">>({
  shape: tag("trapezoidal"),
  bottomWidth: width("Width of the bed."),
  leftRun: run("left"),
  rightRun: run("right"),
}).openapi("TrapezoidalSection", { description: "Two banks on a level bed." });

const Circular = strict<Prism<"circular">>({
  shape: tag("circular"),
  diameter: quantity("length", "Inner diameter.", 0.001, 100, "m"),
}).openapi("CircularSection", { description: "A pipe or a culvert that runs partly full." });

const Parabolic = strict<Prism<"parabolic">>({
  shape: tag("parabolic"),
  width: width("Width where it is as deep as `depth`."),
  depth: quantity("length", "Depth in the middle where it is as wide as `width`.", 0.001, 1000, "m"),
}).openapi("ParabolicSection", { description: "Rounded: the width goes with the root of the depth." });

const station = (what: string): Strict<Wire<SurveyPoint>["station"]> =>
  quantity("length", what, -10_000, 10_000, "m");

const PointSchema = strict<Wire<SurveyPoint>>({
  station: station("Distance across the stream, from the left bank."),
  elevation: station("Height of the ground above any level."),
}).openapi("SurveyPoint", { description: "A levelled point of the ground." });

const ZoneSchema = strict<Wire<RoughnessZone>>({
  from: station("Station at which the zone begins."),
  manning: z.number().min(0.001).max(1).openapi({ description: "Manning's n of the zone." }),
}).openapi("RoughnessZone", { description: "A part of the bed with a roughness of its own." });

const EndSchema = strict<Wire<IneffectiveEnd>>({
  station: station("Ground beyond this station carries nothing, until the water is high enough."),
  elevation: station("High enough: the water reaches this elevation."),
}).openapi("IneffectiveEnd", { description: "Ground behind a levee or a bar." });

const Surveyed = strict<WireSurvey>({
  shape: tag("surveyed"),
  points: z
    .array(PointSchema)
    .min(2)
    .max(MAX_SURVEY_POINTS)
    .openapi({
      description: `From the left bank to the right; at most ${MAX_SURVEY_POINTS}. Depths count from the lowest.`,
    }),
  zones: z
    .array(ZoneSchema)
    .min(1)
    .max(20)
    .optional()
    .openapi({ description: "From the left to the right." }),
  ineffective: strict<NonNullable<WireSurvey["ineffective"]>>({
    left: EndSchema.optional(),
    right: EndSchema.optional(),
  })
    .openapi("IneffectiveEnds", { description: "Ends of the survey that hold water and carry none." })
    .optional(),
  walls: z
    .enum(["none", "vertical"])
    .optional()
    .openapi({ description: "What stands above the ends of the survey; none unless given." }),
}).openapi("SurveyedSection", { description: "Levelled points across the stream." });

export const SectionSchema: z.ZodType<WireSection> = z
  .discriminatedUnion("shape", [Rectangular, Triangular, Trapezoidal, Circular, Parabolic, Surveyed])
  .openapi("CrossSection", { description: "The shape of the channel across the stream." });

/** What compiling and searching a section costs. */
export const surveyPoints: Counted<{ readonly section: WireSection }> = {
  counts: "points of the section: of a survey its own, else one",
  each: 50,
  of: ({ section }) => (section.shape === "surveyed" ? section.points.length : 1),
};

export function sectionOf(given: Decoded<WireSection>, path = "/section"): CrossSection {
  return at(path, () => {
    if (given.shape === "triangular") return triangularSection(given.leftRun, given.rightRun);
    if (given.shape !== "surveyed") return given;
    const { shape: _, ...survey } = given;
    return surveyedSection(survey);
  });
}
