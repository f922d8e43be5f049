/** Decode, call, encode: what every computation does between request and response. */

import {
  canonical,
  ENGINE_VERSION,
  footingOf,
  MAX_BODY_BYTES,
  nonFinite,
  type Operation,
  within,
} from "@plumbdrift/contract";
import type { Context, Handler, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { refuse } from "./refuse.js";

/** Refuses a body beyond the limit without reading the rest of it. */
export const limited: MiddlewareHandler = bodyLimit({
  maxSize: MAX_BODY_BYTES,
  onError: (c) => refuse(c, "too-large", `A body may have ${MAX_BODY_BYTES} bytes.`),
});

/** The handler of an operation. */
export function compute<Input, Result, A extends object>(
  operation: Operation<Input, Result, A>,
  call: (input: Input) => Result,
): Handler {
  return async (c) => {
    if (!isJson(c)) {
      return refuse(
        c,
        "unsupported-media-type",
        "Send the body with the header Content-Type: application/json.",
      );
    }
    const sent = parse(await c.req.text());
    if (!sent.ok) return refuse(c, "malformed-json", sent.detail);
    const decoding = operation.decode(sent.value);
    if (!decoding.ok) {
      const { errors } = decoding;
      const first = errors[0];
      const detail = first ? `${first.path || "The body"}: expected ${first.expected}.` : "See the schema.";
      return refuse(c, "invalid-request", detail, [...errors]);
    }
    const { input, units, wire } = decoding.body;
    const { answer, grounds } = operation.encode(
      within(() => call(input), operation.places),
      units,
      input,
    );
    const hash = await digest(`${operation.id} ${ENGINE_VERSION} ${canonical(wire)}`);
    const body = { ...answer, ...footingOf(grounds, units, hash) };
    const bad = nonFinite(body);
    if (bad !== undefined)
      throw new Error(`${operation.id} would answer a number that is not finite at ${bad}`);
    return c.json(body);
  };
}

function isJson(c: Context): boolean {
  const type = c.req.header("content-type") ?? "";
  return /^application\/json\s*(;\s*charset="?utf-8"?\s*)?$/i.test(type);
}

type Parsed =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly detail: string };

function parse(text: string): Parsed {
  if (text.trim() === "") return { ok: false, detail: "The body is empty; a JSON object was expected." };
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    const place = /\bposition \d+/.exec(String(error))?.[0];
    const where = place === undefined ? "" : ` at ${place}`;
    return {
      ok: false,
      detail: `The body cannot be read as JSON${where}. NaN and Infinity are no JSON numbers.`,
    };
  }
}

/** The first 128 bits of SHA-256, in hexadecimal. */
async function digest(text: string): Promise<string> {
  const bytes = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return [...new Uint8Array(bytes).slice(0, 16)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
