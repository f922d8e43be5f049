/** Invented truths and what a person would have seen of them, drawn by a generator that has nothing to do with the sampler. */

import { type Observation, waterColumn } from "../column/index.js";
import { settle } from "../drift/index.js";
import { type Rig, rig } from "../rig/index.js";
import type { Pieces } from "../setup/index.js";
import { buildDry, buildNymph, buildTippet, tippetDiameter } from "../tackle/index.js";
import { metres, metresPerSecond, millimetres, radians, seconds } from "../units/index.js";
import type { RigSighting } from "./index.js";

/** Uniform numbers by a 32-bit linear congruential generator (Numerical Recipes' constants, from memory) with its low bits shuffled away. */
export function chance(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state >>> 8;
  };
  for (let i = 0; i < 8; i++) next();
  return () => (next() + next() / 2 ** 24 + 0.5 / 2 ** 24) / 2 ** 24;
}

/** A normal as the sum of twelve uniforms would be too short in its tails: the polar method of Marsaglia. */
function normal(random: () => number): number {
  for (;;) {
    const [u, v] = [2 * random() - 1, 2 * random() - 1];
    const s = u * u + v * v;
    if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s);
  }
}

/** Counts the arrivals of a Poisson process. */
function poisson(random: () => number, mean: number): number {
  let count = -1;
  for (let time = 0; time < mean; count++) time -= Math.log(random());
  return Math.max(0, count);
}

export interface Truth {
  readonly observation: Observation;
  readonly inHand: Pieces;
  readonly seen: readonly RigSighting[];
  readonly truth: {
    readonly depth: number;
    readonly surfaceSpeed: number;
    readonly speedBelow: number;
    readonly drag: number;
    readonly treatment: number;
    readonly nymphHeight: number;
    readonly lean: number;
  };
}

/** A stop and a rig at random, a truth about them out of the documented prior, and one to four sightings out of the documented likelihoods. */
export function inventTruth(seed: number): Truth {
  const random = chance(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const pick = <T>(...of: readonly T[]): T => of[Math.floor(of.length * random())]!;
  const law = pick("log", "power", "mixing-layer");
  const stated = { depth: between(0.5, 1.2), speed: between(0.4, 1.2) };
  const inHand: Pieces = {
    dry: { name: "dry", size: pick(10, 12, 14), style: pick("foam", "yarn", "hackle") },
    nymph: {
      name: "nymph",
      size: pick(14, 16),
      bead: { diameter: millimetres(pick(2.3, 2.8, 3.3)), material: "tungsten" },
    },
    tippet: { material: "fluorocarbon", diameter: tippetDiameter(pick(4, 5, 6)) },
    dropper: metres(stated.depth * between(0.6, 1.15)),
  };
  const drawn = (spread: number): number => Math.exp(spread * normal(random));
  const factor = { depth: drawn(0.1), speed: drawn(0.1), drag: drawn(0.3), treatment: drawn(0.7) };
  const parameter = { log: 0.01 * drawn(0.7), power: 6 * drawn(0.3), "mixing-layer": 0.25 * drawn(0.35) }[
    law
  ];
  const water = (depth: number, speed: number): Observation => ({
    depth: metres(depth),
    surfaceSpeed: metresPerSecond(speed),
    law,
  });
  const shaped = (of: Observation, value: number): Observation => {
    if (law === "log") return { ...of, roughnessLength: metres(value) };
    return law === "power" ? { ...of, exponent: value } : { ...of, bed: { d84: metres(value) } };
  };
  const column = waterColumn(
    shaped(water(stated.depth * factor.depth, stated.speed * factor.speed), parameter),
  );
  const treatment = 0.5 ** factor.treatment;
  const made = tied(inHand, factor.drag, treatment);
  const settled = settle(made, column);
  const below = column.profile;
  const fifth = column.depth / 5;
  const shareBelow =
    below.law === "log"
      ? Math.max(0, Math.log(fifth / below.roughnessLength) / Math.log(column.depth / below.roughnessLength))
      : below.law === "power"
        ? 0.2 ** (1 / below.exponent)
        : mixing(fifth, parameter) / mixing(column.depth, parameter);
  const scene: Scene = { random, settled, statedSpeed: stated.speed };
  return {
    observation: shaped(
      water(stated.depth, stated.speed),
      { log: 0.01, power: 6, "mixing-layer": 0.25 }[law],
    ),
    inHand,
    seen: Array.from({ length: 1 + Math.floor(4 * random()) }, () => sighting(scene, pick(...kinds))),
    truth: {
      depth: column.depth,
      surfaceSpeed: column.surfaceSpeed,
      speedBelow: shareBelow,
      drag: factor.drag,
      treatment,
      nymphHeight: settled.sinkers[0]!.heightAboveBed,
      lean: settled.lean,
    },
  };
}

const mixing = (z: number, d: number): number => 1 + Math.tanh((z - d) / d);

function tied({ dry, nymph, tippet, dropper }: Pieces, drag: number, treatment: number): Rig {
  const sinker = buildNymph(nymph).body;
  return rig(
    { ...buildDry(dry).body, treatment },
    { line: buildTippet(tippet, dropper).body, sinker: { ...sinker, dressing: sinker.dressing * drag } },
  );
}

interface Scene {
  readonly random: () => number;
  readonly settled: ReturnType<typeof settle>;
  readonly statedSpeed: number;
}

const kinds = ["ticks", "dry", "lean", "nymph", "drift-time"] as const;

/** A sighting drawn from what docs/adjustments.md says of its kind. */
function sighting({ random, settled, statedSpeed }: Scene, kind: (typeof kinds)[number]): RigSighting {
  const degree = Math.PI / 180;
  if (kind === "ticks") {
    const height = settled.sinkers[0]!.heightAboveBed - (settled.bed?.lyingLine ?? 0);
    const drifts = 1 + Math.floor(15 * random());
    return { kind, drifts, ticks: poisson(random, drifts * (0.02 + 3 * Math.exp(-height / 0.05))) };
  }
  if (kind === "dry") {
    const rate = Math.exp(-(settled.reserve / settled.load - 1) / 0.25) / 5;
    const drowns = -Math.log(random()) / rate;
    // watched for 30 s
    return drowns < 30
      ? { kind, outcome: "drowned", after: seconds(Math.max(0.1, drowns)) }
      : { kind, outcome: "floated", after: seconds(30) };
  }
  if (kind === "lean") {
    for (;;) {
      const lean = settled.lean + 8 * degree * normal(random);
      if (Math.abs(lean) < Math.PI / 2) return { kind, lean: radians(lean) };
    }
  }
  if (kind === "nymph") {
    if (random() < 0.05)
      return { kind, rides: (["ahead", "under", "behind"] as const)[Math.floor(3 * random())]! };
    // a logistic variable is the logarithm of the odds of a uniform one
    const u = random();
    const cut = 3 * degree * Math.log(u / (1 - u));
    if (settled.lean - 5 * degree > cut) return { kind, rides: "behind" };
    const v = 1 - u;
    return -settled.lean - 5 * degree > 3 * degree * Math.log(v / (1 - v))
      ? { kind, rides: "ahead" }
      : { kind, rides: "under" };
  }
  const error = Math.hypot(0.05 * statedSpeed, 0.02);
  for (;;) {
    const speed = settled.driftSpeed + error * normal(random);
    if (speed > 0.01) return { kind, distance: metres(6), time: seconds(6 / speed) };
  }
}
