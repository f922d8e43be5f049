/** The work of a request: as it is counted beforehand, and as its answer shows it to have been done. */

import { engine } from "@plumbdrift/api/engine";
import * as contract from "@plumbdrift/contract";
import type { Body } from "./api.js";

/** What an answer shows to have been done, in the order of the terms of its operation. */
const done: Readonly<Record<string, (answer: Body, asked: Body) => readonly number[]>> = {
  readColumn: ({ speeds }) => [speeds.length],
  settleRig: ({ settled }) => [settled.sinkers.length],
  driftRig: ({ drift }, { rig, segments = 8 }) => [
    drift.settled.sinkers.length,
    drift.steps * (rig.sections.length * segments + 1),
  ],
  // the targets are searched to 1e-9 N below 1 N: 30 halvings of at most 3 evaluations each, after 8 triplings from 0.5 mN
  holdRig: ({ curve, free }) => [
    free.sinkers.length * (curve.length + 3),
    free.sinkers.length * 2 * (3 * 30 + 8),
  ],
  rankSetups: ({ candidates, work }) => [candidates, work.curves, work.drifts - work.settled, work.settled],
  shiftFlow: ({ gauge, setups }, { method, gauge: sent }) => [
    method?.pairs?.length ?? 0,
    method?.by === "section" ? pointsOf(method.section) : 0,
    gauge === undefined || sent.series.form !== "readings" ? 0 : sent.series.readings.length,
    ...(setups === undefined ? [0, 0, 0, 0] : done.rankSetups!(setups, {})),
  ],
  weighTakes: (_, asked) => [rootsIn(() => engine.weighTakes(inputOf("weighTakes", asked)))],
  // a search as for holdRig, for a rig of one section
  checkRig: ({ work }) => [work.judged, work.settled, 3 * 30 + 8],
  adjustRig: ({ work }) => [work.settled, work.judged],
  carryFlow: (_, { section }) => [pointsOf(section)],
  findDepth: (_, { section }) => [pointsOf(section)],
  readEnergy: (_, { section }) => [pointsOf(section)],
  jumpFlow: (_, { section }) => [pointsOf(section)],
  traceSurface: ({ surface }, { section }) => [pointsOf(section), surface.points?.length ?? 0],
  spreadFlow: ({ across }, { section }) => [pointsOf(section), across.lanes?.length ?? 0],
  measureDischarge: ({ panels }) => [panels.length],
  fitRating: ({ rating, readings }) => [rating.gaugings ?? 0, readings.length],
  scaleStream: ({ states }, { measurements }) => [measurements.length, states.length],
  estimateResistance: ({ resistance }) => [resistance.estimates?.length ?? 0],
};

/** Every point of a survey is compiled; a shape with a name counts as one. */
function pointsOf(section: Body): number {
  return section.points?.length ?? 1;
}

/** The units of work that an answer shows. */
export function workShown(id: string, answer: Body, asked: Body): number {
  const { terms } = contract.operations.find((one) => one.id === id)!.cost;
  const counts = done[id]!(answer, asked);
  if (counts.length !== terms.length)
    throw new Error(`${id} has ${terms.length} terms, not ${counts.length}`);
  return terms.reduce((sum, { each }, i) => sum + each * counts[i]!, contract.WORK_PER_CALL);
}

/** The square roots that are taken while something runs. A reading of a beta distribution takes one, in the density at its point,
 *  and nothing else that a verdict on takes needs does. */
function rootsIn(run: () => unknown): number {
  const { sqrt } = Math;
  let taken = 0;
  Math.sqrt = (x) => {
    taken++;
    return sqrt(x);
  };
  try {
    run();
  } finally {
    Math.sqrt = sqrt;
  }
  return taken;
}

type Decoder = { readonly decode: contract.Operation<unknown, unknown, unknown>["decode"] };

/** The units of work that a body asks for. Throws for a body that is no request of the operation. */
export function estimateOf(id: string, body: unknown): number {
  return understood(id, body).work;
}

// biome-ignore lint/suspicious/noExplicitAny: what an operation takes is checked where it is called
function inputOf(id: string, body: unknown): any {
  return understood(id, body).input;
}

function understood(id: string, body: unknown): contract.Understood<unknown> {
  const decoding = (contract as unknown as Record<string, Decoder>)[id]!.decode(body);
  if (!decoding.ok) throw new Error(JSON.stringify(decoding.errors));
  return decoding.body;
}
