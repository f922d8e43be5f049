/** A moment as ISO 8601 says it, with its offset: no time zone is guessed. */

import { type Seconds, seconds } from "@plumbdrift/core";
import { RefusedError } from "../refusal.js";

const pattern = /^(\d{4})-(\d{2})-(\d{2})T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:?\d{2})$/;

/** Seconds since 1970. Throws RefusedError at `path` for a date without a time or an offset, or a day that is in no calendar. */
export function momentOf(text: string, path: string, where = ""): Seconds {
  const [, year, month, day] = pattern.exec(text) ?? [];
  const milliseconds = Date.parse(text.replace(/([+-]\d{2})(\d{2})$/, "$1:$2"));
  const days = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  if (day !== undefined && Number(day) <= days && Number.isFinite(milliseconds))
    return seconds(milliseconds / 1000);
  const expected = `a time with its offset${where}, like 2031-05-04T07:30:00Z or 2031-05-04T07:30-07:00`;
  throw new RefusedError("impossible", `${path}: expected ${expected}.`, {
    path,
    expected,
    received: JSON.stringify(text.slice(0, 40)),
  });
}

/** The moment as UTC. */
export function momentText(moment: Seconds): string {
  return new Date(moment * 1000).toISOString();
}
