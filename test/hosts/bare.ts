/** A bare Hono app to compare with: it reads a body and returns a constant, as long as an answer of the API. */

import { Hono } from "hono";

declare const BARE_BODY: string;

const app: Hono = new Hono();
app.get("/healthz", (c) => c.body("{}", 200, { "content-type": "application/json" }));
app.post("*", async (c) => {
  await c.req.text();
  return c.body(BARE_BODY, 200, { "content-type": "application/json" });
});

// biome-ignore lint/style/noDefaultExport: what workerd looks for
export default app;
