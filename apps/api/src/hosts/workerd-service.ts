/** For Workers: all that `workerd.ts` has, with the service around the API, as the variables of the Worker say. Larger by what that takes. */

import { env } from "cloudflare:workers";
import { createService } from "../service/service.js";
import { publicConfig } from "../service/start.js";
import worker from "./workerd.js";

const variables = Object.entries(env).filter((one): one is [string, string] => typeof one[1] === "string");
const service = createService(publicConfig(Object.fromEntries(variables)), {
  address: (c) => c.req.header("cf-connecting-ip") ?? "",
});

const host: typeof worker = { ...worker, fetch: service.fetch };
// biome-ignore lint/style/noDefaultExport: what the runtime looks for
export default host;
