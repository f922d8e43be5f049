/** Asks the API in this process, without a server. `--json` prints the answer alone. */
import { app } from "./app.js";

const answer = await (await app.request("/healthz")).text();
console.log(process.argv.includes("--json") ? answer : `The API answers: ${answer}`);
