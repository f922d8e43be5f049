/** How what was measured at a stream became its discharge, its rating and its geometry. */

import type {
  Bed,
  HydraulicGeometry,
  MeasuredDischarge,
  Metres,
  RatingCurve,
  ResistanceAnswer,
  StreamState,
} from "@plumbdrift/core";
import { shearVelocityOf } from "@plumbdrift/core";
import { raise } from "@plumbdrift/core/elementary";
import { type Step, si, step } from "../explain.js";

/** Panels that carry water, and their sum. */
export function dischargeSteps({
  panels,
  discharge,
  area,
  meanSpeed,
  relation,
}: MeasuredDischarge): readonly Step[] {
  const wet = panels.filter((panel) => panel.discharge !== 0);
  const Q = si("discharge", discharge);
  return [
    ...wet.map((panel, i) =>
      step(`q${i + 1} = v${i + 1} * A${i + 1}`, relation, {
        [`q${i + 1}`]: si("discharge", panel.discharge),
        [`v${i + 1}`]: si("speed", panel.speed),
        [`A${i + 1}`]: si("area", panel.area),
      }),
    ),
    ...(wet.length === 0
      ? []
      : [
          step(`Q = ${wet.map((_, i) => `q${i + 1}`).join(" + ")}`, relation, {
            Q,
            ...Object.fromEntries(wet.map((panel, i) => [`q${i + 1}`, si("discharge", panel.discharge)])),
          }),
        ]),
    step("V = Q / A", undefined, { V: si("speed", meanSpeed), Q, A: si("area", area) }),
  ];
}

/** The rating at stages that carry water; at the highest gauged one where none is asked. */
export function ratingSteps(rating: RatingCurve, asked: readonly Metres[]): readonly Step[] {
  const { coefficient: C, exponent: b, zeroFlowStage, stages } = rating;
  const h0 = si("length", zeroFlowStage);
  const above = asked.filter((stage) => stage > zeroFlowStage);
  return (above.length === 0 ? [stages.max] : above).flatMap((stage, i) => {
    const H = stage - zeroFlowStage;
    const [h, rise, Q] = [`h${i + 1}`, `H${i + 1}`, `Q${i + 1}`];
    return [
      step(`${rise} = ${h} - h0`, undefined, { [rise]: si("length", H), [h]: si("length", stage), h0 }),
      step(`${Q} = C * ${rise}^b`, "ISO1100", {
        [Q]: si("discharge", C * raise(H, b)),
        C,
        [rise]: si("length", H),
        b,
      }),
    ];
  });
}

/** The three powers at each discharge, and the discharge that they make together. */
export function streamSteps(
  { width, meanDepth, meanSpeed, relation }: HydraulicGeometry,
  states: readonly StreamState[],
  discharges: readonly number[],
): readonly Step[] {
  return states.flatMap((state, i) => {
    const Q = { [`Q${i + 1}`]: si("discharge", discharges[i]!) };
    const power = (name: string, letters: string, said: Known, { coefficient, exponent }: GeometryPower) => {
      const [a = "", b = ""] = letters;
      const symbols = { [name]: said, [a]: coefficient, ...Q, [b]: exponent };
      return step(`${name} = ${a} * Q${i + 1}^${b}`, relation, symbols);
    };
    const [w, d, V] = [`w${i + 1}`, `d${i + 1}`, `V${i + 1}`];
    const [wide, deep, fast] = [
      si("length", state.width.value),
      si("length", state.meanDepth.value),
      si("speed", state.meanSpeed.value),
    ];
    return [
      power(w, "ab", wide, width),
      power(d, "cf", deep, meanDepth),
      power(V, "km", fast, meanSpeed),
      step(`Q${i + 1} = ${w} * ${d} * ${V}`, undefined, { ...Q, [w]: wide, [d]: deep, [V]: fast }),
    ];
  });
}

type Known = ReturnType<typeof si>;
type GeometryPower = HydraulicGeometry["width"];

/** What each law makes of the same water: its velocity ratio, its n and, on a slope, its speed. */
export function resistanceSteps(answer: ResistanceAnswer, { hydraulicRadius, slope }: Bed): readonly Step[] {
  const R = si("length", hydraulicRadius);
  const shear = slope === undefined ? undefined : si("speed", shearVelocityOf(hydraulicRadius, slope));
  const estimates = answer.kind === "none" ? [] : answer.estimates;
  return [
    ...(shear === undefined || slope === undefined
      ? []
      : [step("uf = sqrt(9.80665 * R * S)", undefined, { uf: shear, R, S: slope })]),
    ...estimates.flatMap(({ relation, velocityRatio, frictionFactor, n }, i) => {
      const [v, f, nn, V] = [`v${i + 1}`, `f${i + 1}`, `n${i + 1}`, `V${i + 1}`];
      return [
        step(`${v} = sqrt(8 / ${f})`, relation, { [v]: velocityRatio, [f]: frictionFactor }),
        step(`${nn} = R^(1 / 6) / (${v} * sqrt(9.80665))`, "Chow1959", { [nn]: n, R, [v]: velocityRatio }),
        ...(shear === undefined
          ? []
          : [
              step(`${V} = ${v} * uf`, undefined, {
                [V]: si("speed", velocityRatio * shear.value),
                [v]: velocityRatio,
                uf: shear,
              }),
            ]),
      ];
    }),
  ];
}
