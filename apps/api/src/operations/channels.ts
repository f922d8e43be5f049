/** The operations for the hydraulics of a channel, bound to the core. */

import * as contract from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";
import { computation } from "../computation.js";
import type { Engine } from "../engine.js";
import type { Group } from "./index.js";

type Id =
  | "carryFlow"
  | "findDepth"
  | "readEnergy"
  | "jumpFlow"
  | "traceSurface"
  | "spreadFlow"
  | "measureDischarge"
  | "fitRating"
  | "scaleStream"
  | "estimateResistance";

export const engine: Pick<Engine, Id> = {
  carryFlow: ({ section, friction, slope, depth, water }) => {
    const channel = { section, friction, slope };
    const discharge = core.uniformDischarge(channel, depth);
    return {
      geometry: core.sectionGeometry(section, depth),
      discharge,
      ...stateAt({ section, discharge }, depth),
      shear: core.bedShear(channel, depth, water.density),
      zones:
        friction.law === "manning-zones"
          ? {
              n: core.compositeRoughness(section, depth, friction.method),
              ...core.velocityCoefficients(section, depth),
            }
          : null,
    };
  },
  findDepth: ({ section, friction, slope, discharge, coefficients }) => {
    const flow = { section, discharge, ...coefficients };
    const normal = core.normalDepth({ section, friction, slope }, discharge);
    const critical = core.criticalDepth(flow);
    return {
      normal:
        normal.kind === "found"
          ? { kind: "found", flows: normal.depths.map((depth) => ({ depth, ...stateAt(flow, depth) })) }
          : normal,
      critical:
        critical.kind === "found"
          ? { ...critical, slope: core.frictionSlope({ section, friction }, critical.depth, discharge) }
          : critical,
    };
  },
  readEnergy: ({ flow, depth }) => {
    const specificEnergy = core.specificEnergy(flow, depth);
    return {
      depth,
      ...stateAt(flow, depth),
      specificEnergy,
      specificForce: core.specificForce(flow, depth),
      least: core.minimumEnergy(flow),
      alternates: core.alternateDepths(flow, specificEnergy),
      conjugates: core.conjugateDepths(flow, depth),
    };
  },
  jumpFlow: ({ flow, before, water }) => core.hydraulicJump(flow, before, water.density),
  traceSurface: ({ river }) => {
    const critical = core.criticalDepth(river);
    if (critical.kind !== "found") return critical;
    return { kind: "traced", ...core.surfaceProfile(river) };
  },
  spreadFlow: ({ discharge, lanes, ...channel }) => core.lateralFlow(channel, discharge, lanes),
  measureDischarge: ({ verticals, method, uncertainty }) => {
    const measured =
      method === "mean-section"
        ? core.meanSection(verticals)
        : core.midSection(verticals, method === "mid-section, triangle" ? "triangle" : "half-spacing");
    const stated =
      uncertainty && core.dischargeUncertainty(measured, uncertainty, uncertainty.coverageFactor);
    return { measured, uncertainty: stated ?? null };
  },
  fitRating: ({ gaugings, zeroFlow, stages, confidence }) => {
    const rating = core.rateStage(gaugings, zeroFlow);
    const readings = stages.map((stage) =>
      stage > rating.zeroFlowStage ? core.ratedDischarge(rating, stage, confidence) : null,
    );
    return { rating, readings };
  },
  scaleStream: ({ measurements, exponents = "at a station", discharges, confidence }) => {
    const [only, second] = measurements;
    const geometry =
      only !== undefined && second === undefined
        ? core.geometryOf(only, exponents)
        : core.fitGeometry(measurements);
    return { geometry, states: discharges.map((q) => core.streamAt(geometry, q, confidence)) };
  },
  estimateResistance: core.resistanceOf,
};

export const bind: Group<Id> = (given) => ({
  carryFlow: computation(contract.carryFlow, given.carryFlow ?? engine.carryFlow),
  findDepth: computation(contract.findDepth, given.findDepth ?? engine.findDepth),
  readEnergy: computation(contract.readEnergy, given.readEnergy ?? engine.readEnergy),
  jumpFlow: computation(contract.jumpFlow, given.jumpFlow ?? engine.jumpFlow),
  traceSurface: computation(contract.traceSurface, given.traceSurface ?? engine.traceSurface),
  spreadFlow: computation(contract.spreadFlow, given.spreadFlow ?? engine.spreadFlow),
  measureDischarge: computation(contract.measureDischarge, given.measureDischarge ?? engine.measureDischarge),
  fitRating: computation(contract.fitRating, given.fitRating ?? engine.fitRating),
  scaleStream: computation(contract.scaleStream, given.scaleStream ?? engine.scaleStream),
  estimateResistance: computation(
    contract.estimateResistance,
    given.estimateResistance ?? engine.estimateResistance,
  ),
});

/** How a discharge runs at a depth. */
function stateAt(
  flow: core.Flow,
  depth: core.Metres,
): {
  readonly speed: core.MetresPerSecond;
  readonly froude: number;
  readonly flow: core.FlowClass;
} {
  const froude = core.froudeNumber(flow, depth);
  const speed = core.metresPerSecond(flow.discharge / core.sectionGeometry(flow.section, depth).area);
  return { speed, froude, flow: core.flowClass(froude) };
}
