/** Every operation, bound to an engine. A group of them is loaded with the first call of any: a host starts without what nobody asks for yet. */

import type { OperationId } from "@plumbdrift/contract";
import type { Computation } from "../computation.js";
import type { Given } from "../engine.js";

/** Binds its operations, to the core where nothing else is given. */
export type Group<Id extends OperationId> = (given: Given) => { readonly [id in Id]: Computation };

export type Find = (id: OperationId) => Promise<Computation>;

type Load<Id extends OperationId> = () => Promise<{ readonly bind: Group<Id> }>;

const rigs = () => import("./rigs.js");
const outings = () => import("./outings.js");
const channels = () => import("./channels.js");

const groups: { readonly [Id in OperationId]: Load<Id> } = {
  readColumn: rigs,
  settleRig: rigs,
  driftRig: rigs,
  holdRig: rigs,
  rankSetups: rigs,
  checkRig: outings,
  weighTakes: outings,
  shiftFlow: outings,
  adjustRig: outings,
  carryFlow: channels,
  findDepth: channels,
  readEnergy: channels,
  jumpFlow: channels,
  traceSurface: channels,
  spreadFlow: channels,
  measureDischarge: channels,
  fitRating: channels,
  scaleStream: channels,
  estimateResistance: channels,
};

/** Finds an operation, bound to the core where no other call is given. */
export function finder(given: Given = {}): Find {
  const found: { [id in OperationId]?: Computation } = {};
  const load = async <Id extends OperationId>(id: Id): Promise<Computation> =>
    (await groups[id]()).bind(given)[id];
  return async (id) => {
    found[id] ??= await load(id);
    return found[id];
  };
}
