/** What each operation asks of the core: one call, from understood input to plain result. */

import type * as contract from "@plumbdrift/contract";
import { engine as channels } from "./operations/channels.js";
import { engine as outings } from "./operations/outings.js";
import { engine as rigs } from "./operations/rigs.js";

type Call<O> =
  O extends contract.Operation<infer Input, infer Result, infer _A> ? (input: Input) => Result : never;

export type Engine = { readonly [Id in contract.OperationId]: Call<(typeof contract)[Id]> };

/** Calls that stand in for those of the core. */
export type Given = Partial<Engine>;

/** All of the core's, for who wants to change one. The app loads them group by group. */
export const engine: Engine = { ...rigs, ...outings, ...channels };
