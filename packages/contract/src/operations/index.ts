/** Every computation the API offers, in the order the document lists them. */
import type { Described } from "../operation.js";
import { type OperationId, operationIds } from "../paths.js";
import { adjustRig } from "./adjust-rig.js";
import { carryFlow } from "./carry-flow.js";
import { checkRig } from "./check-rig.js";
import { driftRig } from "./drift-rig.js";
import { estimateResistance } from "./estimate-resistance.js";
import { findDepth } from "./find-depth.js";
import { fitRating } from "./fit-rating.js";
import { holdRig } from "./hold-rig.js";
import { jumpFlow } from "./jump-flow.js";
import { measureDischarge } from "./measure-discharge.js";
import { rankSetups } from "./rank-setups.js";
import { readColumn } from "./read-column.js";
import { readEnergy } from "./read-energy.js";
import { scaleStream } from "./scale-stream.js";
import { settleRig } from "./settle-rig.js";
import { shiftFlow } from "./shift-flow.js";
import { spreadFlow } from "./spread-flow.js";
import { traceSurface } from "./trace-surface.js";
import { weighTakes } from "./weigh-takes.js";

export type { RankSetupsResponse } from "./rank-setups.js";
export type { ReadColumnResponse } from "./read-column.js";
export type { ShiftedFlow } from "./shift-flow.js";
export {
  adjustRig,
  carryFlow,
  checkRig,
  driftRig,
  estimateResistance,
  findDepth,
  fitRating,
  holdRig,
  jumpFlow,
  measureDischarge,
  rankSetups,
  readColumn,
  readEnergy,
  scaleStream,
  settleRig,
  shiftFlow,
  spreadFlow,
  traceSurface,
  weighTakes,
};

const all: { readonly [Id in OperationId]: Described } = {
  readColumn,
  settleRig,
  driftRig,
  holdRig,
  rankSetups,
  checkRig,
  weighTakes,
  shiftFlow,
  adjustRig,
  carryFlow,
  findDepth,
  readEnergy,
  jumpFlow,
  traceSurface,
  spreadFlow,
  measureDischarge,
  fitRating,
  scaleStream,
  estimateResistance,
};

export const operations: readonly Described[] = operationIds.map((id) => all[id]);
