/** Identities of the unsteady drift in still water, as the cases ask for them. */
import {
  type Cast,
  cubicMetres,
  drift,
  heightAboveBed,
  kilograms,
  kilogramsPerCubicMetre,
  type Line,
  line,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
  rig,
  type Sinker,
  seconds,
  settle,
  sinker,
  waterColumn,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { raft, water } from "./evaluations-unsteady.js";
import { number, text } from "./inputs.js";

const still = waterColumn({ depth: metres(2), surfaceSpeed: metresPerSecond(0), exponent: 6, water });
const heavy: Sinker = sinker({ mass: kilograms(2e-3), volume: cubicMetres(1e-7), bead: millimetres(5.8) });
const undragged: Sinker = { ...heavy, beadDrag: { coefficient: 0 } };

function stout(skinFriction: number, coefficient: number): Line {
  return line({
    length: metres(1),
    diameter: millimetres(2),
    density: kilogramsPerCubicMetre(1780),
    normalDrag: { coefficient },
    tangentialDrag: skinFriction,
  });
}

/** A bead that pulls a slack line down lengthwise, let go at a speed: how far it comes in two seconds, over that speed. */
function lengthwise(i: Inputs): number {
  const path = drift(rig(raft, { line: stout(number(i, "skinFriction"), 0), sinker: undragged }), still, {
    cast: { sinkerDownstream: metres(0), entrySpeed: metresPerSecond(number(i, "speed")) },
    segments: 1,
    duration: seconds(2),
    stationary: metresPerSecond(0),
  }).path;
  return (2 - (path.at(-1)?.sinkers[0]?.heightAboveBed ?? Number.NaN)) / (2 * number(i, "speed"));
}

/** Still water and still air know no direction: a place of a rig cast across over that of one cast along. */
function acrossOverAlong(i: Inputs): number {
  const hung = rig(raft, { line: stout(0.5, 1.2), sinker: heavy });
  const after = (cast: Partial<Cast>) =>
    drift(hung, still, {
      cast,
      segments: 4,
      wind: metresPerSecond(0),
      duration: seconds(number(i, "seconds")),
      stationary: metresPerSecond(0),
    }).path.at(-1);
  const across = after({ sinkerDownstream: metres(0), sinkerAcross: metres(0.9) });
  const along = after({ sinkerDownstream: metres(0.9) });
  const [a, b] = [across?.sinkers[0], along?.sinkers[0]];
  if (!(across && along && a && b)) return Number.NaN;
  if (text(i, "of") === "float") return across.float.across / along.float.downstream;
  return text(i, "of") === "sinker" ? a.across / b.downstream : a.heightAboveBed / b.heightAboveBed;
}

/** First acceleration of a float that is held by 0.1 N, its line slack. */
function heldBack(): number {
  const hung = rig(raft, { line: stout(0, 0), sinker: undragged });
  const [step, steps] = [1e-6, 1000];
  const path = drift(hung, still, {
    cast: { sinkerDownstream: metres(-0.5), entrySpeed: metresPerSecond(0) },
    held: newtons(0.1),
    settled: settle(hung, still),
    segments: 1,
    timeStep: seconds(step),
    duration: seconds(steps * step),
    stationary: metresPerSecond(0),
  }).path;
  return -(path.at(-1)?.float.downstream ?? Number.NaN) / ((step * step * steps * (steps + 1)) / 2);
}

/** The whole depth is the window: every second counts, those too in which nothing moves any more. */
function shareOfSeconds(): number {
  const hung = rig(raft, { line: stout(0.02, 1.2), sinker: heavy });
  const window = { low: heightAboveBed(0), high: heightAboveBed(2) };
  const { secondsInWindow, duration } = drift(hung, still, { window, duration: seconds(60) });
  return secondsInWindow / duration;
}

export const stillWaterEvaluations = {
  "fall along a line over that at the speed given": (i: Inputs): number => lengthwise(i),
  "place of a rig cast across over one cast along": (i: Inputs): number => acrossOverAlong(i),
  "first acceleration of a float held back, m/s²": (_: Inputs): number => heldBack(),
  "seconds in the window over all, the window being all": (_: Inputs): number => shareOfSeconds(),
} as const;
