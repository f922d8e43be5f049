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
