/** The bare app on Node, served as the API is; with ALL_HEADERS it also sends those of an answer of the API. */
import { serve } from "@hono/node-server";
import { bareApp } from "./bare.js";

declare const BARE_HEADERS: Readonly<Record<string, string>>;

const { fetch } = bareApp(process.env.ALL_HEADERS === "1" ? BARE_HEADERS : undefined);
serve({ fetch, port: Number(process.env.PORT) });
