/** Why a setup does what it does, and what to watch. */

import { sinkerKernel, submergedWeight } from "../forces/index.js";
import { tippetStrength } from "../tackle/index.js";
import { newtons } from "../units/index.js";
import type { Caution, CautionCode, Change, ForceName, Judgement, Pieces, Stop, Why } from "./stop.js";

/** The forces on the settled rig, the greatest first, and what the greatest does. */
export function whyOf(judgement: Judgement, { column }: Stop): Why {
  const { rig, settled } = judgement;
  let weight = 0;
  let sinkerDrag = 0;
  settled.sinkers.forEach((state, i) => {
    const sinker = rig.sections[i]?.sinker;
    if (sinker === undefined) return;
    weight += submergedWeight(sinker, column.water);
    sinkerDrag -= sinkerKernel(sinker, column.water)(Math.abs(state.excess), 0) * state.excess;
  });
  const size: Record<ForceName, number> = {
    "sinker-weight": weight,
    "sinker-drag": Math.abs(sinkerDrag),
    "float-drag": Math.abs(settled.tow),
    "line-drag": Math.abs(-settled.tow - sinkerDrag - (settled.bed?.friction ?? 0)),
  };
  const names: readonly ForceName[] = ["sinker-weight", "sinker-drag", "float-drag", "line-drag"];
  const forces = [...names]
    .sort((a, b) => size[b] - size[a])
    .map((name) => ({ name, size: newtons(size[name]) }));
  const dominant = forces[0]?.name ?? "sinker-weight";
  return { dominant, forces, text: whyText(dominant, size, judgement) };
}

function whyText(
  dominant: ForceName,
  size: Readonly<Record<ForceName, number>>,
  { settled }: Judgement,
): string {
  const mN = (force: number): string => `${(force * 1000).toPrecision(2)} mN`;
  const lean = Math.round((Math.abs(settled.lean) * 180) / Math.PI);
  if (settled.regime === "drowned")
    return `a load of ${mN(settled.load)} against a reserve of ${mN(settled.reserve)}: the dry goes under`;
  if (settled.regime === "on-bed")
    return "the line is longer than the water is deep here: the nymph lies on the bed";
  if (dominant === "sinker-weight") {
    const against = size["line-drag"] > size["sinker-drag"] ? "line" : "nymph";
    const drag = Math.max(size["line-drag"], size["sinker-drag"]);
    return `weight ${mN(size["sinker-weight"])} rules, drag on the ${against} ${mN(drag)}: it hangs ${lean}° off plumb`;
  }
  if (dominant === "float-drag")
    return `the surface tows the dry with ${mN(size["float-drag"])}, more than the weight holds: it leans ${lean}°`;
  if (dominant === "line-drag")
    return `the stream on the line, ${mN(size["line-drag"])}, rules: it leans ${lean}°`;
  return `the stream on the nymph, ${mN(size["sinker-drag"])}, rules: it leans ${lean}°`;
}

/** What to watch with a setup. */
export function cautionsOf(
  judgement: Judgement,
  stop: Stop,
  window: { readonly low: number; readonly high: number },
  limits: Limits,
): readonly Caution[] {
  const { settled, settling, floatMargin, tippet } = judgement;
  const lowest = settled.sinkers.at(-1);
  const height = lowest?.heightAboveBed ?? 0;
  const found: Caution[] = [];
  const add = (when: boolean, code: CautionCode, text: string): void => {
    if (when) found.push({ code, text });
  };
  const strength = tippetStrength(tippet);
  add(settled.regime === "drowned", "drowns", "the dry goes under");
  add(
    settled.regime !== "drowned" && floatMargin < limits.leastMargin,
    "margin-below-least",
    `float margin ${floatMargin.toFixed(1)}, below ${limits.leastMargin}`,
  );
  add(
    floatMargin >= limits.leastMargin && floatMargin < 1.25 * limits.leastMargin,
    "margin-thin",
    `float margin only ${floatMargin.toFixed(1)}: keep the dry dressed`,
  );
  add(settled.regime === "on-bed", "touches-bed", "the nymph drags on the bed: expect to lose it");
  add(
    judgement.dropper >= stop.column.depth,
    "longer-than-deep",
    "the dropper is longer than the water is deep",
  );
  add(
    settled.regime === "hanging" && height < 0.05,
    "close-to-bed",
    "close to the bed: it will catch the higher stones",
  );
  add(
    height < window.low || height > window.high,
    "outside-window",
    `settles ${height < window.low ? "below" : "above"} the fish's window`,
  );
  add(!settling.settles, "does-not-settle", "does not settle within the run");
  add(Math.abs(settled.lean) > Math.PI / 6, "leans-far", "hangs more than 30° off plumb");
  add(
    (lowest?.excess ?? 0) > limits.excessScale,
    "towed-fast",
    "towed fast through slow water: hold the dry back",
  );
  add(
    stop.surface === "glassy" && judgement.splash > limits.hiddenSplash,
    "splash-on-glassy-water",
    "its splash shows on glassy water: land it well above the fish",
  );
  add(
    stop.leaderStrength === undefined,
    "leader-strength-unknown",
    "nobody said what the leader bears: it has to be stronger than the dropper",
  );
  add(
    stop.leaderStrength !== undefined && strength > stop.leaderStrength,
    "dropper-may-outlast-leader",
    "the dropper may outlast the leader: all would be lost on a snag",
  );
  return found;
}

export interface Limits {
  readonly leastMargin: number;
  readonly excessScale: number;
  readonly hiddenSplash: number;
}

/** For everyone at the water, whatever the setup. */
export const standingCautions: readonly string[] = [
  "Two flies are allowed only where the local rules say so; nobody stated them here, so that stays unknown.",
  "Wading: these numbers say nothing of your footing. Belt, company, a way out downstream; rising or cold water says stop; local advice comes first.",
  "In warm water leave trout and salmon alone; local closures come first.",
  "Two hooks on one line: wear glasses, pinch the barbs, keep others clear of the cast.",
];

/** One change of one piece, and in words what it costs. */
export function changeBetween(from: Judgement, to: Judgement, part: keyof Pieces): Omit<Change, "gain"> {
  const { dry, nymph, tippet, dropper } = to;
  return { part, to: { dry, nymph, tippet, dropper }, cost: costOf(from, to) };
}

function costOf(from: Judgement, to: Judgement): string {
  const costs: string[] = [];
  if (to.floatMargin < 0.95 * from.floatMargin)
    costs.push(`float margin ${from.floatMargin.toFixed(1)} to ${to.floatMargin.toFixed(1)}`);
  if (to.splash > 1.05 * from.splash) costs.push("a louder splash");
  if (to.dropper > from.dropper) costs.push("a longer dropper to control");
  const [before, after] = [tippetStrength(from.tippet), tippetStrength(to.tippet)];
  if (after < 0.95 * before) costs.push(`a dropper ${Math.round(100 * (1 - after / before))} % weaker`);
  const [low, lower] = [from, to].map((j) => j.settled.sinkers.at(-1)?.heightAboveBed ?? 0);
  if ((lower ?? 0) < 0.1 && (lower ?? 0) < (low ?? 0)) costs.push("nearer the bed");
  return costs.length > 0 ? costs.join(", ") : "nothing that shows in the numbers";
}
