/** What each operation asks of the core: one call, from understood input to plain result. */

import * as contract from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";
import { type Computation, computation } from "./computation.js";
import { channels } from "./engine-channels.js";
import { shiftFlow } from "./engine-flow.js";

type Call<O> =
  O extends contract.Operation<infer Input, infer Result, infer _A> ? (input: Input) => Result : never;

export interface Engine {
  readonly readColumn: Call<typeof contract.readColumn>;
  readonly settleRig: Call<typeof contract.settleRig>;
  readonly driftRig: Call<typeof contract.driftRig>;
  readonly holdRig: Call<typeof contract.holdRig>;
  readonly rankSetups: Call<typeof contract.rankSetups>;
  readonly checkRig: Call<typeof contract.checkRig>;
  readonly weighTakes: Call<typeof contract.weighTakes>;
  readonly shiftFlow: Call<typeof contract.shiftFlow>;
  readonly adjustRig: Call<typeof contract.adjustRig>;
  readonly carryFlow: Call<typeof contract.carryFlow>;
  readonly findDepth: Call<typeof contract.findDepth>;
  readonly readEnergy: Call<typeof contract.readEnergy>;
  readonly jumpFlow: Call<typeof contract.jumpFlow>;
  readonly traceSurface: Call<typeof contract.traceSurface>;
  readonly spreadFlow: Call<typeof contract.spreadFlow>;
  readonly measureDischarge: Call<typeof contract.measureDischarge>;
  readonly fitRating: Call<typeof contract.fitRating>;
  readonly scaleStream: Call<typeof contract.scaleStream>;
  readonly estimateResistance: Call<typeof contract.estimateResistance>;
}

export const engine: Engine = {
  readColumn: ({ observation }) => core.waterColumn(observation),
  settleRig: ({ rig, observation, options }) => core.settle(rig, core.waterColumn(observation), options),
  driftRig: ({ rig, observation, lie, options }) => {
    const column = core.waterColumn(observation);
    const fish = core.fishWindow(column, lie);
    return { drift: core.drift(rig, column, { window: fish, ...options }), fish };
  },
  holdRig: ({ rig, observation, options }) => core.hold(rig, core.waterColumn(observation), options),
  rankSetups: ({ observation, presented: _, ...stop }) =>
    core.rankSetups({ ...stop, column: core.waterColumn(observation) }),
  checkRig: ({ observation, inHand, stop, rules }) =>
    core.check(inHand, { ...stop, column: core.waterColumn(observation) }, rules),
  weighTakes: core.weighTakes,
  shiftFlow,
  adjustRig: core.adjustRig,
  ...channels,
};

/** Every operation bound to an engine, in the order the document lists them. */
export function computations(given: Engine): readonly Computation[] {
  return [
    computation(contract.readColumn, given.readColumn),
    computation(contract.settleRig, given.settleRig),
    computation(contract.driftRig, given.driftRig),
    computation(contract.holdRig, given.holdRig),
    computation(contract.rankSetups, given.rankSetups),
    computation(contract.checkRig, given.checkRig),
    computation(contract.weighTakes, given.weighTakes),
    computation(contract.shiftFlow, given.shiftFlow),
    computation(contract.adjustRig, given.adjustRig),
    computation(contract.carryFlow, given.carryFlow),
    computation(contract.findDepth, given.findDepth),
    computation(contract.readEnergy, given.readEnergy),
    computation(contract.jumpFlow, given.jumpFlow),
    computation(contract.traceSurface, given.traceSurface),
    computation(contract.spreadFlow, given.spreadFlow),
    computation(contract.measureDischarge, given.measureDischarge),
    computation(contract.fitRating, given.fitRating),
    computation(contract.scaleStream, given.scaleStream),
    computation(contract.estimateResistance, given.estimateResistance),
  ];
}
