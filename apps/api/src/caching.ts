/** An answer is named by what was asked and who computes, so that whoever has it is spared, and spares, the computing. */

import type { Context } from "hono";
import { charge } from "./call.js";
import { send } from "./refuse.js";

/** A release names its answers anew, so none is kept for ever: this is how long an old one may still be served. */
const SECONDS_FRESH = 3600;

/** Answers with what `run` computes, or 304 before computing, and before its work is charged, to who names it. */
export async function answer(
  c: Context,
  { hash, work, run }: { readonly hash: string; readonly work: number; readonly run: () => object },
): Promise<Response> {
  const etag = `"${hash}"`;
  const known = names(c.req.header("if-none-match"), etag);
  const refused = known ? undefined : await charge(c, work);
  if (refused !== undefined) return send(c, refused);
  const body = known ? undefined : run();
  c.header("ETag", etag);
  c.header("Cache-Control", `${readers(c)}, max-age=${SECONDS_FRESH}`);
  return body === undefined ? c.body(null, 304) : c.json(body);
}

/** What was asked with a key is not for a cache that others read. */
function readers(c: Context): string {
  return c.req.header("authorization") === undefined ? "public" : "private";
}

/** Whether a header If-None-Match names a tag, by the weak comparison of RFC 9110 (section 13.1.2). */
export function names(header: string | undefined, etag: string): boolean {
  if (header === undefined) return false;
  return header.trim() === "*" || header.match(/"[^"]*"/g)?.some((tag) => tag === etag) === true;
}
