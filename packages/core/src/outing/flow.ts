/** The gauge changed: how deep, quick and wide is the stop now? */

import { type Observation, waterColumn } from "../column/index.js";
import { type Grounds, joinGrounds } from "../sources/index.js";
import {
  heightAboveBed,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  requireWithin,
} from "../units/index.js";
import { byPairs } from "./flow-pairs.js";
import { bySection } from "./flow-section.js";
import {
  exponentScatter,
  type FlowEstimate,
  type FlowQuestion,
  geometryScaled,
  type MeasuredStop,
  type NoFlow,
} from "./flow-stop.js";

export type FlowShift =
  | (Pick<FlowEstimate, "depth" | "surfaceSpeed" | "width"> & {
      readonly kind: "shifted";
      /** The stop as it should be now, for `waterColumn`. */
      readonly observation: Observation;
      readonly grounds: Grounds;
    })
  | NoFlow;

/** Depth, surface speed and width of a stop at another discharge. Powers go from what was measured there: depth (Q′/Q)^f, speed (Q′/Q)^m,
 *  width (Q′/Q)^b. [LeopoldMaddock1953] A section gives the rise of the water by uniform flow, and the speed by its lanes. [Chow1959]
 *  Discharges 1e-6 to 1e6 m³/s whose ratio is 0.01 to 100. Throws QuantityError outside, and for fewer than three measurements to fit. */
export function shiftFlow(question: FlowQuestion): FlowShift {
  const { observation, measuredAt, now, method } = question;
  requireWithin("discharge when the stop was measured", measuredAt, 1e-6, 1e6, "m³/s");
  requireWithin("discharge now", now, 1e-6, 1e6, "m³/s");
  requireWithin("discharge now over that when the stop was measured", now / measuredAt, 0.01, 100);
  const confidence = question.confidence ?? 0.9;
  requireWithin("confidence", confidence, 0.5, 0.9999);
  const stop = { ...question, confidence, surfaceSpeed: waterColumn(observation).surfaceSpeed };
  const estimate =
    method.by === "published-exponents"
      ? byExponents(stop)
      : method.by === "pairs"
        ? byPairs(stop, method.pairs)
        : bySection(stop, method);
  if ("kind" in estimate) return estimate;
  const { depth, surfaceSpeed, width, ...grounds } = estimate;
  return {
    kind: "shifted",
    depth,
    surfaceSpeed,
    width,
    observation: shifted(stop, depth.value, surfaceSpeed.value),
    grounds: joinGrounds(grounds),
  };
}

function byExponents(stop: MeasuredStop): FlowEstimate {
  const { observation, width, surfaceSpeed } = stop;
  return {
    depth: geometryScaled(stop, "meanDepth", observation.depth, metres),
    surfaceSpeed: geometryScaled(stop, "meanSpeed", surfaceSpeed, metresPerSecond),
    width: width === undefined ? null : geometryScaled(stop, "width", width, metres),
    relations: ["LeopoldMaddock1953"],
    assumptions: [
      { name: "exponents of the stop", value: "mean of many stations", basis: "default" },
      {
        name: "scatter of the exponents",
        value: `standard deviation ${exponentScatter}`,
        basis: "assumption",
      },
      {
        name: "depth and surface speed at the stop",
        value: "go as the means of the section",
        basis: "assumption",
      },
    ],
    caveats: [],
  };
}

/** The observation at the new depth and speed: measured points keep their share of both, timed floats are spent. */
function shifted(stop: MeasuredStop, depth: Metres, surfaceSpeed: MetresPerSecond): Observation {
  const { timedFloats: _, points, ...rest } = stop.observation;
  if (points === undefined) return { ...rest, depth, surfaceSpeed };
  const rise = depth / rest.depth;
  const quicker = stop.surfaceSpeed > 0 ? surfaceSpeed / stop.surfaceSpeed : 1;
  const moved = points.map((point) => ({
    heightAboveBed: heightAboveBed(point.heightAboveBed * rise),
    speed: metresPerSecond(point.speed * quicker),
  }));
  return { ...rest, depth, surfaceSpeed, points: moved };
}
