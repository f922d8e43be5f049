/** Serves the API from Node, as environment variables say (docs/operation.md). Stops gracefully on SIGTERM and SIGINT. */
import { getConnInfo } from "@hono/node-server/conninfo";
import { computations, engine } from "./engine.js";
import { createHttpServer } from "./node/server.js";
import { stopper } from "./node/stop.js";
import { turns } from "./node/turns.js";
import { serveReferencePage } from "./reference-page.js";
import { type Config, readConfig } from "./service/config.js";
import { createService } from "./service/service.js";
import { serveTools } from "./tools.js";

const reading = readConfig(process.env);
if (!reading.ok) {
  for (const mistake of reading.mistakes) console.error(mistake);
  process.exit(1);
}
const { config } = reading;
const telemetry = await tracing(config);
const service = createService(config, {
  now: () => performance.timeOrigin + performance.now(),
  log: (line) => void process.stdout.write(`${line}\n`),
  address: (c) => getConnInfo(c).remote.address ?? "",
  turn: turns(),
  around: telemetry.around,
});
serveReferencePage(service);
serveTools(service, computations(engine));

const server = createHttpServer(service.fetch, config.requestSeconds);
const { stop } = stopper(server);
server.on("error", (error) => {
  console.error(`cannot listen on ${config.host} port ${config.port}: ${error.message}`);
  process.exit(1);
});
server.listen(config.port, config.host, () => {
  const address = server.address();
  const port = typeof address === "object" ? address?.port : config.port;
  console.log(`Plumbdrift listens on http://${named(config.host)}:${port}`);
});

for (const signal of ["SIGTERM", "SIGINT"] as const) {
  process.once(signal, async () => {
    const whole = await stop(config.stopSeconds);
    await telemetry.flush();
    if (!whole) console.error(`requests were still in flight after ${config.stopSeconds} s`);
    process.exit(whole ? 0 : 1);
  });
}

/** Only who asks for traces loads what makes them. */
async function tracing({
  telemetry: endpoint,
}: Config): ReturnType<typeof import("./node/telemetry.js")["tracing"]> {
  if (endpoint === undefined) return { around: [], flush: async () => {} };
  return (await import("./node/telemetry.js")).tracing();
}

function named(host: string): string {
  if (/^(127\.0\.0\.1|::1|localhost)$/.test(host)) return "localhost";
  return host.includes(":") ? `[${host}]` : host;
}
