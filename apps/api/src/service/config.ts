/** What an operator may set, read once from environment variables. A wrong or misspelt one stops the start. */

import { nearest } from "@plumbdrift/contract";
import type { Key } from "./keys.js";
import type { Policy } from "./rate-limit.js";
import { type Setting, type Settings, settings } from "./settings.js";

export interface Config {
  readonly port: number;
  readonly host: string;
  readonly anonymous: boolean;
  readonly keys: readonly Key[];
  readonly origins: "*" | readonly string[];
  /** Nothing where requests are not limited. */
  readonly rate: Policy | undefined;
  /** How many proxies in front of this host add to X-Forwarded-For. */
  readonly proxies: number;
  readonly compress: boolean;
  readonly log: Log;
  readonly requestSeconds: number;
  readonly stopSeconds: number;
  readonly keptMegabytes: number;
  readonly telemetry: string | undefined;
}

export type Log = "off" | "errors" | "requests";

export type Environment = Readonly<Record<string, string | undefined>>;

export type Reading =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly mistakes: readonly string[] };

type Value<S> = S extends Setting<infer T> ? T : never;

/** Reads a configuration. An empty variable counts as unset. `exposed` says that other machines reach the host, whatever HOST is. */
export function readConfig(environment: Environment, exposed = false): Reading {
  const mistakes = Object.keys(environment).flatMap(misspelt);
  const value = <N extends keyof Settings>(name: N): Value<Settings[N]> | undefined => {
    const given = environment[name];
    if (given === undefined || given === "") return undefined;
    const { parse, expected, secret }: Setting<unknown> = settings[name];
    const read = parse.safeParse(given);
    if (read.success) return read.data as Value<Settings[N]>;
    const shown = secret ? `a value of ${given.length} characters` : `"${given.slice(0, 60)}"`;
    mistakes.push(`${name} must be ${expected}, got ${shown}`);
    return undefined;
  };
  const host = value("HOST") ?? "127.0.0.1";
  const open = exposed || !isLoopback(host);
  const units = value("PLUMBDRIFT_RATE_UNITS") ?? (open ? 20_000_000 : 0);
  const seconds = value("PLUMBDRIFT_RATE_SECONDS") ?? 60;
  const origins = value("PLUMBDRIFT_CORS_ORIGINS") ?? ["*"];
  const keys = value("PLUMBDRIFT_API_KEYS") ?? [];
  const allowed = value("ALLOW_ANONYMOUS") ?? false;
  const config: Config = {
    port: value("PORT") ?? 8787,
    host,
    anonymous: allowed || keys.length === 0,
    keys,
    origins: origins[0] === "*" ? "*" : origins,
    rate: units === 0 ? undefined : { units, seconds },
    proxies: value("PLUMBDRIFT_TRUSTED_PROXIES") ?? 0,
    compress: value("PLUMBDRIFT_COMPRESS") ?? true,
    log: value("PLUMBDRIFT_LOG") ?? "requests",
    requestSeconds: value("PLUMBDRIFT_REQUEST_SECONDS") ?? 30,
    stopSeconds: value("PLUMBDRIFT_STOP_SECONDS") ?? 10,
    keptMegabytes: value("PLUMBDRIFT_KEPT_MEGABYTES") ?? 16,
    telemetry: value("OTEL_EXPORTER_OTLP_ENDPOINT"),
  };
  if (mistakes.length === 0 && open && keys.length === 0 && !allowed) {
    const what = exposed ? "This host" : `HOST=${host}`;
    mistakes.push(
      `${what} can be reached from other machines: set PLUMBDRIFT_API_KEYS, or ALLOW_ANONYMOUS=1 to serve anyone`,
    );
  }
  return mistakes.length === 0 ? { ok: true, config } : { ok: false, mistakes };
}

/** A variable with our prefix that we do not know. */
function misspelt(name: string): string[] {
  const prefix = "PLUMBDRIFT_";
  if (!name.startsWith(prefix) || Object.hasOwn(settings, name)) return [];
  const known = Object.keys(settings);
  const bare = known.map((other) => other.replace(prefix, ""));
  const near = nearest(name.slice(prefix.length), bare);
  const hint =
    near === undefined ? `known are ${known.join(", ")}` : `did you mean ${known[bare.indexOf(near)]}?`;
  return [`${name.slice(0, 60)} is no setting: ${hint}`];
}

function isLoopback(host: string): boolean {
  return host === "localhost" || host === "::1" || /^127(\.\d{1,3}){3}$/.test(host);
}
