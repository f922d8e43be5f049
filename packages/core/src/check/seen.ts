/** A rig at a stop as the questions see it: settled, and its whole drift computed, only when somebody asks. */

import { type Settled, settle } from "../drift/index.js";
import { type FishWindow, fishWindow } from "../lie/index.js";
import { type Rig, rig } from "../rig/index.js";
import { type Judgement, judge, type Pieces } from "../setup/index.js";
import { type Grounds, joinGrounds } from "../sources/index.js";
import { buildDry, buildNymph, buildTippet } from "../tackle/index.js";
import type { CheckStop } from "./finding.js";

export interface Seen {
  readonly pieces: Pieces;
  readonly stop: CheckStop;
  readonly window: FishWindow;
  readonly rig: Rig;
  readonly settled: Settled;
  readonly judged: () => Judgement;
  /** What somebody has asked for so far. */
  readonly asked: () => { readonly settled: boolean; readonly judged: boolean };
  readonly runLength: number;
  readonly excessScale: number;
  readonly leastMargin: number;
  /** Of the bodies. */
  readonly grounds: Grounds;
}

/** What of a stop a settled rig depends on, and a drift beside. */
const settling = ["column", "held", "wind"] as const;
const drifting = [...settling, "cast", "runLength", "lie", "excessScale"] as const;

/** A rig at a stop. It takes over what is the same as of another rig: where only rules or slack change, nothing moves. */
export function look(pieces: Pieces, stop: CheckStop, other?: Seen): Seen {
  const [dry, nymph] = [buildDry(pieces.dry), buildNymph(pieces.nymph)];
  const tippet = buildTippet(pieces.tippet, pieces.dropper);
  const made = rig(dry.body, { line: tippet.body, sinker: nymph.body });
  const window = fishWindow(stop.column, stop.lie);
  const { runLength = 6, excessScale = 0.3, leastMargin = 1.5 } = stop;
  const held = stop.held === undefined ? {} : { held: stop.held };
  const wind = stop.wind === undefined ? {} : { wind: stop.wind };
  const alike = (keys: readonly (keyof CheckStop)[]): Seen | undefined =>
    other?.pieces === pieces && keys.every((key) => other.stop[key] === stop[key]) ? other : undefined;
  let settled: Settled | undefined;
  let judgement: Judgement | undefined;
  const hung = (): Settled => {
    settled ??=
      alike(settling)?.settled ?? settle(made, stop.column, { ...held, ...wind, alone: other !== undefined });
    return settled;
  };
  return {
    pieces,
    stop,
    window,
    rig: made,
    get settled() {
      return hung();
    },
    judged: () => {
      judgement ??=
        alike(drifting)?.judged() ??
        judge({ stop, window, runLength, excessScale, settled: hung(), ...held }, pieces);
      return judgement;
    },
    asked: () => ({ settled: settled !== undefined, judged: judgement !== undefined }),
    runLength,
    excessScale,
    leastMargin,
    grounds: joinGrounds(dry.grounds, nymph.grounds, tippet.grounds),
  };
}
