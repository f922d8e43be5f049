/** Serves the OpenAPI document in one of its forms: always the same bytes, loaded at the first request. */

import { renderings } from "@plumbdrift/contract";
import type { Handler } from "hono";
import { names } from "./caching.js";

/** Where the document is served. */
export const documentPaths = Object.keys(renderings) as readonly (keyof typeof renderings)[];

interface Served {
  readonly text: string;
  readonly etag: string;
}

export function serveDocument(path: keyof typeof renderings): Handler {
  let served: Served | undefined;
  return async (c) => {
    served ??= await load(path);
    c.header("ETag", served.etag);
    c.header("Cache-Control", "public, max-age=300");
    if (names(c.req.header("if-none-match"), served.etag)) return c.body(null, 304);
    return c.body(served.text, 200, { "content-type": renderings[path].type });
  };
}

async function load(path: keyof typeof renderings): Promise<Served> {
  const { documents } = await import("./rendered.js");
  const text = documents[path];
  return { text, etag: `"${fingerprint(text)}"` };
}

/** FNV-1a over the characters, 32 bits, and the length: enough to tell releases of one document apart. */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return `${hash.toString(16)}-${text.length.toString(16)}`;
}
