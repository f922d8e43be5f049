/** One message of a queue: a computation asked for, and the outcome to deliver. Knows no queue. */

import { nearest, operationIds, type Problem, problem, problemOf } from "@plumbdrift/contract";
import { finder } from "../operations/index.js";

/** What came of a message: status and body are those that the same request gets over HTTP. */
export interface Outcome {
  /** As the message says it, or the queue's own name for the message. */
  readonly id: string;
  readonly operation?: string;
  readonly status: number;
  readonly body: object;
}

/** Takes an outcome away. Rejects when it could not: then the message comes again. */
export type Deliver = (outcome: Outcome) => Promise<void>;

const find = finder();
const expected = '{"id": "…", "operation": "settleRig", "body": {…}}';

/** Answers a message of unknown shape. Throws only for a failure of ours: what a sender got wrong is an outcome. */
export async function answerMessage(sent: unknown, name: string): Promise<Outcome> {
  const { id, operation, body } = isRecord(sent) ? sent : {};
  const known = typeof id === "string" && id !== "" ? id : name;
  if (typeof operation !== "string") {
    return refused(known, problem("invalid-request", `A message is ${expected}.`));
  }
  const asked = operationIds.find((one) => one === operation);
  if (asked === undefined) {
    const near = nearest(operation, operationIds);
    const hint = near === undefined ? "The document lists them." : `Did you mean ${near}?`;
    return refused(known, problem("invalid-request", `No operation has this name. ${hint}`));
  }
  const prepared = (await find(asked)).prepare(body);
  if (!prepared.ok) return { ...refused(known, prepared.problem), operation };
  try {
    return { id: known, operation, status: 200, body: prepared.run() };
  } catch (error) {
    const mistake = problemOf(error);
    if (mistake === undefined) throw error;
    return { ...refused(known, mistake), operation };
  }
}

/** The outcome of what could not be understood. */
export function refused(id: string, said: Problem): Outcome {
  return { id, status: said.status, body: said };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
