/** /mcp: every computation as a tool for language-model clients (Model Context Protocol, streamable HTTP, no session). For the Node entry. */

import type { Hono } from "hono";
import { limited } from "./compute.js";
import type { Find } from "./operations/index.js";
import { problemFor, refuse, send } from "./refuse.js";
import { sentJson } from "./sent.js";

/** Adds the tools to an app. Who asks for them first loads what makes them. */
export function serveTools(app: Hono, find: Find): void {
  const loading = async () => (await import("./tool-server.js")).toolServer({ find, problemFor });
  let loaded: ReturnType<typeof loading> | undefined;
  app.post("/mcp", limited, async (c) => {
    const sent = await sentJson(c);
    if (!sent.ok) return send(c, sent.problem);
    // one call a request, so that what a request may cost stays what one operation may cost
    if (Array.isArray(sent.value))
      return refuse(c, "invalid-request", "Send one message a request, not an array.");
    loaded ??= loading();
    return (await loaded)(c, sent.value);
  });
}
