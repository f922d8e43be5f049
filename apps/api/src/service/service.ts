/** The app as a service: who may ask, how much, from which pages; what is logged and what every answer carries. Needs no particular host. */

import type { Context, Hono, MiddlewareHandler } from "hono";
import { compress } from "hono/compress";
import { cors } from "hono/cors";
import { routePath } from "hono/route";
import { secureHeaders } from "hono/secure-headers";
import { createApp } from "../app.js";
import type { Call } from "../call.js";
import type { Given } from "../engine.js";
import type { Kept } from "../kept.js";
import { admit } from "./admit.js";
import type { Config } from "./config.js";
import { type Logger, logger } from "./log.js";
import { memoryStore, type RateStore } from "./rate-limit.js";

/** What a host lends. */
export interface Host {
  readonly engine?: Given;
  readonly store?: RateStore;
  /** Takes a line of the log. */
  readonly log?: (line: string) => void;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
  /** The address at the other end of a connection; without it all callers without a key share one bucket. */
  readonly address?: (c: Context) => string;
  /** Waits until a computation of so many units of work may begin: whether who asked is still there. Without it each begins at once. */
  readonly turn?: (work: number, c: Context) => Promise<boolean>;
  /** Keeps answers; without it each is computed anew. */
  readonly kept?: Kept;
  /** Stands around everything else: tracing. */
  readonly around?: readonly MiddlewareHandler[];
}

/** The app with everything a public host needs. */
export function createService(config: Config, host: Host = {}): Hono {
  const {
    store = memoryStore(),
    now = Date.now,
    address = () => "",
    turn = async () => true,
    around = [],
  } = host;
  const log = logger(config.log, host.log ?? console.log, now);
  return createApp(host.engine, {
    around: [
      ...around,
      record(log, now, turn),
      secured,
      shared(config.origins),
      ...(config.compress ? [compress({ contentTypeFilter: whole }), varying] : []),
      admit({ config, store, now, address }),
    ],
    kept: host.kept,
  });
}

/** Names the request, times it and logs it. */
function record(log: Logger, now: () => number, turn: NonNullable<Host["turn"]>): MiddlewareHandler {
  return async (c, next) => {
    const began = now();
    const id = idOf(c.req.header("x-request-id"));
    const call: Call = {
      id,
      work: 0,
      charge: async (work) => {
        call.work = work;
        return undefined;
      },
      turn: (work) => turn(work, c),
      report: (error) => log.failed(id, error),
    };
    c.set("call", call);
    await next();
    const ms = Math.round(100 * Math.max(0, now() - began)) / 100;
    const { status, headers } = c.res;
    headers.set("X-Request-Id", id);
    headers.set("Server-Timing", `total;dur=${ms}`);
    const length = headers.get("content-length");
    log.answered({
      id,
      method: c.req.method.slice(0, 20),
      route: routePath(c),
      status,
      ms,
      work: call.work,
      bytes: length === null ? undefined : Number(length),
      key: call.key,
    });
  };
}

/** The id that a caller or proxy gave, when it is a UUID; else a new one. Anything else could not stand in a URN, nor in a log unread. */
function idOf(given: string | undefined): string {
  const uuid = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/i;
  return given !== undefined && uuid.test(given) ? given.toLowerCase() : crypto.randomUUID();
}

/** What OWASP's REST cheat sheet asks of an API. A page of ours brings its own policy. */
const secured = secureHeaders({
  contentSecurityPolicy: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] },
  crossOriginResourcePolicy: "cross-origin",
  strictTransportSecurity: "max-age=15552000",
  xFrameOptions: "DENY",
  crossOriginOpenerPolicy: false,
  originAgentCluster: false,
  xDnsPrefetchControl: false,
  xDownloadOptions: false,
  xPermittedCrossDomainPolicies: false,
  xXssProtection: false,
  overwrite: false,
});

/** What `compress` would add. It builds the answer anew to do so, and Node then sends it as a stream. */
const varying: MiddlewareHandler = async (c, next) => {
  await next();
  c.res.headers.append("Vary", "Accept-Encoding");
};

/** Keys travel in a header and never in cookies, so pages need no credentials. */
function shared(origins: Config["origins"]): MiddlewareHandler {
  const allow = cors({
    origin: origins === "*" ? "*" : [...origins],
    allowMethods: ["GET", "HEAD", "POST", "QUERY"],
    allowHeaders: ["Accept", "Authorization", "Content-Type", "If-None-Match", "X-Request-Id"],
    exposeHeaders:
      "Accept-Query Allow Content-Length Deprecation ETag RateLimit RateLimit-Policy Retry-After Server-Timing Sunset WWW-Authenticate X-Request-Id".split(
        " ",
      ),
    maxAge: 86_400,
  });
  return async (c, next) => {
    if (c.req.method === "OPTIONS") return allow(c, next);
    // headers set before there is an answer would make it be built anew
    await next();
    await allow(c, async () => {});
    return undefined;
  };
}

/** Types that are sent whole. A stream of lines would be held back until it ends. */
function whole(type: string): boolean {
  return /^(application\/(problem\+|schema\+)?(json|yaml)|text\/(html|css|javascript|plain|yaml))\s*(;|$)/.test(
    type,
  );
}
