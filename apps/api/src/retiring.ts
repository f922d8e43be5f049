/** Says in every answer of a path, problems included, that the operation is on its way out. */

import { deprecationHeaders } from "@plumbdrift/contract";
import type { MiddlewareHandler } from "hono";
import type { Computation } from "./computation.js";

export function retiring(find: () => Promise<Computation>): MiddlewareHandler {
  return async (c, next) => {
    const { deprecated } = (await find()).described;
    const headers = deprecated === undefined ? [] : Object.entries(deprecationHeaders(deprecated));
    for (const [name, value] of headers) c.header(name, value);
    await next();
  };
}
