/** The operations that choose and drift a rig, bound to the core. */

import * as contract from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";
import { computation } from "../computation.js";
import type { Engine } from "../engine.js";
import type { Group } from "./index.js";

type Id = "readColumn" | "settleRig" | "driftRig" | "holdRig" | "rankSetups";

export const engine: Pick<Engine, Id> = {
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
};

export const bind: Group<Id> = (given) => ({
  readColumn: computation(contract.readColumn, given.readColumn ?? engine.readColumn),
  settleRig: computation(contract.settleRig, given.settleRig ?? engine.settleRig),
  driftRig: computation(contract.driftRig, given.driftRig ?? engine.driftRig),
  holdRig: computation(contract.holdRig, given.holdRig ?? engine.holdRig),
  rankSetups: computation(contract.rankSetups, given.rankSetups ?? engine.rankSetups),
});
