/** For Workers: all that `workerd.ts` has, with the service around the API, as the variables of the Worker say. Larger by what that takes. */

import { env } from "cloudflare:workers";
import { createService } from "../service/service.js";
import { publicConfig } from "../service/start.js";
import worker from "./workerd.js";

const variables = Object.entries(env).filter((one): one is [string, string] => typeof one[1] === "string");
// the edge compresses: a body that says it is would be compressed again
const config = { ...publicConfig(Object.fromEntries(variables)), compress: false };
const service = createService(config, {
  address: (c) => c.req.header("cf-connecting-ip") ?? "",
});

const host: typeof worker = { ...worker, fetch: service.fetch };
// biome-ignore lint/style/noDefaultExport: what the runtime looks for
export default host;
