/** Facts of the trade on one invented stop: 0.9 m of water under a surface of 0.9 m/s, a nymph 16 with 2.3 mm of tungsten on 0.46 m of 5X
 *  fluorocarbon under a foam dry 12, or what is said instead. */
import {
  buildDry,
  buildNymph,
  buildTippet,
  type Cast,
  type CheckStop,
  type Column,
  check,
  drift,
  heightAboveBed,
  hold,
  type Knot,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
  type Pieces,
  perSecond,
  present,
  type Rig,
  radians,
  rig,
  type Settled,
  seconds,
  settle,
  type TippetMaterial,
  tippetDiameter,
  waterColumn,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

interface Tied {
  readonly dry?: number;
  readonly size?: number;
  readonly bead?: number;
  readonly metal?: "tungsten" | "brass";
  readonly knot?: Knot;
  readonly x?: number;
  readonly of?: TippetMaterial;
  readonly dropper?: number;
}

/** What a case changes on the rig, by name. */
const changes: Readonly<Record<string, Tied>> = {
  "a larger bead": { bead: 2.8 },
  "tungsten for brass": {},
  brass: { metal: "brass" },
  "a loop knot": { knot: "loop" },
  "5X fluorocarbon": {},
  "5X nylon": { of: "nylon" },
  "4X nylon": { of: "nylon", x: 4 },
  "3X nylon": { of: "nylon", x: 3 },
  "a nymph 18": { size: 18, bead: 2 },
  "a nymph 18 under a dry 6": { size: 18, bead: 2, dry: 6 },
  "as described": {},
};

function over(bed: string, speed = 0.9): Column {
  return waterColumn({
    depth: metres(0.9),
    surfaceSpeed: metresPerSecond(speed),
    bed: { d84: metres(bed === "boulders" ? 0.45 : 0.05) },
  });
}

function pieces({
  dry = 12,
  size = 16,
  bead = 2.3,
  metal = "tungsten",
  knot = "tight",
  x = 5,
  of = "fluorocarbon",
  dropper = 0.46,
}: Tied): Pieces {
  return {
    dry: { name: "dry", size: dry, style: "foam" },
    nymph: { name: "nymph", size, knot, bead: { diameter: millimetres(bead), material: metal } },
    tippet: { material: of, diameter: tippetDiameter(x) },
    dropper: metres(dropper),
  };
}

function tied(given: Tied): Rig {
  const { dry, nymph, tippet, dropper } = pieces(given);
  const line = buildTippet(tippet, dropper).body;
  return rig(buildDry(dry).body, { line, sinker: buildNymph(nymph).body });
}

function changed(i: Inputs, name: string): Tied {
  const found = changes[text(i, name)];
  if (found === undefined) throw new RangeError(`no change is called ${text(i, name)}`);
  return found;
}

const columnOf = (i: Inputs): Column => over(text(i, "bed"));
const lowest = ({ sinkers }: Settled) => sinkers[0]!;

/** The slowest is down after 2.6 s. */
const downSoon = { segments: 16, timeStep: seconds(0.01), duration: seconds(3) } as const;

/** Seconds from the landing until the nymph is 0.35 m down. */
function timeDown(made: Rig, column: Column, cast: Partial<Cast> = {}): number {
  const window = { low: heightAboveBed(0), high: heightAboveBed(0.9 - 0.35) };
  const { firstInWindow } = drift(made, column, { ...downSoon, cast, window });
  if (firstInWindow === null) throw new RangeError("never so deep");
  return firstInWindow;
}

const quantities: Readonly<Record<string, (made: Rig, column: Column) => number>> = {
  depth: (made, column) => lowest(settle(made, column)).depthBelowSurface,
  lean: (made, column) => settle(made, column).lean,
  time: (made, column) => timeDown(made, column),
};

/** What has to be clear above the cover: how far the dry drifts until the rig hangs settled, and how far off it the nymph lands. */
const places: Readonly<Record<string, (given: Tied, column: Column) => number>> = {
  room: (given, column) => {
    const { settling } = drift(tied(given), column, { ...downSoon, duration: seconds(10) });
    if (!settling.settles) throw new RangeError("never settled");
    return settling.distance;
  },
  landing: ({ dropper = 0.46 }) => {
    const lanes = [0, 12].map((across) => ({ across: metres(across), surfaceSpeed: metresPerSecond(0.9) }));
    const thrown = { distance: metres(6), upstream: radians(Math.PI / 4), lanes };
    const { sinkerAcross = 0, sinkerDownstream = 0 } = present({ ...thrown, dropper: metres(dropper) }).cast;
    return Math.hypot(sinkerAcross, sinkerDownstream);
  },
};

/** A lighter rig on as much more dropper as it takes to fish as deep: it is towed. */
function asDeep(column: Column): Tied {
  const depth = (given: Tied): number => lowest(settle(tied(given), column)).depthBelowSurface;
  for (let millimetres = 460; millimetres < 900; millimetres++) {
    const towed = { metal: "brass", dropper: millimetres / 1000 } as const;
    if (depth(towed) >= depth({})) return towed;
  }
  throw new RangeError("never so deep");
}

const severities = ["none", "note", "watch", "fix", "stop"];

/** Severity of a finding on the rig at the stop, with a cast of its own. */
function severity(i: Inputs, stop: Omit<CheckStop, "column">): number {
  const { findings } = check(pieces({}), { column: over("cobbles"), ...stop });
  return severities.indexOf(findings.find(({ code }) => code === text(i, "code"))?.severity ?? "none");
}

export const practiceEvaluations = {
  "which way it moves, 1 up or -1 down": (i: Inputs): number => {
    const of = quantities[text(i, "quantity")];
    if (of === undefined) throw new RangeError("no such quantity");
    const column = columnOf(i);
    return Math.sign(of(tied(changed(i, "to")), column) - of(tied(changed(i, "from")), column));
  },
  "which way the shorter of two rigs of one depth moves": (i: Inputs): number => {
    const of = places[text(i, "quantity")];
    if (of === undefined) throw new RangeError("no such quantity");
    const column = columnOf(i);
    return Math.sign(of({}, column) - of(asDeep(column), column));
  },
  "nymph from the fish, m": (i: Inputs): number =>
    Math.abs(lowest(settle(tied({}), columnOf(i))).heightAboveBed - number(i, "holding")),
  "depth fished over the dropper": (i: Inputs): number =>
    lowest(settle(tied({}), columnOf(i))).depthBelowSurface / 0.46,
  "lean where half the dropper is fished, degrees": (i: Inputs): number => {
    const dropper = number(i, "dropper");
    for (let speed = 0.2; speed < 5; speed += 0.01) {
      const settled = settle(tied({ dropper }), over(text(i, "bed"), speed));
      if (lowest(settled).depthBelowSurface <= dropper / 2) return (settled.lean * 180) / Math.PI;
    }
    throw new RangeError("never so slanted");
  },
  "drift held in step over the surface speed": (i: Inputs): number => {
    const column = columnOf(i);
    const { inStep } = hold(tied({}), column, { points: 2 });
    if (inStep.reach !== "held") throw new RangeError(inStep.reach);
    return inStep.point.driftSpeed / column.surfaceSpeed;
  },
  "which way the time down moves in a quicker lane": (i: Inputs): number => {
    const column = columnOf(i);
    const timeIn = (share: number): number =>
      timeDown(tied({}), column, {
        sinkerAcross: metres(0.15),
        laneGradient: perSecond(share * column.surfaceSpeed),
      });
    return Math.sign(timeIn(number(i, "share")) - timeIn(0));
  },
  "severity of a cast, 0 none to 4 stop": (i: Inputs): number =>
    severity(i, {
      cast: {
        sinkerDownstream: metres(number(i, "downstream")),
        sinkerAcross: metres(number(i, "across")),
        laneGradient: perSecond(number(i, "gradient")),
      },
      held: newtons(number(i, "held")),
    }),
  "severity of a splash, 0 none to 4 stop": (i: Inputs): number => {
    const surface = text(i, "surface") === "glassy" ? "glassy" : "broken";
    const { findings } = check(pieces({ bead: number(i, "bead") }), { column: over("cobbles"), surface });
    return severities.indexOf(findings.find(({ code }) => code === "splash-shows")?.severity ?? "none");
  },
};
