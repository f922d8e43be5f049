/** The HTTP API, independent of the host that serves it: no `node:` import, no state, no clock. */

import * as contract from "@plumbdrift/contract";
import { type Context, Hono, type MiddlewareHandler } from "hono";
import { methodNotAllowed } from "hono/method-not-allowed";
import { batch, limitedBatch } from "./batch.js";
import { compute, limited } from "./compute.js";
import { documentPaths, serveDocument } from "./document.js";
import type { Given } from "./engine.js";
import type { Kept } from "./kept.js";
import { finder } from "./operations/index.js";
import { ready } from "./ready.js";
import { lookUp, routeOf } from "./reference.js";
import { failed, refuse } from "./refuse.js";
import { retiring } from "./retiring.js";

/** What a host lends the app. */
export interface Lent {
  /** Stands around every route. */
  readonly around?: readonly MiddlewareHandler[];
  /** Keeps answers; without it each is computed anew. */
  readonly kept?: Kept | undefined;
}

/** The app with every route. Tests may give it an engine that breaks. */
export function createApp(given: Given = {}, { around = [], kept }: Lent = {}): Hono {
  const app = new Hono();
  app.onError((error, c) => failed(c, error));
  app.notFound((c) => unknownPath(c, app));
  for (const middleware of around) app.use(middleware);
  app.use(methodNotAllowed({ app, onMethodNotAllowed: wrongMethod }));

  app.get("/healthz", (c) =>
    c.json({ status: "ok", engine: contract.ENGINE_VERSION, contract: contract.CONTRACT_VERSION }),
  );
  const find = finder(given);
  app.get("/readyz", ready(find));
  for (const path of documentPaths) app.get(path, serveDocument(path));
  for (const reference of contract.references) app.get(routeOf(reference.path), lookUp(reference));
  for (const id of contract.operationIds) {
    const found = () => find(id);
    app.on(["POST", "QUERY"], contract.paths[id], retiring(found), limited, compute(found, kept));
  }
  app.post("/v1/batch", limitedBatch, batch(find));
  return app;
}

function wrongMethod(c: Context, methods: readonly string[]): Response {
  const allow = methods.join(", ");
  c.header("Allow", allow);
  if (methods.includes("QUERY")) c.header("Accept-Query", "application/json");
  return refuse(c, "method-not-allowed", `This path answers ${allow}, not ${c.req.method.slice(0, 20)}.`);
}

function unknownPath(c: Context, app: Hono): Response {
  const known = new Set(app.routes.map(({ path }) => path).filter((path) => !/[*:]/.test(path)));
  const near = contract.nearest(c.req.path, [...known]);
  const hint = near === undefined ? "/openapi.json lists every path." : `Did you mean ${near}?`;
  return refuse(c, "not-found", `There is nothing here. ${hint}`);
}

export const app: Hono = createApp();
