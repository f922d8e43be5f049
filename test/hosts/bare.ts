/** A bare Hono app to compare with: it reads a body and returns a constant, as long as an answer of the API. */

import { Hono } from "hono";

declare const BARE_BODY: string;

type Headers = Readonly<Record<string, string>>;

export function bareApp(headers: Headers = { "content-type": "application/json" }): Hono {
  const app = new Hono();
  app.get("/healthz", (c) => c.body("{}", 200, { "content-type": "application/json" }));
  app.post("*", async (c) => {
    await c.req.text();
    return c.body(BARE_BODY, 200, headers);
  });
  return app;
}

const app: Hono = bareApp();
// biome-ignore lint/style/noDefaultExport: what workerd looks for
export default app;
