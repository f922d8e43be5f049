/** Serves the API from Node, as environment variables say (docs/operation.md). Stops gracefully on SIGTERM and SIGINT. */
import { getConnInfo } from "@hono/node-server/conninfo";
import { linesTo } from "./node/lines.js";
import { createHttpServer } from "./node/server.js";
import { stopper } from "./node/stop.js";
import { finder } from "./operations/index.js";
import { serveReferencePage } from "./reference-page.js";
import { answersIn } from "./service/answers.js";
import type { Config } from "./service/config.js";
import { createService } from "./service/service.js";
import { processConfig, sayWhere, stopOnSignal } from "./service/start.js";
import { turns } from "./service/turns.js";
import { serveTools } from "./tools.js";

const config = processConfig();
const telemetry = await tracing(config);
const service = createService(config, {
  now: () => performance.timeOrigin + performance.now(),
  log: linesTo(process.stdout),
  address: (c) => getConnInfo(c).remote.address ?? "",
  turn: turns((c) => !c.env.outgoing.destroyed),
  kept: answersIn(1e6 * config.keptMegabytes),
  around: telemetry.around,
});
serveReferencePage(service);
serveTools(service, finder());

const server = createHttpServer(service.fetch, config.requestSeconds);
const { stop } = stopper(server);
server.on("error", (error) => {
  console.error(`cannot listen on ${config.host} port ${config.port}: ${error.message}`);
  process.exit(1);
});
server.listen(config.port, config.host, () => {
  const address = server.address();
  sayWhere(config, typeof address === "object" && address ? address.port : config.port);
});
stopOnSignal(config, async (seconds) => {
  const whole = await stop(seconds);
  await telemetry.flush();
  return whole;
});

/** Only who asks for traces loads what makes them. */
async function tracing({
  telemetry: endpoint,
}: Config): ReturnType<typeof import("./node/telemetry.js")["tracing"]> {
  if (endpoint === undefined) return { around: [], flush: async () => {} };
  return (await import("./node/telemetry.js")).tracing();
}
