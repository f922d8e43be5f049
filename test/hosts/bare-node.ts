/** The bare app on Node, served as the API is. */
import { serve } from "@hono/node-server";
import app from "./bare.js";

serve({ fetch: app.fetch, port: Number(process.env.PORT) });
