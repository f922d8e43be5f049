/** Sends the request of an invented stop through the real app and prints the answer for a person. `--json` prints the answer alone, `--us` speaks feet. */
import { rankSetups, readColumn } from "@plumbdrift/contract";
import { app } from "./app.js";
import { columnRequest, setupsRequest } from "./demo/stop.js";
import { demoText } from "./demo/text.js";

async function ask(path: string, request: unknown): Promise<unknown> {
  const headers = { "content-type": "application/json" };
  const response = await app.request(path, { method: "POST", headers, body: JSON.stringify(request) });
  if (!response.ok) throw new Error(await response.text());
  return response.json();
}

const units = process.argv.includes("--us") ? "us" : "si";
const setups = await ask(rankSetups.path, setupsRequest(units));
if (process.argv.includes("--json")) {
  console.log(JSON.stringify(setups, null, 2));
} else {
  const column = await ask(readColumn.path, columnRequest(units));
  console.log(demoText(column as never, setups as never));
}
