/** What each operation asks of the core: one call, from understood input to plain result. */

import type { driftRig, holdRig, InputOf, rankSetups, readColumn, settleRig } from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";

export const engine = {
  readColumn: ({ observation }: InputOf<typeof readColumn>) => core.waterColumn(observation),
  settleRig: ({ rig, observation, options }: InputOf<typeof settleRig>) =>
    core.settle(rig, core.waterColumn(observation), options),
  driftRig: ({ rig, observation, lie, options }: InputOf<typeof driftRig>) => {
    const column = core.waterColumn(observation);
    const fish = core.fishWindow(column, lie);
    return { drift: core.drift(rig, column, { window: fish, ...options }), fish };
  },
  holdRig: ({ rig, observation, options }: InputOf<typeof holdRig>) =>
    core.hold(rig, core.waterColumn(observation), options),
  rankSetups: ({ observation, ...stop }: InputOf<typeof rankSetups>) =>
    core.rankSetups({ ...stop, column: core.waterColumn(observation) }),
};

export type Engine = typeof engine;
