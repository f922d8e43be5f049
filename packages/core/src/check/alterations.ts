/** What can be changed on a rig or in how it is fished, one thing at a time, each with how large a step it is. */

import { holdInStep } from "../drift/index.js";
import { hypot } from "../elementary/index.js";
import type { Pieces } from "../setup/index.js";
import {
  type Bead,
  type BeadMaterial,
  beadMillimetres,
  type Dry,
  type DryStyle,
  describeTippet,
  greatestBead,
  hookSizes,
  type Nymph,
  nymphName,
  type Tippet,
  type TippetMaterial,
  tippetDiameter,
} from "../tackle/index.js";
import { type Metres, metres, metresPerSecond, millimetres, newtons } from "../units/index.js";
import type { CheckStop, FishingAct, Measure } from "./finding.js";
import { runTime } from "./presentation.js";
import type { Lever } from "./question.js";
import type { RuleFacts } from "./rules.js";
import type { Seen } from "./seen.js";
import { xOf } from "./strength.js";

interface Retie {
  readonly part: keyof Pieces;
  readonly from: string | Measure;
  readonly to: string | Measure;
}
interface Act {
  readonly act: FishingAct;
  readonly to: Measure | null;
}

/** The rig and the stop once it is made. One step: a size of hook or bead, a whole X, 5 cm of dropper. */
export interface Alteration {
  readonly lever: Lever;
  readonly steps: number;
  readonly pieces: Pieces;
  readonly stop: CheckStop;
  readonly what: Retie | Act;
}

/** Every alteration that a lever allows, in no order. */
export function alterations(lever: Lever, seen: Seen): readonly Alteration[] {
  return made[lever](seen).map((one) => ({ lever, ...one }));
}

type Made = Omit<Alteration, "lever">;
const made: Readonly<Record<Lever, (seen: Seen) => readonly Made[]>> = {
  dropper: droppers,
  tippet: tippets,
  bead: beads,
  wire: wires,
  knot: (seen) =>
    seen.pieces.nymph.knot === "loop" ? [] : [withNymph(seen, { ...seen.pieces.nymph, knot: "loop" }, 1)],
  dry: dries,
  hold: holds,
  cast: casts,
  soften: (seen) =>
    [0.4, 0.3, 0.2].flatMap((speed, i) => {
      const entrySpeed = metresPerSecond(speed);
      if (entrySpeed >= (seen.stop.cast?.entrySpeed ?? 0.5)) return [];
      const to: Measure = { name: "entry", kind: "speed", value: entrySpeed };
      return [act(seen, "soften", to, { cast: { ...seen.stop.cast, entrySpeed } }, i + 1)];
    }),
  run: (seen) =>
    [1.25, 1.5, 2, 3, 4, 6, 8].map((times, i) => {
      const runLength = metres(Math.ceil(10 * times * seen.runLength) / 10);
      return act(seen, "run", { name: "run", kind: "length", value: runLength }, { runLength }, 2 * i + 2);
    }),
  slack: slacks,
  obey: (seen) =>
    [{ flies: 1, hooks: 1 }, { barbless: true }, { bait: false }].map((facts: RuleFacts) =>
      act(seen, "obey", null, { facts: { ...seen.stop.facts, ...facts } }, 1),
    ),
};

/** Whole centimetres: each up to 5 cm off, then in steps that grow by a quarter. */
function droppers(seen: Seen): readonly Made[] {
  const { pieces, stop } = seen;
  const { sinkerDownstream = 0, sinkerAcross = 0 } = stop.cast ?? {};
  // no nymph lands farther from its dry than their line is long
  const shortest = Math.max(0.1, hypot(sinkerDownstream, sinkerAcross));
  const longest = Math.min(stop.column.depth, 5);
  const found: Made[] = [];
  for (let k = 1; k <= 500; k = Math.max(k + 1, Math.round(1.25 * k))) {
    for (const sign of [-1, 1]) {
      const length = Math.round(100 * pieces.dropper + sign * k) / 100;
      if (length < shortest || length >= longest) continue;
      found.push(withDropper(seen, metres(length)));
    }
  }
  return found;
}

function withDropper(seen: Seen, dropper: Metres): Made {
  const { pieces, stop } = seen;
  const say = (value: Metres): Measure => ({ name: "dropper", kind: "dropper", value });
  return {
    steps: Math.abs(dropper - pieces.dropper) / 0.05,
    pieces: { ...pieces, dropper },
    stop,
    what: { part: "dropper", from: say(pieces.dropper), to: say(dropper) },
  };
}

/** A new spool has the strength of its table. */
function tippets(seen: Seen): readonly Made[] {
  const { tippet } = seen.pieces;
  const here = xOf(tippet.diameter);
  const materials: readonly TippetMaterial[] = ["nylon", "fluorocarbon"];
  return materials.flatMap((material) =>
    [0, 1, 2, 3, 4, 5, 6, 7, 8].flatMap((x) => {
      const steps = Math.abs(x - here) + (material === tippet.material ? 0 : 1.5);
      if (steps < 1e-6) return [];
      const spool: Tippet = { material, diameter: tippetDiameter(x) };
      return [
        {
          steps,
          pieces: { ...seen.pieces, tippet: spool },
          stop: seen.stop,
          what: { part: "tippet", from: describeTippet(tippet), to: describeTippet(spool) } as const,
        },
      ];
    }),
  );
}

/** Other beads on the same hook, and none; a fly that was weighed is what it is. */
function beads(seen: Seen): readonly Made[] {
  const { nymph } = seen.pieces;
  if (nymph.measured?.mass !== undefined) return [];
  const here = nymph.bead === undefined ? 1.7 : 1000 * nymph.bead.diameter;
  const metals: readonly BeadMaterial[] = ["tungsten", "brass"];
  const others = metals.flatMap((material) =>
    beadMillimetres.flatMap((mm): readonly Made[] => {
      const bead: Bead = { diameter: millimetres(mm), material };
      const same = nymph.bead?.material === material;
      const steps = Math.abs(mm - here) / 0.4 + (nymph.bead === undefined || same ? 0 : 1.5);
      if (steps < 1e-6 || bead.diameter > greatestBead(nymph.size)) return [];
      return [withNymph(seen, { ...nymph, bead, name: nymphName({ size: nymph.size, bead }) }, steps)];
    }),
  );
  if (nymph.bead === undefined) return others;
  const { bead: _, ...bare } = nymph;
  const plain = { ...bare, name: nymphName({ size: nymph.size }) };
  return [...others, withNymph(seen, plain, Math.abs(1.7 - here) / 0.4), ...unweighted(seen)];
}

/** Neither bead nor wire. */
function unweighted(seen: Seen): readonly Made[] {
  const { bead, underbody, ...plain } = seen.pieces.nymph;
  if (bead === undefined || underbody === undefined) return [];
  return [withNymph(seen, { ...plain, name: nymphName({ size: plain.size }) }, 8)];
}

/** Tin for lead, or no wire. */
function wires(seen: Seen): readonly Made[] {
  const { nymph } = seen.pieces;
  if (nymph.underbody === undefined || nymph.measured?.mass !== undefined) return [];
  const { underbody, ...bare } = nymph;
  const tin: Nymph = {
    ...nymph,
    name: `${nymph.name}, tin wire`,
    underbody: { ...underbody, material: "tin" },
  };
  const none: Nymph = { ...bare, name: `${nymph.name}, no wire` };
  return [
    ...(underbody.material === "lead" ? [withNymph(seen, tin, 1)] : []),
    withNymph(seen, none, 2),
    ...unweighted(seen),
  ];
}

function withNymph(seen: Seen, nymph: Nymph, steps: number): Made {
  const from = seen.pieces.nymph;
  const loop = nymph.knot === "loop" && from.knot !== "loop";
  return {
    steps,
    pieces: { ...seen.pieces, nymph },
    stop: seen.stop,
    what: { part: "nymph", from: from.name, to: loop ? `${nymph.name} on a loop knot` : nymph.name },
  };
}

function dries(seen: Seen): readonly Made[] {
  const from = seen.pieces.dry;
  const here = hookSizes.indexOf(from.size);
  const styles: readonly DryStyle[] = ["foam", "hair", "yarn", "hackle"];
  return styles.flatMap((style) =>
    hookSizes.flatMap((size, i): readonly Made[] => {
      const steps = Math.abs(i - here) + (style === from.style ? 0 : 2);
      if (steps === 0 || (style === "hackle" && from.style !== "hackle")) return [];
      const dry: Dry = { name: `${style} dry ${size}`, size, style };
      const what = { part: "dry", from: from.name, to: dry.name } as const;
      return [{ steps, pieces: { ...seen.pieces, dry }, stop: seen.stop, what }];
    }),
  );
}

/** A hold asks more of a hand than a step or two of tackle. */
export const holdSteps = 4;

function holds(seen: Seen): readonly Made[] {
  const { rig, settled, stop } = seen;
  if (stop.held !== undefined) return [];
  const hold = holdInStep(rig, stop.column, settled, newtons(0.02), stop.wind);
  if (hold.reach !== "held") return [];
  const { force } = hold.point;
  return [act(seen, "hold", { name: "pull", kind: "force", value: force }, { held: force }, holdSteps)];
}

/** The nymph beside or above the dry, in the quicker lane. */
function casts(seen: Seen): readonly Made[] {
  const { cast } = seen.stop;
  const across = cast?.sinkerAcross ?? 0;
  const quicker = Math.abs(across) * Math.sign(cast?.laneGradient ?? 0);
  const above = -Math.abs(cast?.sinkerDownstream ?? 0);
  const place = (name: string, value: number): Measure => ({
    name,
    kind: "length",
    value: metres(Math.abs(value)),
  });
  const moved = (to: Measure, cast: CheckStop["cast"]) =>
    act(seen, "cast", to, { cast: { ...seen.stop.cast, ...cast } }, 1);
  return [
    ...(quicker === across
      ? []
      : [moved(place(quicker > 0 ? "beyond" : "short", quicker), { sinkerAcross: metres(quicker) })]),
    ...(above === (cast?.sinkerDownstream ?? above)
      ? []
      : [moved(place("above", above), { sinkerDownstream: metres(above) })]),
  ];
}

/** As much as lasts until the rig has settled, and to the end of the run; to the next 5 cm. */
function slacks(seen: Seen): readonly Made[] {
  const lane = Math.abs(seen.stop.laneDifference ?? 0);
  const { settling } = seen.judged();
  const times = [runTime(seen), ...(settling.settles ? [settling.time] : [])];
  return times.map((time, i) => {
    const slack = metres(Math.ceil(20 * (lane * time + 1e-9)) / 20);
    return act(seen, "slack", { name: "slack", kind: "length", value: slack }, { slack }, 1 + i);
  });
}

function act(
  { pieces, stop }: Seen,
  name: FishingAct,
  to: Measure | null,
  change: Partial<CheckStop>,
  steps: number,
): Made {
  return { steps, pieces, stop: { ...stop, ...change }, what: { act: name, to } };
}
