/** An answer is named by what was asked and who computes, so that whoever has it is spared, and spares, the computing. */

import type { Context } from "hono";
import { charge } from "./call.js";
import type { Answer } from "./kept.js";
import { send } from "./refuse.js";

/** A release names its answers anew, so none is kept for ever: this is how long an old one may still be served. */
const SECONDS_FRESH = 3600;

/** What is to be answered, and where it may be kept. */
export interface Answering {
  readonly hash: string;
  readonly work: number;
  readonly run: () => object;
  readonly keep?: (answer: Answer) => void;
}

/** Answers with what `run` computes, or 304 before computing, and before its work is charged, to who names it. */
export async function answer(c: Context, { hash, work, run, keep }: Answering): Promise<Response> {
  const etag = `"${hash}"`;
  if (named(c, etag)) return unchanged(c, etag);
  const refused = await charge(c, work);
  if (refused !== undefined) return send(c, refused);
  const computed = { etag, text: JSON.stringify(run()), work };
  keep?.(computed);
  return whole(c, computed);
}

/** Answers with what was computed before, as `answer` does. */
export async function again(c: Context, answer: Answer): Promise<Response> {
  if (named(c, answer.etag)) return unchanged(c, answer.etag);
  const refused = await c.get("call")?.charge(answer.work);
  return refused === undefined ? whole(c, answer) : send(c, refused);
}

function whole(c: Context, { etag, text }: Answer): Response {
  return c.body(text, 200, { ...caching(c, etag), "content-type": "application/json" });
}

function unchanged(c: Context, etag: string): Response {
  return c.body(null, 304, caching(c, etag));
}

function caching(c: Context, etag: string): Record<"etag" | "cache-control", string> {
  return { etag, "cache-control": `${readers(c)}, max-age=${SECONDS_FRESH}` };
}

function named(c: Context, etag: string): boolean {
  return names(c.req.header("if-none-match"), etag);
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
