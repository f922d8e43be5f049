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

/** A rig at a stop. What does not change by an alteration of another one is not computed again: where only rules or slack do, nothing moves. */
export function look(pieces: Pieces, stop: CheckStop, altered?: Seen): Seen {
  const [dry, nymph] = [buildDry(pieces.dry), buildNymph(pieces.nymph)];
  const tippet = buildTippet(pieces.tippet, pieces.dropper);
  const made = rig(dry.body, { line: tippet.body, sinker: nymph.body });
  const window = fishWindow(stop.column, stop.lie);
  const { runLength = 6, excessScale = 0.3, leastMargin = 1.5 } = stop;
  const held = stop.held === undefined ? {} : { held: stop.held };
  const wind = stop.wind === undefined ? {} : { wind: stop.wind };
  // no alteration is of the water, the wind or the fish
  const hung = altered?.pieces === pieces && altered.stop.held === stop.held ? altered : undefined;
  const drifted = hung?.stop.cast === stop.cast && hung?.stop.runLength === stop.runLength ? hung : undefined;
  const alone = altered !== undefined;
  let settled: Settled | undefined;
  let judgement: Judgement | undefined;
  const seen: Seen = {
    pieces,
    stop,
    window,
    rig: made,
    get settled() {
      settled ??= hung?.settled ?? settle(made, stop.column, { ...held, ...wind, alone });
      return settled;
    },
    judged: () => {
      const { settled } = seen;
      judgement ??=
        drifted?.judged() ?? judge({ stop, window, runLength, excessScale, settled, ...held }, pieces);
      return judgement;
    },
    asked: () => ({ settled: settled !== undefined, judged: judgement !== undefined }),
    runLength,
    excessScale,
    leastMargin,
    grounds: joinGrounds(dry.grounds, nymph.grounds, tippet.grounds),
  };
  return seen;
}
