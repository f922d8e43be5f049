/** One request, as the service around the app knows it. The app runs without a service too: then there is no call. */

import { type Problem, problem } from "@plumbdrift/contract";
import type { Context } from "hono";

export interface Call {
  /** A UUID: the log, the header X-Request-Id and `instance` of a problem say the same. */
  readonly id: string;
  /** Units of work charged so far. */
  work: number;
  /** Name of the caller's key. */
  key?: string;
  /** Charges up to `work` units in all. A problem where the caller has too few left. */
  charge: (work: number) => Promise<Problem | undefined>;
  /** Waits until so much work may begin. Whether the caller is still there then. */
  readonly turn: (work: number) => Promise<boolean>;
  /** Logs a failure of ours. */
  readonly report: (error: unknown) => void;
}

declare module "hono" {
  interface ContextVariableMap {
    call?: Call;
  }
}

/** Charges what a request asks for, where anything is charged, and waits for its turn. */
export async function charge(c: Context, work: number): Promise<Problem | undefined> {
  const call = c.get("call");
  const refused = await call?.charge(work);
  if (call === undefined || refused !== undefined) return refused;
  return (await call.turn(work))
    ? undefined
    : problem("too-slow", "The caller left before the computing began.");
}
