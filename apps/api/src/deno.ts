/** Serves the API from Deno, as environment variables say (docs/operation.md): `deno run --allow-net --allow-env dist/deno.js`. */

import { getConnInfo } from "hono/deno";
import { answersIn } from "./service/answers.js";
import { createService } from "./service/service.js";
import { processConfig, sayWhere, stopOnSignal, within } from "./service/start.js";
import { turns } from "./service/turns.js";

/** What is used of the runtime. */
declare const Deno: {
  readonly serve: (
    options: { readonly hostname: string; readonly port: number; readonly onListen: (at: At) => void },
    fetch: (request: Request, info: object) => Promise<Response>,
  ) => { readonly shutdown: () => Promise<void> };
};

interface At {
  readonly port: number;
}

const config = processConfig();
const service = createService(config, {
  address: (c) => getConnInfo(c).remote.address ?? "",
  turn: turns((c) => !c.req.raw.signal.aborted),
  kept: answersIn(1e6 * config.keptMegabytes),
});
const { host: hostname, port } = config;
let begun = 0;
const server = Deno.serve(
  { hostname, port, onListen: (at) => sayWhere(config, at.port) },
  async (request, info) => {
    begun++;
    try {
      return await service.fetch(request, info);
    } finally {
      begun--;
    }
  },
);
stopOnSignal(config, (seconds) => within(stop(), seconds));

/** Deno sends what is answered before it shuts down, but reads no further what is asked. */
async function stop(): Promise<void> {
  while (begun > 0) await new Promise((resume) => setTimeout(resume, 20));
  await server.shutdown();
}
