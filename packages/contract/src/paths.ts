/** Where each operation is asked, by its operation id, in the order of the document. */

export const paths = {
  readColumn: "/v1/columns",
  settleRig: "/v1/drifts/settled",
  driftRig: "/v1/drifts/unsteady",
  holdRig: "/v1/drifts/held",
  rankSetups: "/v1/setups",
  checkRig: "/v1/checks",
  weighTakes: "/v1/takes",
  shiftFlow: "/v1/flows",
  adjustRig: "/v1/adjustments",
  carryFlow: "/v1/channels/flows",
  findDepth: "/v1/channels/depths",
  readEnergy: "/v1/channels/energies",
  jumpFlow: "/v1/channels/jumps",
  traceSurface: "/v1/channels/surfaces",
  spreadFlow: "/v1/channels/lanes",
  measureDischarge: "/v1/channels/discharges",
  fitRating: "/v1/channels/ratings",
  scaleStream: "/v1/channels/geometries",
  estimateResistance: "/v1/channels/resistances",
} as const;

export type OperationId = keyof typeof paths;

export const operationIds = Object.keys(paths) as readonly OperationId[];
