/** For hosts that serve the default export of a module: `deno serve dist/fetch.js`, `bun dist/fetch.js`. */
import { app } from "../app.js";

const host: Pick<typeof app, "fetch"> = { fetch: app.fetch };
// biome-ignore lint/style/noDefaultExport: what these hosts look for
export default host;
