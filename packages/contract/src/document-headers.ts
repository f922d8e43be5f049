/** The headers of what the API answers: each is described once, and referred to. */

import type { OpenAPIHono } from "@hono/zod-openapi";
import type { HeaderObject, HeadersObject } from "openapi3-ts/oas31";

export type HeaderName =
  | "ETag"
  | "Cache-Control"
  | "Accept-Query"
  | "X-Request-Id"
  | "Server-Timing"
  | "RateLimit"
  | "RateLimit-Policy"
  | "Retry-After"
  | "WWW-Authenticate"
  | "Allow"
  | "Deprecation"
  | "Sunset"
  | "Link";

export type Registry = OpenAPIHono["openAPIRegistry"];

function header(description: string, required = false): HeaderObject {
  return { description, required, schema: { type: "string" } };
}

const headers: Readonly<Record<HeaderName, HeaderObject>> = {
  ETag: header("Names the answer: equal for equal requests to one release.", true),
  "Cache-Control": header("How long a cache may keep it; a problem is not kept.", true),
  "Accept-Query": header("As what a body may be sent with the method QUERY (RFC 10008)."),
  "X-Request-Id": header(
    "A UUID that names the request in the log: the one that came with it, or a new one.",
  ),
  "Server-Timing": header("How many milliseconds it took, where the host has a clock."),
  RateLimit: header("Units of work left, and in how many seconds all are back, where a host limits them."),
  "RateLimit-Policy": header("How many units of work come back in how many seconds."),
  "Retry-After": header("Seconds until it is worth trying again.", true),
  "WWW-Authenticate": header("How a key is sent, and whether the one that came is wrong (RFC 6750).", true),
  Allow: header("The methods of this path.", true),
  Deprecation: header("Since when something else is to be used (RFC 9745)."),
  Sunset: header("From when it may no longer answer (RFC 8594)."),
  Link: header("A page that says what to use in its place."),
};

/** What a host that guards and limits adds to whatever it answers. */
export const metered: readonly HeaderName[] = [
  "X-Request-Id",
  "Server-Timing",
  "RateLimit",
  "RateLimit-Policy",
];

/** What names an answer and says how long it is fresh. */
export const kept: readonly HeaderName[] = ["ETag", "Cache-Control"];

/** What an operation on its way out says in every answer. */
export const retiring: readonly HeaderName[] = ["Deprecation", "Sunset", "Link"];

export function headersOf(names: readonly HeaderName[]): HeadersObject {
  return Object.fromEntries(names.map((name) => [name, { $ref: `#/components/headers/${name}` }]));
}

export function registerHeaders(registry: Registry, names: readonly HeaderName[]): void {
  for (const name of names) registry.registerComponent("headers", name, headers[name]);
}

/** All headers but those that only what is deprecated has. */
export const everyHeader: readonly HeaderName[] = (Object.keys(headers) as HeaderName[]).filter(
  (name) => !retiring.includes(name),
);

/** What browsers and carriers read of any answer: said once for all of them. */
export const anyAnswer: HeadersObject = {
  "Access-Control-Allow-Origin": header("From which pages a browser may read the answer."),
  "Access-Control-Expose-Headers": header("Which headers such a page may read."),
  "Content-Encoding": header("How it is compressed, for who accepts that."),
  "Content-Length": header("Its bytes."),
  "Content-Security-Policy": header("That it loads and runs nothing."),
  "Cross-Origin-Resource-Policy": header("That pages of other origins may ask for it."),
  "Referrer-Policy": header("That it tells no other host where it was."),
  "Strict-Transport-Security": header("That the host is asked over HTTPS, once it is."),
  Vary: header("Which headers of the request it depends on."),
  "X-Content-Type-Options": header("That its type is as stated."),
  "X-Frame-Options": header("That no page frames it."),
};

/** What a browser is told that asks before it sends. */
export const preflight: HeadersObject = {
  "Access-Control-Allow-Headers": header("The headers that a page may send."),
  "Access-Control-Allow-Methods": header("The methods that a page may use."),
  "Access-Control-Max-Age": header("For how many seconds it need not ask again."),
  ...headersOf(["X-Request-Id", "Server-Timing"]),
};
