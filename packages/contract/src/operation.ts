/** What an operation is: a path, two schemas, and how to get from body to engine and back. */

import type { z } from "@hono/zod-openapi";
import type { Grounds } from "@plumbdrift/core";
import type { Footing } from "./answer.js";
import { type Cost, type Counted, workOf } from "./cost.js";
import type { Deprecation } from "./deprecation.js";
import type { Step } from "./explain.js";
import { type Decoding, decodeBody } from "./quantity/decode.js";
import type { Units } from "./quantity/units.js";
import type { Decoded } from "./quantity/wire.js";
import type { Places } from "./refusal.js";

export interface Example {
  readonly summary: string;
  readonly value: unknown;
}

/** What an engine's result says over HTTP, without the footing. */
export interface Answer<A> {
  readonly answer: A;
  readonly grounds: Grounds;
}

/** An operation with its types hidden: what the document and the tests need. */
export interface Described {
  readonly id: string;
  readonly path: string;
  readonly summary: string;
  readonly description: string;
  readonly request: z.ZodType;
  readonly response: z.ZodType;
  readonly examples: Readonly<Record<string, Example>>;
  readonly cost: Cost;
  readonly explain?: unknown;
  /** Present once something else is to be used. */
  readonly deprecated?: Deprecation;
  /** Where the body says the quantities that the core names; those of a body with water unless given. */
  readonly places?: Places;
}

export interface Operation<Input, Result, A> extends Described {
  /** From a body of unknown shape to what the engine takes. */
  readonly decode: (body: unknown) => Decoding<Understood<Input>>;
  readonly encode: (result: Result, units: Units, input: Input) => Answer<A>;
  /** The chain of equations behind a result; absent where there is none. */
  readonly explain?: (result: Result, input: Input) => readonly Step[];
}

export interface Understood<Input> {
  readonly input: Input;
  readonly units: Units;
  /** Units of work that it asks for. */
  readonly work: number;
  /** The body as the schema read it, for the hash. */
  readonly wire: unknown;
}

/** Puts an operation together. Its cost is counted before `toInput`, which may throw the core's QuantityError or a RefusedError. */
export function operation<W extends { readonly units?: Units | undefined }, Input, Result, A>(
  described: Omit<Described, "cost" | "explain"> & {
    readonly request: z.ZodType<W>;
    readonly response: z.ZodType<A & Footing>;
    readonly cost: Cost<Counted<W>>;
    readonly toInput: (body: Decoded<W>) => Input;
    readonly encode: (result: Result, units: Units, input: Input) => Answer<A>;
    readonly explain?: (result: Result, input: Input) => readonly Step[];
  },
): Operation<Input, Result, A> {
  const { toInput, ...rest } = described;
  return {
    ...rest,
    decode: (body) => {
      const decoding = decodeBody(described.request, body);
      if (!decoding.ok) return decoding;
      const { wire, si } = decoding.body;
      const work = workOf(described.cost, si);
      return { ok: true, body: { input: toInput(si), units: wire.units ?? "si", work, wire } };
    },
  };
}
