/** /reference: the document as a page to read and to try out. For the Node entry: its program is a file beside the bundle. */

import { readFile } from "node:fs/promises";
import type { Context, Hono } from "hono";

/** Nothing from any other origin, nothing inline that runs. RapiDoc writes style attributes, which cannot run. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'sha256-56Ph23MXZvE0Fm5vsseYLb0YVfbbtYUzgZr0LSmubpY='",
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const page = `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>Plumbdrift: the HTTP API</title>
    <link rel="icon" href="data:,">
    <script type="module" src="/reference/rapidoc.js"></script>
  </head>
  <body>
    <rapi-doc
      spec-url="/openapi.json"
      render-style="read"
      schema-style="table"
      theme="light"
      load-fonts="false"
      regular-font="system-ui, sans-serif"
      mono-font="ui-monospace, monospace"
      show-header="false"
      allow-server-selection="false"
      allow-spec-url-load="false"
      allow-spec-file-load="false"
    ></rapi-doc>
    <noscript>The document itself is at <a href="/openapi.json">/openapi.json</a>.</noscript>
  </body>
</html>
`;

/** Adds the page to an app. */
export function serveReferencePage(app: Hono): void {
  let program: string | undefined;
  app.get("/reference", (c) => served(c, page, "text/html; charset=utf-8"));
  app.get("/reference/rapidoc.js", async (c) => {
    program ??= await readFile(new URL("rapidoc.js", import.meta.url), "utf8");
    return served(c, program, "text/javascript; charset=utf-8");
  });
}

function served(c: Context, body: string, type: string): Response {
  return c.body(body, 200, {
    "content-type": type,
    "content-security-policy": policy,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cache-control": "public, max-age=300",
  });
}
