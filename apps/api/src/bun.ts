/** Serves the API from Bun, as environment variables say (docs/operation.md): `bun dist/bun.js`. */

import { getConnInfo } from "hono/bun";
import { answersIn } from "./service/answers.js";
import { createService } from "./service/service.js";
import { processConfig, sayWhere, stopOnSignal, within } from "./service/start.js";
import { turns } from "./service/turns.js";

/** What is used of the runtime. */
declare const Bun: {
  readonly serve: (options: {
    readonly hostname: string;
    readonly port: number;
    readonly fetch: ReturnType<typeof createService>["fetch"];
  }) => { readonly port: number; readonly stop: () => Promise<void> };
};

const config = processConfig();
const service = createService(config, {
  address: (c) => getConnInfo(c).remote.address ?? "",
  turn: turns((c) => !c.req.raw.signal.aborted),
  kept: answersIn(1e6 * config.keptMegabytes),
});
const server = Bun.serve({ hostname: config.host, port: config.port, fetch: service.fetch });
sayWhere(config, server.port);
stopOnSignal(config, (seconds) => within(server.stop(), seconds));
