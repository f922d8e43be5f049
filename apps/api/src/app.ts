/** The HTTP API, independent of the host that serves it: no `node:` import, no state, no clock. */

import {
  CONTRACT_VERSION,
  ENGINE_VERSION,
  nearest,
  operations,
  readColumn,
  settleRig,
} from "@plumbdrift/contract";
import { settle, waterColumn } from "@plumbdrift/core";
import { type Context, Hono } from "hono";
import { compute, limited } from "./compute.js";
import { serveDocument } from "./document.js";
import { failed, refuse } from "./refuse.js";

/** The app with every route. Each call gives a new one; nothing is shared between requests but the document. */
export function createApp(): Hono {
  const app = new Hono();
  app.onError((error, c) => failed(c, error));
  app.notFound(unknownPath);

  app.get("/healthz", (c) => c.json({ status: "ok", engine: ENGINE_VERSION, contract: CONTRACT_VERSION }));
  app.get("/openapi.json", serveDocument());

  app.post(
    readColumn.path,
    limited,
    compute(readColumn, ({ observation }) => waterColumn(observation)),
  );
  app.post(
    settleRig.path,
    limited,
    compute(settleRig, ({ rig, observation, options }) => settle(rig, waterColumn(observation), options)),
  );

  for (const { path } of operations) app.all(path, (c) => wrongMethod(c, "POST"));
  for (const path of ["/healthz", "/openapi.json"]) app.all(path, (c) => wrongMethod(c, "GET, HEAD"));
  return app;
}

function wrongMethod(c: Context, allow: string): Response {
  c.header("Allow", allow);
  return refuse(c, "method-not-allowed", `${c.req.path} answers ${allow}, not ${c.req.method.slice(0, 20)}.`);
}

function unknownPath(c: Context): Response {
  const known = [...operations.map(({ path }) => path), "/openapi.json", "/healthz"];
  const near = nearest(c.req.path, known);
  const hint = near === undefined ? "/openapi.json lists every path." : `Did you mean ${near}?`;
  return refuse(c, "not-found", `There is nothing here. ${hint}`);
}

export const app: Hono = createApp();
