/** A stop at another discharge: the gauge, the shift, then wading and setups at the new flow. */

import type { ShiftedFlow } from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";
import type { Engine } from "../engine.js";

export const shiftFlow: Engine["shiftFlow"] = ({ question, flows, wade, stop }) => {
  const gauge =
    "gauge" in flows
      ? { measuredAt: core.readGauge(flows.gauge.measuredAt), now: core.readGauge(flows.gauge.now) }
      : null;
  const given = gauge === null && "now" in flows ? flows : null;
  const discharge = (at: "measuredAt" | "now"): core.CubicMetresPerSecond | null => {
    const read = gauge?.[at];
    return read === undefined ? (given?.[at] ?? null) : read.kind === "read" ? read.discharge : null;
  };
  const measuredAt = discharge("measuredAt");
  const now = discharge("now");
  const nothing = { gauge, wading: null, ranking: null, grounds: core.joinGrounds() };
  if (measuredAt === null) return { ...nothing, shift: { kind: "gauge-silent", at: "measuredAt" } };
  if (now === null) return { ...nothing, shift: { kind: "gauge-silent", at: "now" } };
  const shift = core.shiftFlow({ ...question, measuredAt, now });
  if (shift.kind !== "shifted") return { ...nothing, shift };
  return { gauge, shift, ...outlook(core.waterColumn(question.observation), shift, wade, stop) };
};

type Shifted = Extract<core.FlowShift, { kind: "shifted" }>;
type Asked = Parameters<Engine["shiftFlow"]>[0];

function outlook(
  before: core.Column,
  { observation, grounds }: Shifted,
  wade: Asked["wade"],
  stop: Asked["stop"],
): Pick<ShiftedFlow, "wading" | "ranking" | "grounds"> {
  const now = core.waterColumn(observation);
  const wading = { before: wadeIn(before, wade), now: wadeIn(now, wade) };
  const ranking = stop === null ? null : core.rankSetups({ ...stop, column: now });
  const all = [grounds, now.grounds, wading.now.grounds, ...(ranking === null ? [] : [ranking.grounds])];
  return { wading, ranking, grounds: core.joinGrounds(...all) };
}

function wadeIn({ depth, meanSpeed }: core.Column, wade: Asked["wade"]): core.Wading {
  return core.wade({ ...wade, depth, speed: meanSpeed });
}
