/** The service around the real app in this process, as a public host has it. */

import { createService } from "@plumbdrift/api/service";

type Config = Parameters<typeof createService>[0];

const config: Config = {
  port: 0,
  host: "127.0.0.1",
  anonymous: true,
  keys: [],
  origins: "*",
  rate: { units: 1e9, seconds: 60 },
  proxies: 1,
  compress: true,
  log: "requests",
  requestSeconds: 30,
  stopSeconds: 10,
  keptMegabytes: 0,
  telemetry: undefined,
};

export function serviceWith(
  host: Parameters<typeof createService>[1],
  changed: Partial<Config> = {},
): ReturnType<typeof createService> {
  return createService({ ...config, ...changed }, host);
}
