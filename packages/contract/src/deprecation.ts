/** An operation on its way out, and what its answers say about that in their headers. */

export interface Deprecation {
  /** The instant since when something else is to be used, as 2026-11-26T00:00:00Z. */
  readonly since: string;
  /** The instant from which it may no longer answer; absent while that is open. */
  readonly sunset?: string;
  /** A page that says what to use in its place. */
  readonly link: string;
}

/** Deprecation (RFC 9745), Sunset (RFC 8594) and a Link to the page. Throws RangeError for what is no instant, and for a sunset before the deprecation.
 *  @example deprecationHeaders({ since: "2023-06-30T23:59:59Z", link: "/v2" }).Deprecation // => "@1688169599" */
export function deprecationHeaders({ since, sunset, link }: Deprecation): Readonly<Record<string, string>> {
  const from = instant(since);
  const page = `<${link}>; rel="deprecation"; type="text/html"`;
  if (sunset === undefined) return { Deprecation: `@${from / 1000}`, Link: page };
  const until = instant(sunset);
  if (until < from) throw new RangeError(`sunset must be at or after ${since}, got ${sunset}`);
  return { Deprecation: `@${from / 1000}`, Sunset: new Date(until).toUTCString(), Link: page };
}

function instant(text: string): number {
  const at = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/.test(text) ? Date.parse(text) : Number.NaN;
  if (Number.isNaN(at)) throw new RangeError(`an instant must be such as 2026-11-26T00:00:00Z, got ${text}`);
  return at;
}
