import { CONTRACT_VERSION } from "@plumbdrift/contract";
import { Hono } from "hono";

/** The HTTP API, independent of the host that serves it. */
export const app = new Hono();

app.get("/healthz", (c) => c.json({ status: "ok", contract: CONTRACT_VERSION }));
