/** Asks again where the host said "not now". Every call is a pure computation, so asking twice does no harm. */

export type Fetch = (request: Request) => Promise<Response>;

export interface Patience {
  /** How often to ask again after 429 or 503; 2 unless given, 0 for never. */
  readonly retries?: number | undefined;
  /** The longest wait to accept before one retry, in seconds; 30 unless given. Who asks for more gets no second request. */
  readonly longestWait?: number | undefined;
}

/** A fetch that waits as `Retry-After` says and asks again. The signal of the request ends the wait too. */
export function patient(fetch: Fetch, { retries = 2, longestWait = 30 }: Patience): Fetch {
  return async (request) => {
    for (let attempt = 0; ; attempt++) {
      const response = await fetch(request.clone());
      if (attempt >= retries || (response.status !== 429 && response.status !== 503)) return response;
      const wait = secondsToWait(response.headers) ?? 2 ** attempt;
      if (wait > longestWait) return response;
      await response.body?.cancel();
      await pause(wait, request.signal);
    }
  };
}

/** What `Retry-After` asks for (RFC 9110, 10.2.3), or nothing where it is absent or cannot be read.
 *  A date counts from the host's own `Date`: the clock here may be wrong. */
function secondsToWait(headers: Headers): number | undefined {
  const said = headers.get("retry-after")?.trim() ?? "";
  if (/^\d+$/.test(said)) return Number(said);
  const until = Date.parse(said);
  if (Number.isNaN(until)) return undefined;
  const now = Date.parse(headers.get("date") ?? "");
  return Math.max(0, (until - (Number.isNaN(now) ? Date.now() : now)) / 1000);
}

function pause(seconds: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    signal.throwIfAborted();
    const abort = () => {
      clearTimeout(timer);
      reject(signal.reason);
    };
    const timer = setTimeout(() => {
      signal.removeEventListener("abort", abort);
      resolve();
    }, seconds * 1000);
    signal.addEventListener("abort", abort, { once: true });
  });
}
