/** What every computation does between request and response. */

import { EXPLAIN, MAX_BODY_BYTES } from "@plumbdrift/contract";
import type { Context, Handler, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { again, answer } from "./caching.js";
import type { Computation } from "./computation.js";
import { type Kept, nothingKept } from "./kept.js";
import { refuse, send, strayQuery } from "./refuse.js";
import { parsed, sentAs, sentText } from "./sent.js";

/** Refuses a body beyond a limit without reading the rest of it. */
export function limitedTo(bytes: number): MiddlewareHandler {
  const onError = (c: Context): Response => refuse(c, "too-large", `A body may have ${bytes} bytes.`);
  const counted = bodyLimit({ maxSize: bytes, onError });
  return async (c, next) => {
    const length = c.req.header("content-length");
    // a host may have to make a stream to be asked for one: a stated length needs none
    if (length === undefined || c.req.header("transfer-encoding") !== undefined) return counted(c, next);
    return Number(length) > bytes ? onError(c) : next();
  };
}

export const limited: MiddlewareHandler = limitedTo(MAX_BODY_BYTES);

/** The handler of a computation, for POST and for QUERY (RFC 10008) alike. */
export function compute(find: () => Promise<Computation>, kept: Kept = nothingKept): Handler {
  return async (c) => {
    const { described, prepare } = await find();
    c.header("Accept-Query", "application/json");
    const stray = strayQuery(c, described.explain === undefined ? {} : EXPLAIN);
    if (stray) return stray;
    if (sentAs(c) !== "json") {
      return refuse(
        c,
        "unsupported-media-type",
        "Send the body with the header Content-Type: application/json, and not compressed.",
      );
    }
    const explained = c.req.query("explain") !== undefined;
    const body = await sentText(c);
    if (!body.ok) return send(c, body.problem);
    const asked = `${described.id} ${explained} ${body.value}`;
    const known = kept.get(asked);
    if (known !== undefined) return again(c, known);
    const sent = parsed(body.value);
    if (!sent.ok) return send(c, sent.problem);
    const prepared = prepare(sent.value);
    if (!prepared.ok) return send(c, prepared.problem);
    const { hash, work, run } = prepared;
    return answer(c, {
      hash: explained ? `${hash}-steps` : hash,
      work,
      run: () => run(explained),
      keep: (computed) => kept.set(asked, computed),
    });
  };
}
