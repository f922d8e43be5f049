/** A rig at a stop as the questions see it: settled at once, its whole drift only when somebody asks. */

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
  /** Whether somebody has asked for its drift. */
  readonly drifted: () => boolean;
  readonly runLength: number;
  readonly excessScale: number;
  readonly leastMargin: number;
  /** Of the bodies. */
  readonly grounds: Grounds;
}

export function look(pieces: Pieces, stop: CheckStop): Seen {
  const [dry, nymph] = [buildDry(pieces.dry), buildNymph(pieces.nymph)];
  const tippet = buildTippet(pieces.tippet, pieces.dropper);
  const made = rig(dry.body, { line: tippet.body, sinker: nymph.body });
  const window = fishWindow(stop.column, stop.lie);
  const { runLength = 6, excessScale = 0.3, leastMargin = 1.5 } = stop;
  const held = stop.held === undefined ? {} : { held: stop.held };
  const wind = stop.wind === undefined ? {} : { wind: stop.wind };
  let judgement: Judgement | undefined;
  return {
    pieces,
    stop,
    window,
    rig: made,
    settled: settle(made, stop.column, { ...held, ...wind }),
    judged: () => {
      judgement ??= judge({ stop, window, runLength, excessScale, ...held }, pieces);
      return judgement;
    },
    drifted: () => judgement !== undefined,
    runLength,
    excessScale,
    leastMargin,
    grounds: joinGrounds(dry.grounds, nymph.grounds, tippet.grounds),
  };
}
