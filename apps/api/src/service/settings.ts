/** Every environment variable: what it may be, what it means, and how it is read. */

import * as z from "zod";
import type { Log } from "./config.js";
import { type Key, keysOf } from "./keys.js";

export interface Setting<T> {
  readonly parse: z.ZodType<T, string>;
  readonly expected: string;
  readonly means: string;
  /** In words, for the table of the documentation. */
  readonly unset: string;
  /** Whether its value may be shown in a message. */
  readonly secret?: true;
}

function setting<T>(parse: z.ZodType<T, string>, says: Omit<Setting<T>, "parse">): Setting<T> {
  return { parse, ...says };
}

function whole(min: number, max: number, unset: string, means: string): Setting<number> {
  const parse = z
    .string()
    .regex(/^\d{1,12}$/)
    .transform(Number)
    .pipe(z.number().min(min).max(max));
  return setting(parse, { expected: `a whole number from ${min} to ${max}`, unset, means });
}

function flag(unset: string, means: string): Setting<boolean> {
  const parse = z.enum(["0", "1"]).transform((text) => text === "1");
  return setting(parse, { expected: "0 or 1", unset, means });
}

const origin = String.raw`https?://[\w.-]+(?::\d+)?`;
const origins = new RegExp(String.raw`^\s*(?:\*|${origin}(?:\s*,\s*${origin})*)\s*$`);
const list = (text: string): string[] => text.split(",").map((part) => part.trim());

export interface Settings {
  readonly PORT: Setting<number>;
  readonly HOST: Setting<string>;
  readonly ALLOW_ANONYMOUS: Setting<boolean>;
  readonly PLUMBDRIFT_API_KEYS: Setting<readonly Key[]>;
  readonly PLUMBDRIFT_CORS_ORIGINS: Setting<readonly string[]>;
  readonly PLUMBDRIFT_RATE_UNITS: Setting<number>;
  readonly PLUMBDRIFT_RATE_SECONDS: Setting<number>;
  readonly PLUMBDRIFT_TRUSTED_PROXIES: Setting<number>;
  readonly PLUMBDRIFT_COMPRESS: Setting<boolean>;
  readonly PLUMBDRIFT_LOG: Setting<Log>;
  readonly PLUMBDRIFT_REQUEST_SECONDS: Setting<number>;
  readonly PLUMBDRIFT_STOP_SECONDS: Setting<number>;
  readonly PLUMBDRIFT_KEPT_MEGABYTES: Setting<number>;
  readonly OTEL_EXPORTER_OTLP_ENDPOINT: Setting<string>;
}

/** Every variable, in the order of the documentation. */
export const settings: Settings = {
  PORT: whole(0, 65_535, "8787", "Port to listen on; 0 takes a free one."),
  HOST: setting(z.string().regex(/^[\w.:%-]+$/), {
    expected: "a name or an address to listen on",
    unset: "127.0.0.1",
    means: "Address to listen on. Anything but loopback asks for keys, or for ALLOW_ANONYMOUS.",
  }),
  ALLOW_ANONYMOUS: flag("0", "1 serves whoever has no key, on a public address too."),
  PLUMBDRIFT_API_KEYS: setting(
    z.string().transform((text, context) => {
      const keys = keysOf(list(text));
      if (keys === undefined) context.addIssue("no keys");
      return keys ?? [];
    }),
    {
      expected: "name=hash, several with commas between; a hash is 64 hexadecimal digits",
      unset: "none",
      means: "Keys that are let in, as SHA-256 hashes.",
      secret: true,
    },
  ),
  PLUMBDRIFT_CORS_ORIGINS: setting(z.string().regex(origins).transform(list), {
    expected: "* or origins such as https://app.example, with commas between",
    unset: "*",
    means: "Web pages that may read answers.",
  }),
  PLUMBDRIFT_RATE_UNITS: whole(
    0,
    1e9,
    "0 on loopback, else 20000000",
    "Units of work that a caller may ask for in a window; 0 sets no limit.",
  ),
  PLUMBDRIFT_RATE_SECONDS: whole(1, 86_400, "60", "Length of that window in seconds."),
  PLUMBDRIFT_TRUSTED_PROXIES: whole(
    0,
    10,
    "0",
    "Proxies of yours that add to X-Forwarded-For; only so many of its last entries are believed.",
  ),
  PLUMBDRIFT_COMPRESS: flag("1", "0 leaves compression to what stands in front."),
  PLUMBDRIFT_LOG: setting(z.enum(["off", "errors", "requests"]), {
    expected: "off, errors or requests",
    unset: "requests",
    means: "What is logged.",
  }),
  PLUMBDRIFT_REQUEST_SECONDS: whole(1, 600, "30", "Time a client has to send a request whole."),
  PLUMBDRIFT_STOP_SECONDS: whole(1, 600, "10", "Time that requests in flight have to finish on SIGTERM."),
  PLUMBDRIFT_KEPT_MEGABYTES: whole(
    0,
    1024,
    "16",
    "Memory for answers, given again to whoever sends the same body; 0 keeps none.",
  ),
  OTEL_EXPORTER_OTLP_ENDPOINT: setting(z.url({ protocol: /^https?$/ }), {
    expected: "an http or https address",
    unset: "none",
    means:
      "Where traces are sent, by OTLP over HTTP; none are made without it. Its other OTEL_ variables work as its documentation says.",
  }),
};
