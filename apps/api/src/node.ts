/** Serves the API from Node on PORT, 8787 unless it is set. Stops gracefully on SIGTERM and SIGINT. */
import { serve } from "@hono/node-server";
import { app } from "./app.js";

const wanted = Number(process.env.PORT || 8787);
if (!Number.isInteger(wanted) || wanted < 0 || wanted > 65_535) {
  console.error(`PORT must be a whole number from 0 to 65535, got ${process.env.PORT}`);
  process.exit(1);
}

const server = serve({ fetch: app.fetch, port: wanted }, ({ port }) => {
  console.log(`Plumbdrift listens on http://localhost:${port}`);
});

server.on("error", (error) => {
  console.error(`cannot listen on port ${wanted}: ${error.message}`);
  process.exit(1);
});

for (const signal of ["SIGTERM", "SIGINT"] as const) {
  process.once(signal, () => server.close(() => process.exit(0)));
}
