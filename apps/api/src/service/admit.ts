/** Who may ask, and how much. */

import { type Problem, problem, WORK_PER_CALL } from "@plumbdrift/contract";
import type { Context, MiddlewareHandler } from "hono";
import type { Call } from "../call.js";
import { refuse, send } from "../refuse.js";
import { clientAddress } from "./address.js";
import type { Config } from "./config.js";
import { keyIn } from "./keys.js";
import type { Policy, RateStore, Taken } from "./rate-limit.js";

export interface Gate {
  readonly config: Pick<Config, "keys" | "anonymous" | "rate" | "proxies">;
  readonly store: RateStore;
  readonly now: () => number;
  /** The address at the other end of the connection. */
  readonly address: (c: Context) => string;
}

/** Lets in who has a key, or anyone where that is allowed, while their bucket has enough. */
export function admit({ config, store, now, address }: Gate): MiddlewareHandler {
  const { keys, anonymous, rate, proxies } = config;
  return async (c, next) => {
    const call = c.get("call");
    if (call === undefined || !guarded(c.req.path)) return next();
    const header = c.req.header("authorization");
    const key = header === undefined ? undefined : await keyIn(header, keys);
    if (key !== undefined) call.key = key;
    const from = clientAddress(address(c), c.req.header("x-forwarded-for"), proxies);
    const caller = key === undefined ? `address ${from}` : `key ${key}`;
    const said: Said = { charged: false };
    const free = call.charge;
    call.charge = (work) => {
      said.charged = true;
      return rate === undefined ? free(work) : take(call, { store, now, policy: rate, caller }, work, said);
    };
    const wrong = key === undefined && (header === undefined ? !anonymous : keys.length > 0);
    if (wrong) c.res = unauthorised(c, header);
    else await next();
    // what was not worth computing still cost a call, and a caller who has none left is told so
    const refused = said.charged ? undefined : await call.charge(WORK_PER_CALL);
    if (refused !== undefined) replace(c, refused);
    for (const [name, value] of Object.entries(said.headers ?? {})) c.res.headers.set(name, value);
  };
}

/** What charging has to say in the headers of the answer. */
interface Said {
  charged: boolean;
  headers?: Readonly<Record<string, string>>;
}

function replace(c: Context, said: Problem): void {
  const response = send(c, said);
  // what the answer that was refused had said of itself
  for (const name of ["ETag", "Allow"]) response.headers.delete(name);
  c.res = undefined;
  c.res = response;
}

/** Computing and looking up are guarded; the service's own paths are open, and what explains a problem to whoever got it. */
function guarded(path: string): boolean {
  return /^\/(v1|mcp)(\/|$)/.test(path) && !path.startsWith("/v1/problems");
}

/** Whose bucket, and where it is kept. */
interface Purse {
  readonly store: RateStore;
  readonly policy: Policy;
  readonly now: () => number;
  readonly caller: string;
}

/** A request heavier than a bucket takes a full one. A store that fails lets everyone through: each call still has its own budget. */
async function take(call: Call, purse: Purse, work: number, said: Said): Promise<Problem | undefined> {
  const { store, policy, now, caller } = purse;
  const { units, seconds } = policy;
  const cost = Math.max(0, Math.min(work, units) - call.work);
  let taken: Taken;
  try {
    taken = await store.take(caller, { policy, now: now(), cost });
  } catch (error) {
    call.report(error);
    return undefined;
  }
  const wait = Math.ceil(taken.wait / 1000);
  said.headers = {
    "RateLimit-Policy": `"work";q=${units};w=${seconds};qu="work"`,
    RateLimit: `"work";r=${Math.floor(taken.left)};t=${wait}`,
    ...(taken.ok ? {} : { "Retry-After": String(wait) }),
  };
  if (taken.ok) {
    call.work = Math.max(call.work, work);
    return undefined;
  }
  return problem(
    "too-many-requests",
    `This asks for ${work} units of work: ask again in ${wait} s. ${units} units come back in ${seconds} s.`,
  );
}

/** Says what is missing as RFC 6750 (section 3) does: no error code to who sent no key. */
function unauthorised(c: Context, header: string | undefined): Response {
  const error = header === undefined ? "" : ', error="invalid_token"';
  c.header("WWW-Authenticate", `Bearer realm="plumbdrift"${error}`);
  const detail = header === undefined ? "No key was sent" : "The key is not known here";
  return refuse(c, "unauthorised", `${detail}: send Authorization: Bearer and a key.`);
}
