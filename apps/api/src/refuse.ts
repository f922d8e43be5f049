/** Every failure leaves as a problem document. */

import {
  type Parameters,
  type Problem,
  type ProblemCode,
  parameterErrors,
  problem,
  problemOf,
} from "@plumbdrift/contract";
import type { Context } from "hono";
import type { Call } from "./call.js";

/** Answers with a problem of a kind. */
export function refuse(
  c: Context,
  code: ProblemCode,
  detail: string,
  errors: Problem["errors"] = [],
): Response {
  return send(c, problem(code, detail, { errors }));
}

/** Answers for query parameters that a path does not know, or not with such a value. */
export function strayQuery(c: Context, known: Parameters): Response | undefined {
  if (!c.req.url.includes("?")) return undefined;
  const [first, ...more] = parameterErrors(new URL(c.req.url).searchParams, known);
  if (first === undefined) return undefined;
  return refuse(c, "invalid-request", `${first.path}: expected ${first.expected}.`, [first, ...more]);
}

/** Answers for an error: a caller's mistake as such, anything else opaque, under a name that the log has too. */
export function failed(c: Context, error: unknown): Response {
  const { aborted } = c.req.raw.signal;
  // nobody is there to read it, but the log should not blame us
  if (aborted) return refuse(c, "too-slow", "The request ended before its body did.");
  return send(c, problemFor(error, c.get("call")));
}

/** The problem that an error is to whoever asked. */
export function problemFor(error: unknown, call?: Call): Problem {
  const mistake = problemOf(error);
  if (mistake) return mistake;
  const instance = instanceOf(call?.id ?? crypto.randomUUID());
  if (call === undefined) console.error(instance, error);
  else call.report(error);
  return problem("internal", "The request could not be computed. Quote the instance in a report.", {
    instance,
  });
}

/** Answers with a problem, which no cache keeps: the next host, or the next minute, may answer otherwise. */
export function send(c: Context, body: Problem): Response {
  const id = c.get("call")?.id;
  const said = id === undefined ? body : { ...body, instance: instanceOf(id) };
  return c.body(JSON.stringify(said), {
    status: body.status as 400,
    headers: { "content-type": "application/problem+json", "cache-control": "no-store" },
  });
}

function instanceOf(id: string): string {
  return `urn:uuid:${id}`;
}
