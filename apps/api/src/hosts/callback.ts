/** Delivers outcomes by HTTP: for queues whose results go to an address of yours. */
import type { Deliver } from "./message.js";

/** Posts each outcome as JSON. An answer other than 2xx, or none within ten seconds, is a failure of delivery. */
export function callback(url: string, authorization?: string): Deliver {
  const headers = { "content-type": "application/json", ...(authorization ? { authorization } : {}) };
  return async (outcome) => {
    const init = {
      method: "POST",
      headers,
      body: JSON.stringify(outcome),
      signal: AbortSignal.timeout(10_000),
    };
    const { ok, status } = await fetch(url, init);
    if (!ok) throw new Error(`the address for results answered ${status}`);
  };
}
