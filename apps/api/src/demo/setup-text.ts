/** One setup in words. */

import type { RankSetupsResponse } from "@plumbdrift/contract";
import { said, short, wrapped } from "./say.js";

type Setup = RankSetupsResponse["setups"][number];

const indent = "   ";

export function tiedText({ tied }: Setup): string {
  const { dry, dropper, tippet, nymph } = tied;
  return `${dry.name}, ${short(dropper)} of ${tippet.name}, ${nymph.name}`;
}

/** What to tie on, how it fishes, how to present it, why, and what would help most. `already` are cautions that need no repeating. */
export function setupText(setup: Setup, title: string, already: readonly string[]): string {
  const { settling, why, next, cautions } = setup;
  const settles =
    settling.settles === "yes"
      ? `settled after ${said(settling.time)} and ${said(settling.distance)}`
      : "does not settle within the run";
  const paragraphs = [
    `${said(setup.secondsInWindow)} in the fish's window, worth ${said(setup.effectiveSeconds)} of drift in step; ${settles}.`,
    hangText(setup),
    `Present: ${landText(setup)} ${holdText(setup.hold)}`,
    `Why: ${why.text}.`,
    nextText(next),
    ...cautions.filter(({ text }) => !already.includes(text)).map(({ text }) => `Caution: ${text}.`),
  ];
  return [wrapped(tiedText(setup), indent, title), ...paragraphs.map((p) => wrapped(p, indent))].join("\n");
}

function hangText({ settled, floatMargin }: Setup): string {
  const lowest = settled.sinkers.at(-1);
  const height = lowest ? `${short(lowest.heightAboveBed)} off the bed` : "";
  const margin = floatMargin === undefined ? "" : `, float margin ${floatMargin.toFixed(1)}`;
  const name = {
    hanging: "Hangs",
    "on-bed": "Lies on the bed",
    drowned: "Drowns",
    "slack-water": "Hangs plumb",
  };
  const towed = lowest ? `, ${said(lowest.excess)} quicker than its own water` : "";
  return `${name[settled.regime]} ${height}, lean ${said(settled.lean)}${towed}${margin}.`;
}

function nextText(next: Setup["next"]): string {
  if (next === undefined) return "Next: no single change of one piece would gain more.";
  return `Next: ${next.from} -> ${next.to} gains ${said(next.gain)}; it costs ${next.cost}.`;
}

function landText({ landAbove }: Setup): string {
  if (landAbove === undefined) return "it never settles here: no place to land it is far enough upstream.";
  return `land it ${said(landAbove)} upstream of the fish.`;
}

function holdText(hold: Setup["hold"]): string {
  switch (hold.reach) {
    case "unneeded":
      return "No hold is needed.";
    case "unreachable":
      return `No hold brings it in step: ${hold.reason}.`;
    case "held": {
      const { slip } = hold.point;
      return `Hold back until the dry rides ${said({ ...slip, value: Math.abs(slip.value) })} slower than the foam.`;
    }
  }
}
