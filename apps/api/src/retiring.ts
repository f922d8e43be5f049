/** Says in every answer of a path, problems included, that the operation is on its way out. */

import { type Deprecation, deprecationHeaders } from "@plumbdrift/contract";
import type { MiddlewareHandler } from "hono";

export function retiring(deprecation: Deprecation | undefined): MiddlewareHandler {
  const headers = Object.entries(deprecation === undefined ? {} : deprecationHeaders(deprecation));
  return async (c, next) => {
    for (const [name, value] of headers) c.header(name, value);
    await next();
  };
}
