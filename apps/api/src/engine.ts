/** What each operation asks of the core: one call, from understood input to plain result. */

import type { driftRig, InputOf, readColumn, settleRig } from "@plumbdrift/contract";
import { drift, settle, waterColumn } from "@plumbdrift/core";

export const engine = {
  readColumn: ({ observation }: InputOf<typeof readColumn>) => waterColumn(observation),
  settleRig: ({ rig, observation, options }: InputOf<typeof settleRig>) =>
    settle(rig, waterColumn(observation), options),
  driftRig: ({ rig, observation, options }: InputOf<typeof driftRig>) =>
    drift(rig, waterColumn(observation), options),
};

export type Engine = typeof engine;
