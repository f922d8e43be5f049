/** Every computation the API offers, in the order the document lists them. */
import type { Described } from "../operation.js";
import { driftRig } from "./drift-rig.js";
import { holdRig } from "./hold-rig.js";
import { rankSetups } from "./rank-setups.js";
import { readColumn } from "./read-column.js";
import { settleRig } from "./settle-rig.js";

export type { RankSetupsResponse } from "./rank-setups.js";
export type { ReadColumnResponse } from "./read-column.js";
export { driftRig, holdRig, rankSetups, readColumn, settleRig };

export const operations: readonly Described[] = [readColumn, settleRig, driftRig, holdRig, rankSetups];
