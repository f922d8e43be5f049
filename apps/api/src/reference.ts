/** Serves what can be looked up. */

import { CONTRACT_VERSION, ENGINE_VERSION, meant, type Reference, WORK_PER_CALL } from "@plumbdrift/contract";
import type { Context, Handler } from "hono";
import { answer } from "./caching.js";
import { refuse, strayQuery } from "./refuse.js";

/** A path of the document as the router says it. */
export function routeOf(path: string): string {
  return path.replace(/\{(\w+)\}/g, ":$1");
}

/** The handler of a reference. What it answers changes with a release only. */
export function lookUp({ id, keyed }: Reference): Handler {
  return async (c) => {
    const stray = strayQuery(c, {});
    if (stray) return stray;
    const key = keyed === undefined ? "" : String(Object.values(c.req.param())[0]);
    const { [id]: known = {} } = (await import("./rendered.js")).lookedUp;
    const found = Object.hasOwn(known, key) ? known[key] : undefined;
    if (found !== undefined)
      return answer(c, {
        hash: `${ENGINE_VERSION}-${CONTRACT_VERSION}`,
        work: WORK_PER_CALL,
        run: () => found,
      });
    return unknownKey(c, key, Object.keys(known), keyed);
  };
}

function unknownKey(c: Context, key: string, keys: readonly string[], keyed: Reference["keyed"]): Response {
  const { noun = "", list = "" } = keyed ?? {};
  const near = meant(key, keys);
  const hint = near === undefined ? `${list} lists every key.` : `Did you mean ${near}?`;
  return refuse(c, "not-found", `There is no ${noun} of this key. ${hint}`);
}
