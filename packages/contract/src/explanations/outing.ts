/** How takes were weighed, and how a stop was carried over to another discharge. */

import {
  type FlowShift,
  geometryExponents,
  type Observation,
  type Takes,
  type WeighedTakes,
  waterColumn,
} from "@plumbdrift/core";
import { type Step, si, step } from "../explain.js";
import { columnSteps } from "./column.js";

/** From counts to the beta variable whose tail is the probability. */
export function takesSteps({ probability, observedRatio }: WeighedTakes, given: Takes): readonly Step[] {
  const { dry, nymph, effort, prior = { dry: 0.5, nymph: 0.5 }, threshold = 3, countMisses = true } = given;
  const counted = ({ takes, missed = 0 }: Takes["dry"]): number => takes + (countMisses ? missed : 0);
  const [N1, N2] = [counted(dry), counted(nymph)];
  const fished = (amount: number | undefined) =>
    effort?.kind === "time" ? si("time", amount ?? 1) : (amount ?? 1);
  const [E1, E2] = [fished(effort?.dry), fished(effort?.nymph)];
  const [a, b] = [prior.dry + N1, prior.nymph + N2];
  const [e1, e2] = [effort?.dry ?? 1, effort?.nymph ?? 1];
  const x = (threshold * e1) / (threshold * e1 + e2);
  return [
    ...(observedRatio === null
      ? []
      : [step("o = N1 * E2 / (N2 * E1)", undefined, { o: observedRatio, N1, N2, E1, E2 })]),
    step("a = p1 + N1", "Jeffreys1946", { a, p1: prior.dry, N1 }),
    step("b = p2 + N2", "Jeffreys1946", { b, p2: prior.nymph, N2 }),
    step("x = t * E1 / (t * E1 + E2)", "DLMF", { x, t: threshold, E1, E2 }),
    step("P = 1 - betainc(a, b, x)", "DLMF", { P: probability, a, b, x }),
  ];
}

interface Carried {
  readonly before: Observation;
  readonly width: number | undefined;
  readonly measuredAt: number;
  readonly now: number;
  /** By the mean exponents of many stations, not by what was noted at the stop. */
  readonly published: boolean;
}

/** The powers that carry a stop to the new discharge, then its water there. */
export function shiftSteps(
  shift: FlowShift,
  { before, width, measuredAt, now, published }: Carried,
): readonly Step[] {
  const q = now / measuredAt;
  const ratio = step("q = Q2 / Q1", undefined, {
    q,
    Q2: si("discharge", now),
    Q1: si("discharge", measuredAt),
  });
  if (shift.kind !== "shifted") return [ratio];
  const { meanDepth: fd, meanSpeed: fv, width: fw } = geometryExponents["at a station"];
  const speed = waterColumn(before).surfaceSpeed;
  const powers = [
    step("h = h1 * q^fd", "LeopoldMaddock1953", {
      h: si("length", shift.depth.value),
      h1: si("length", before.depth),
      q,
      fd,
    }),
    step("us = us1 * q^fv", "LeopoldMaddock1953", {
      us: si("speed", shift.surfaceSpeed.value),
      us1: si("speed", speed),
      q,
      fv,
    }),
    ...(width === undefined || shift.width === null
      ? []
      : [
          step("w = w1 * q^fw", "LeopoldMaddock1953", {
            w: si("length", shift.width.value),
            w1: si("length", width),
            q,
            fw,
          }),
        ]),
  ];
  return [
    ratio,
    ...(published ? powers : []),
    ...columnSteps(waterColumn(shift.observation), shift.observation),
  ];
}
