/** Serves the API from Node on PORT, 3000 unless it is set. */
import { serve } from "@hono/node-server";
import { app } from "./app.js";

serve({ fetch: app.fetch, port: Number(process.env.PORT ?? 3000) }, ({ port }) =>
  console.log(`listening on http://localhost:${port}`),
);
