/** The whole demo as text: the water, the best setups, the rig in hand, a drawing. */

import type { RankSetupsResponse, ReadColumnResponse } from "@plumbdrift/contract";
import { columnPicture } from "./column-picture.js";
import { rigPicture } from "./rig-picture.js";
import { heading, said, short, wrapped } from "./say.js";
import { setupText, tiedText } from "./setup-text.js";

export function demoText(water: ReadColumnResponse, ranking: RankSetupsResponse): string {
  const best = ranking.setups[0];
  const cautions = common(ranking);
  return [
    wrapped("Larkspur Bend: an invented stop on an invented river, and invented flies."),
    heading("The water"),
    waterText(water),
    columnPicture(water),
    heading(`What to tie on: the best ${ranking.setups.length} of ${ranking.candidates}`),
    boxText(ranking),
    ...cautions.map((text) => wrapped(`Caution for all of them: ${text}.`)),
    ...ranking.setups.map((setup) => `\n${setupText(setup, `${setup.place}. `, cautions)}`),
    heading("The rig in hand"),
    handText(ranking, cautions),
    ...(best
      ? [heading("The best setup, settled; the stream runs to the right"), drawing(best, ranking, water)]
      : []),
    heading("Before you wade in"),
    ...ranking.cautions.map((text) => wrapped(text, "  ", "- ")),
    "",
    groundsText(ranking),
  ].join("\n");
}

function waterText({ column }: ReadColumnResponse): string {
  const { surfaceSpeed, surfaceSpeedUncertainty: uncertainty } = column;
  const give = uncertainty ? ` (standard uncertainty ${said(uncertainty, 1)}, from timed floats)` : "";
  return wrapped(
    `${said(column.depth)} deep at ${said(column.temperature, 3)}, ${said(surfaceSpeed)} at the surface${give}. ` +
      `Law of speed: ${column.law}. Mean over the depth ${said(column.meanSpeed)}, ${column.surfaceRatio.toFixed(2)} of the surface. ` +
      `Speed against height above the bed:`,
  );
}

const refusals = {
  "float-margin": "whose dry would carry too little more than it must",
  "dropper-longer-than-depth": "with a dropper longer than the depth",
  "dropper-outlasts-leader": "whose dropper might outlast the leader",
  "never-in-window": "whose nymph never comes into the window",
} as const;

function boxText({ refused, window }: RankSetupsResponse): string {
  const out = refused.map(({ reason, count }) => `${count} ${refusals[reason]}`).join(", ");
  return wrapped(
    `The fish holds ${short(window.holding)} off the bed and takes from ${short(window.low)} to ${short(window.high)}. ` +
      (out === "" ? "No candidate was refused." : `Refused: ${out}.`),
  );
}

/** Cautions that hold for every setup: said once. */
function common({ setups }: RankSetupsResponse): readonly string[] {
  const texts = setups.map(({ cautions }) => cautions.map(({ text }) => text));
  return (texts[0] ?? []).filter((text) => texts.every((others) => others.includes(text)));
}

function handText({ inHand, candidates }: RankSetupsResponse, cautions: readonly string[]): string {
  if (inHand === undefined) return "None was given.";
  const about = inHand.placeIsExact ? "" : "about ";
  return setupText(inHand, `Place ${about}${inHand.place} among ${candidates}: `, cautions);
}

function drawing(
  best: RankSetupsResponse["setups"][number],
  ranking: RankSetupsResponse,
  water: ReadColumnResponse,
): string {
  const key = "O dry, @ nymph, : heights at which the fish takes; right: speed of the water";
  return [wrapped(tiedText(best)), "", rigPicture(best, ranking.window, water), wrapped(key)].join("\n");
}

function groundsText({ meta, caveats }: RankSetupsResponse): string {
  const outside = caveats.length === 0 ? "none" : String(caveats.length);
  return wrapped(
    `Engine ${meta.engine}; ${meta.relations.length} relations and ${meta.assumptions.length} assumptions went into this; ` +
      `relations used outside their published range: ${outside}.`,
  );
}
