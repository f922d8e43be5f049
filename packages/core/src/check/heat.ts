/** What the temperature of the water asks of someone who fishes for trout and salmon: local closures, then practice, then published criteria. */

import type { Grounds, SourceKey } from "../sources/index.js";
import { type Celsius, celsius, fahrenheit, requireWithin } from "../units/index.js";

/** How a criterion of habitat counts: a 7-day average of daily maxima, a sustained temperature, or the reading itself. */
export type HeatStatistic = "seven-day-mean-of-maxima" | "sustained" | "reading";

/** One temperature that somebody draws a line at. */
export interface HeatCriterion {
  readonly source: SourceKey;
  readonly limit: Celsius;
  readonly statistic: HeatStatistic;
  /** Of what, in words. */
  readonly what: string;
}

/** What to do, growing with temperature. leave: do not fish for them · last: only a fish or two, at dawn, landed at once ·
 *  quick: shorten fight and handling · usual: wet hands, in the water. */
export type HeatAdvice = "leave" | "last" | "quick" | "usual";

export interface Heat {
  readonly advice: HeatAdvice;
  /** Who decided: a closure that the caller stated, or common practice. */
  readonly decided: "local-closure" | "practice";
  readonly handling: readonly string[];
  /** Every criterion, the lowest first, and whether this reading is at or above it. A reading is not the statistic it is held against. */
  readonly criteria: readonly (HeatCriterion & { readonly reached: boolean })[];
  /** What anybody who falls in should know at this temperature. */
  readonly cautions: readonly string[];
  readonly grounds: Grounds;
}

/** Published criteria for salmonids, the lowest first. */
export const heatCriteria: readonly HeatCriterion[] = [
  criterion("CountyReview", fahrenheit(50), "reading", "best for juvenile Chinook, from"),
  criterion("WSDE2006", 13, "seven-day-mean-of-maxima", "spawning and egg incubation"),
  criterion("CountyReview", fahrenheit(60), "reading", "best for juvenile Chinook, up to"),
  criterion("WSDE2006", 16, "seven-day-mean-of-maxima", "core summer habitat"),
  criterion("EPA2003", 16, "seven-day-mean-of-maxima", "core rearing of juveniles"),
  criterion("CountyReview", fahrenheit(61), "reading", "adverse to juvenile Chinook, rising"),
  criterion("EPA2003", 18, "seven-day-mean-of-maxima", "migration and rearing outside core areas"),
  criterion("BrungsJones1977", 19, "sustained", "growth of rainbow trout, chronic criterion"),
  criterion("EPA2003", 20, "seven-day-mean-of-maxima", "migration alone"),
  criterion("CountyReview", fahrenheit(68), "reading", "adverse to juvenile Chinook, rising fast"),
  criterion("EPA2003", 21, "sustained", "lethal to adults where it lasts, about"),
  criterion("CountyReview", fahrenheit(77), "reading", "lethal to juvenile Chinook"),
  criterion("EPA2003", 25.6, "sustained", "lethal to juveniles where it lasts, about"),
];

/** From which reading on the trade gives each advice. Common practice, no source: 68 °F is where many put the rod away. */
export const heatPractice: Readonly<Record<HeatAdvice, Celsius>> = {
  leave: celsius(20),
  last: celsius(18),
  quick: celsius(16),
  usual: celsius(-5),
};

const handlingFor: Readonly<Record<HeatAdvice, readonly string[]>> = {
  usual: ["Wet hands, barbless hooks, the fish kept in the water."],
  quick: [
    "Use the strongest tippet that still fishes and land the fish at once.",
    "No lifting for a picture.",
  ],
  last: [
    "Fish only in the cool of the morning, and stop after a fish or two.",
    "Unhook under water and hold it into the stream until it swims off by itself.",
  ],
  leave: ["Leave trout and salmon alone until the water has cooled: fish let go now often die later."],
};

const milder: Readonly<Record<HeatAdvice, readonly HeatAdvice[]>> = {
  usual: ["usual"],
  quick: ["usual", "quick"],
  last: ["usual", "quick", "last"],
  leave: ["leave"],
};

/** What a water temperature asks for. A closure that applies here goes before practice, whatever it says; criteria of habitat are shown beside.
 *  Temperature −2 to 45 °C, or QuantityError. [WSDE2006] [EPA2003] [BrungsJones1977] [CountyReview]
 *  @example heat(celsius(20.5)).advice // => "leave" */
export function heat(temperature: Celsius, closure?: Celsius): Heat {
  requireWithin("water temperature", temperature, -2, 45, "°C");
  if (closure !== undefined) requireWithin("temperature of the closure", closure, -2, 45, "°C");
  const closed = closure !== undefined && temperature >= closure;
  const advice = closed ? "leave" : practiceAt(temperature);
  return {
    advice,
    decided: closed ? "local-closure" : "practice",
    handling: milder[advice].flatMap((one) => handlingFor[one]),
    criteria: heatCriteria.map((one) => ({ ...one, reached: temperature >= one.limit })),
    cautions: cautionsAt(temperature),
    grounds: {
      relations: ["WSDE2006", "EPA2003", "BrungsJones1977", "CountyReview", "CommonPractice"],
      assumptions: [
        { name: "temperatures of the handling advice", value: "16, 18 and 20 °C", basis: "practice" },
      ],
      caveats: [],
    },
  };
}

function practiceAt(temperature: number): HeatAdvice {
  const rising = ["leave", "last", "quick"] as const;
  return rising.find((advice) => temperature >= heatPractice[advice]) ?? "usual";
}

/** Common practice, no source. */
function cautionsAt(temperature: number): readonly string[] {
  const local = "Local closures and those licensed to guide here come first.";
  if (temperature >= 15) return [local];
  return [
    local,
    "Water this cold takes your breath when you fall in and your grip within minutes: belt, company, dry clothes, and out before you shiver.",
  ];
}

function criterion(source: SourceKey, limit: number, statistic: HeatStatistic, what: string): HeatCriterion {
  return { source, limit: celsius(limit), statistic, what };
}
