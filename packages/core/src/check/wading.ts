/** What published limits say of standing in water of a depth and a speed: side by side, headed by the most cautious. */

import type { Assumption, Grounds, SourceKey } from "../sources/index.js";
import {
  kilograms,
  type Metres,
  type MetresPerSecond,
  metres,
  requireWithin,
  type UnitDischarge,
  unitDischarge,
} from "../units/index.js";
import { floodVerdicts } from "./flood-classes.js";
import {
  abtProduct,
  coxBands,
  type Footing,
  heightTimesMass,
  karvonenObserved,
  karvonenProduct,
  streamgagersTen,
  type Wader,
} from "./wading-limits.js";

/** One place someone may stand: the stop itself, or the deepest or quickest of the way there. */
export interface Wade {
  readonly depth: Metres;
  /** Mean over the depth. */
  readonly speed: MetresPerSecond;
  /** Without it the limits that go by height and mass cannot be read. */
  readonly wader?: Wader;
  /** Poor unless given. */
  readonly footing?: Footing;
}

/** beyond: past a limit · doubtful: some lose their footing here · under: below the limit · silent: the source only says when not to.
 *  No level is a permission. */
export type WadingLevel = "beyond" | "doubtful" | "under" | "silent";

/** What one source says. */
export interface WadingVerdict {
  readonly source: SourceKey;
  readonly level: WadingLevel;
  /** What the level rests on. */
  readonly rests: "depth-times-speed" | "depth" | "speed" | "height-and-mass";
  /** Depth times speed at which the source draws its line; 0 for a person whom it keeps out of all moving water, or where depth alone does. */
  readonly limit: UnitDischarge;
  /** Of a classification of floods: its class, and for whom it is not. */
  readonly class?: string;
}

export interface Wading {
  /** The most cautious of the verdicts. */
  readonly level: WadingLevel;
  /** Depth times speed here. */
  readonly product: UnitDischarge;
  readonly verdicts: readonly WadingVerdict[];
  /** The least and the greatest limit of the sources: how far they disagree. */
  readonly limits: { readonly least: UnitDischarge; readonly greatest: UnitDischarge };
  /** What was not said and would change the answer. */
  readonly unknown: readonly ("wader" | "footing")[];
  readonly cautions: readonly string[];
  readonly grounds: Grounds;
}

/** For everyone who wades, whatever the numbers. Common practice, no source. */
export const wadingCautions: readonly string[] = [
  "These limits come from people who expected to fall, in flumes, watched. Nothing here says that a wade is without danger.",
  "Wear a belt, carry a staff, go in company, and know where you get out downstream before you step in.",
  "Leave when the water rises, colours or carries wood; below a dam it can rise within minutes.",
  "Cold water takes breath and strength at once, also in summer: stop while you are warm.",
  "Classes of floods are for streets, houses and land below dams: they only warn.",
  "Local warnings, closures and those licensed to guide here come first.",
];

/** Most cautious first. */
const order: readonly WadingLevel[] = ["beyond", "doubtful", "under", "silent"];

/** Holds depth times speed, depth and speed against four published limits and three classifications of floods; the answer is the most
 *  cautious of them.
 *  Depth 0 to 50 m, speed 0 to 20 m/s. Throws QuantityError outside, and for a wader whom the limits do not cover.
 *  [Abt1989] [Karvonen2000] [Cox2010] [LaneFay1997] [AIDR2017] [FOWG2002] [Defra2006] */
export function wade(given: Wade): Wading {
  const { depth, speed, wader, footing } = given;
  requireWithin("depth of the wade", depth, 0, 50, "m");
  requireWithin("speed of the water at the wade", speed, 0, 20, "m/s");
  const product = depth * speed;
  const heightMass = wader === undefined ? Number.POSITIVE_INFINITY : heightTimesMass(wader);
  const verdicts: readonly WadingVerdict[] = [
    ...(wader === undefined ? [] : [warning("Abt1989", product, abtProduct(wader))]),
    karvonen(product, wader, footing ?? "poor"),
    cox(given, heightMass),
    warning("LaneFay1997", product, streamgagersTen),
    ...floodVerdicts(given, heightMass),
  ];
  const unknown = (["wader", "footing"] as const).filter((name) => given[name] === undefined);
  const limits = verdicts.map(({ limit }) => limit);
  return {
    level: mostCautious(verdicts.map(({ level }) => level)),
    product: unitDischarge(product),
    verdicts,
    limits: { least: unitDischarge(Math.min(...limits)), greatest: unitDischarge(Math.max(...limits)) },
    unknown,
    cautions: wadingCautions,
    grounds: groundsOf(unknown, verdicts),
  };
}

/** The most cautious of several levels; silent when there are none.
 *  @example mostCautious(["under", "beyond", "silent"]) // => "beyond" */
export function mostCautious(levels: readonly WadingLevel[]): WadingLevel {
  return order.find((level) => levels.includes(level)) ?? "silent";
}

/** Of a source that only says when not to. */
function warning(source: SourceKey, product: number, limit: UnitDischarge): WadingVerdict {
  return { source, level: product >= limit ? "beyond" : "silent", rests: "depth-times-speed", limit };
}

/** Who may be meant where nobody was: the least of the adults, 50 m kg. A limit is not read off them, doubt is. */
const leastAdult: Wader = { height: metres(1.5), mass: kilograms(50 / 1.5) };

/** Not to say who wades is never milder than to say it: from where the least adult may fall it is doubtful. */
function karvonen(product: number, wader: Wader | undefined, footing: Footing): WadingVerdict {
  const { least, greatest } = karvonenObserved;
  const limit = wader === undefined ? greatest : karvonenProduct(wader, footing);
  const poor = Math.min(least, karvonenProduct(wader ?? leastAdult, "poor"));
  const below = wader === undefined ? "silent" : "under";
  const level = product >= limit ? "beyond" : product >= poor ? "doubtful" : below;
  return { source: "Karvonen2000", level, rests: "depth-times-speed", limit };
}

function cox({ depth, speed }: Wade, heightMass: number): WadingVerdict {
  const bands = coxBands(heightMass);
  const limit = bands.some;
  const says = (level: WadingLevel, rests: WadingVerdict["rests"]): WadingVerdict => ({
    source: "Cox2010",
    level,
    rests,
    limit,
  });
  if (limit === 0) return says("beyond", "height-and-mass");
  if (depth > bands.deepest) return says("beyond", "depth");
  if (speed > bands.quickest) return says("beyond", "speed");
  if (depth * speed > limit) return says("beyond", "depth-times-speed");
  return says(depth * speed > bands.low ? "doubtful" : "under", "depth-times-speed");
}

function groundsOf(unknown: Wading["unknown"], verdicts: readonly WadingVerdict[]): Grounds {
  return {
    relations: verdicts.map(({ source }) => source),
    assumptions: [
      { name: "debris", value: "none (DF = 0)", basis: "assumption" },
      ...unknown.map((name): Assumption => ({ name, value: taken[name], basis: "assumption" })),
    ],
    caveats: [],
  };
}

const taken = { wader: "an adult: height times mass above 50 m kg", footing: "poor" } as const;
