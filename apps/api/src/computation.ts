/** An operation bound to the engine. A request, an item of a batch, a message of a queue and a tool call all go through it. */

import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import {
  CONTRACT_VERSION,
  canonical,
  type Described,
  ENGINE_VERSION,
  footingOf,
  nonFinite,
  type Operation,
  type Problem,
  problem,
  problemOf,
  within,
} from "@plumbdrift/contract";

export interface Computation {
  readonly described: Described;
  /** Understands a body of unknown shape without computing anything. Does not throw for what a caller sent. */
  readonly prepare: (body: unknown) => Prepared;
}

export type Prepared =
  | { readonly ok: false; readonly problem: Problem }
  | {
      readonly ok: true;
      /** Hash of the operation, the request as it was understood, the engine and the contract: equal hashes, equal answers. */
      readonly hash: string;
      /** Units of work that it asks for. */
      readonly work: number;
      /** Computes the answer, with its equations where it has some and they are asked for. Throws what `problemOf` tells from a failure of ours. */
      readonly run: (explained?: boolean) => object;
    };

export function computation<Input, Result, A extends object>(
  operation: Operation<Input, Result, A>,
  call: (input: Input) => Result,
): Computation {
  return { described: operation, prepare: (body) => prepare(operation, call, body) };
}

function prepare<Input, Result, A extends object>(
  operation: Operation<Input, Result, A>,
  call: (input: Input) => Result,
  sent: unknown,
): Prepared {
  const decoding = understood(operation, sent);
  if (!decoding.ok) return decoding;
  const { input, units, wire, work } = decoding.body;
  const hash = digest(`${operation.id} ${ENGINE_VERSION} ${CONTRACT_VERSION} ${canonical(wire)}`);
  const run = (explained = false): object => {
    const result = within(() => call(input), operation.places);
    const { answer, grounds } = operation.encode(result, units, input);
    const steps = explained ? operation.explain?.(result, input) : undefined;
    const body = { ...answer, ...(steps && { steps }), ...footingOf(grounds, units, hash) };
    const bad = nonFinite(body);
    if (bad === undefined) return body;
    throw new Error(`${operation.id} would answer a number that is not finite at ${bad}`);
  };
  return { ok: true, hash, work, run };
}

/** Decodes; what does not fit, and what can never hold together, is a problem. */
function understood<Input, Result, A>(operation: Operation<Input, Result, A>, sent: unknown) {
  try {
    const decoding = operation.decode(sent);
    if (decoding.ok) return decoding;
    const { errors } = decoding;
    const first = errors[0];
    const detail = first ? `${first.path || "The body"}: expected ${first.expected}.` : "See the schema.";
    return { ok: false as const, problem: problem("invalid-request", detail, { errors: [...errors] }) };
  } catch (error) {
    const mistake = problemOf(error);
    if (mistake === undefined) throw error;
    return { ok: false as const, problem: mistake };
  }
}

/** The first 128 bits of SHA-256, in hexadecimal. Web cryptography takes several times as long for a text of this size. */
function digest(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)).subarray(0, 16));
}
