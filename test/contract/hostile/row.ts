/** What a row of hostile input says. */

import type { Body } from "../api.js";

/** Where a hostile value goes, what it is, and what must be said of it. */
export interface Hostile {
  readonly name: string;
  readonly change: (body: Body) => void;
  readonly status: 400 | 422;
  readonly path: string;
  readonly expected: string;
  readonly received?: string;
  readonly suggestion?: string;
}

/** A row in one line. */
export const row = (
  name: string,
  change: (body: Body) => void,
  status: 400 | 422,
  path: string,
  expected: string,
  suggestion?: string,
): Hostile => ({ name, change, status, path, expected, ...(suggestion === undefined ? {} : { suggestion }) });
