/** Random rigs at random stops, faulty more often than not, and rules that they may break. Invented; the same for the same seed. */

import { waterColumn } from "../column/index.js";
import type { Pieces } from "../setup/index.js";
import {
  beadMillimetres,
  greatestBead,
  hookSizes,
  type Nymph,
  nymphName,
  tippetDiameter,
} from "../tackle/index.js";
import {
  celsius,
  kilograms,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
  perSecond,
} from "../units/index.js";
import { demoRules, sound } from "./examples.fixture.js";
import type { CheckStop, Finding } from "./index.js";
import type { Rules } from "./rules.js";

export type Case = readonly [Pieces, CheckStop, Rules];

export function randomCases(seed: number, count: number): readonly Case[] {
  const dice = diceOf(seed);
  return Array.from({ length: count }, () => [piecesBy(dice), stopBy(dice), rulesBy(dice)]);
}

/** Rigs in proportion, by common practice and no source: a foam, hair or yarn dry of 8 or 10 over a small tungsten nymph on 5X, a dropper of half the depth, in
 *  water over no boulders that is not too quick, cast and slackened well, under rules that they keep. Waded where depth times surface speed
 *  is below 0.6 m²/s, where the first published classification says: not for people. */
export function soundCases(seed: number, count: number): readonly Case[] {
  const dice = diceOf(seed);
  return Array.from({ length: count }, () => soundBy(dice));
}

function soundBy({ one, between }: Dice): Case {
  const [style, size] = [one(["foam", "hair", "yarn"] as const), one([8, 10])];
  const [depth, speed] = [between(0.75, 1), between(0.3, 0.9)];
  const column = waterColumn({
    depth: metres(depth),
    surfaceSpeed: metresPerSecond(speed),
    bed: one(["sand", "granule", "pebble", "cobble"] as const),
    temperature: celsius(between(4, 15.9)),
  });
  const dropper = metres(Math.round(between(40, 55)) / 100);
  const dry = { name: `${style} dry ${size}`, size, style };
  const stop = { ...sound.stop, column, wades: depth * speed < 0.6 };
  return [{ ...sound.pieces, dry, dropper }, stop, demoRules];
}

/** Findings that ask to stop or to fix. */
export function graveOf(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ severity }) => severity === "stop" || severity === "fix");
}

export function randomRules(seed: number): Rules {
  return rulesBy(diceOf(seed));
}

interface Dice {
  readonly between: (least: number, greatest: number) => number;
  readonly one: <T>(of: readonly T[]) => T;
}

/** A linear congruential generator, Numerical Recipes (from memory): good enough to pick cases by. */
function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  for (let i = 0; i < 8; i++) next();
  return {
    between: (least, greatest) => least + next() * (greatest - least),
    one: (of) => of[Math.floor(next() * of.length)]!,
  };
}

function nymphBy({ one }: Dice): Nymph {
  const size = one(hookSizes);
  const mm = one([...beadMillimetres, 0]);
  const material = one(["tungsten", "brass", "glass"] as const);
  const fits = mm > 0 && millimetres(mm) <= greatestBead(size);
  const bead = fits ? { bead: { diameter: millimetres(mm), material } } : {};
  const wire = { underbody: { diameter: millimetres(0.3), turns: 8, material: "lead" } } as const;
  const knot = one(["loop", "tight"] as const);
  return { name: nymphName({ size, ...bead }), size, ...bead, knot, ...(one([true, false]) ? wire : {}) };
}

function piecesBy(dice: Dice): Pieces {
  const { one, between } = dice;
  const size = one(hookSizes);
  const style = one(["foam", "yarn", "hair", "hackle", "low-profile"] as const);
  return {
    dry: { name: `${style} dry ${size}`, size, style },
    nymph: nymphBy(dice),
    tippet: {
      material: one(["nylon", "fluorocarbon"] as const),
      diameter: tippetDiameter(Math.floor(between(0, 9))),
    },
    dropper: metres(Math.round(between(15, 150)) / 100),
  };
}

function stopBy({ one, between }: Dice): CheckStop {
  const depth = between(0.3, 2);
  return {
    column: waterColumn({
      depth: metres(depth),
      surfaceSpeed: metresPerSecond(between(0.1, 1.5)),
      bed: one(["sand", "pebble", "cobble", "boulder"] as const),
      temperature: celsius(between(4, 22)),
    }),
    surface: one(["glassy", "rippled", "broken"] as const),
    runLength: metres(between(2, 12)),
    lie: { holdingHeight: metres(depth / 4) },
    leader: { breakingForce: newtons(between(8, 40)) },
    cast: {
      sinkerDownstream: metres(between(-0.1, 0.05)),
      sinkerAcross: metres(between(-0.1, 0.1)),
      laneGradient: perSecond(between(-0.4, 0.4)),
    },
    slack: metres(between(0.05, 2)),
    laneDifference: metresPerSecond(between(-0.4, 0.4)),
  };
}

/** At most so much weight, lead or not, one fly or two, barbless or not. */
function rulesBy({ one }: Dice): Rules {
  return {
    version: 1,
    place: "Larkspur Bend (invented)",
    statedBy: "the demo",
    clauses: [
      { topic: "added-weight", id: "w", most: kilograms(one([0, 1e-4, 3e-4, 1e-2])) },
      { topic: "lead", id: "l", allowed: one([true, false]) },
      { topic: "flies", id: "f", most: one([1, 2]) },
      { topic: "barbless", id: "b", required: one([true, false]) },
    ],
  };
}
