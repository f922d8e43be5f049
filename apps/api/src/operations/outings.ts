/** The operations for what happens on the water, bound to the core. */

import * as contract from "@plumbdrift/contract";
import * as core from "@plumbdrift/core";
import { computation } from "../computation.js";
import type { Engine } from "../engine.js";
import type { Group } from "./index.js";
import { shiftFlow } from "./shift-flow.js";

type Id = "checkRig" | "weighTakes" | "shiftFlow" | "adjustRig";

export const engine: Pick<Engine, Id> = {
  checkRig: ({ observation, inHand, stop, rules }) =>
    core.check(inHand, { ...stop, column: core.waterColumn(observation) }, rules),
  weighTakes: core.weighTakes,
  shiftFlow,
  adjustRig: core.adjustRig,
};

export const bind: Group<Id> = (given) => ({
  checkRig: computation(contract.checkRig, given.checkRig ?? engine.checkRig),
  weighTakes: computation(contract.weighTakes, given.weighTakes ?? engine.weighTakes),
  shiftFlow: computation(contract.shiftFlow, given.shiftFlow ?? engine.shiftFlow),
  adjustRig: computation(contract.adjustRig, given.adjustRig ?? engine.adjustRig),
});
