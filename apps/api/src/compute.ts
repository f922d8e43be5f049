/** What every computation does between request and response. */

import { MAX_BODY_BYTES } from "@plumbdrift/contract";
import type { Context, Handler, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { answer } from "./caching.js";
import type { Computation } from "./computation.js";
import { refuse, send, strayQuery } from "./refuse.js";

/** Refuses a body beyond the limit without reading the rest of it. */
export const limited: MiddlewareHandler = bodyLimit({
  maxSize: MAX_BODY_BYTES,
  onError: (c) => refuse(c, "too-large", `A body may have ${MAX_BODY_BYTES} bytes.`),
});

/** The handler of a computation, for POST and for QUERY (RFC 10008) alike. */
export function compute({ prepare }: Computation): Handler {
  return async (c) => {
    c.header("Accept-Query", "application/json");
    const stray = strayQuery(c, {});
    if (stray) return stray;
    if (!isJson(c)) {
      return refuse(
        c,
        "unsupported-media-type",
        "Send the body with the header Content-Type: application/json.",
      );
    }
    const sent = parse(await c.req.text());
    if (!sent.ok) return refuse(c, "malformed-json", sent.detail);
    const prepared = await prepare(sent.value);
    return prepared.ok ? answer(c, prepared) : send(c, prepared.problem);
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
