/** How a host begins: what its variables ask for, or why it does not. */

import { type Config, type Environment, readConfig } from "./config.js";

/** The settings of a host that anyone may reach: no address of its own says so. Throws where one is wrong, and without keys unless anyone may ask. */
export function publicConfig(environment: Environment): Config {
  const reading = readConfig(environment, true);
  if (reading.ok) return reading.config;
  throw new Error(reading.mistakes.join("\n"));
}

/** The settings of this process. Ends it where one is wrong, with a line for each. */
export function processConfig(): Config {
  const reading = readConfig(process.env);
  if (reading.ok) return reading.config;
  for (const mistake of reading.mistakes) console.error(mistake);
  process.exit(1);
}

/** Says where this process listens. */
export function sayWhere({ host }: Config, port: number): void {
  const loopback = /^(127\.0\.0\.1|::1|localhost)$/.test(host);
  const named = host.includes(":") ? `[${host}]` : host;
  console.log(`Plumbdrift listens on http://${loopback ? "localhost" : named}:${port}`);
}

/** Ends this process on SIGTERM and SIGINT, once `stop` has had so many seconds to answer what is in flight: with 1 where they did not do. */
export function stopOnSignal({ stopSeconds }: Config, stop: (seconds: number) => Promise<boolean>): void {
  for (const signal of ["SIGTERM", "SIGINT"] as const) {
    process.once(signal, async () => {
      const whole = await stop(stopSeconds);
      if (!whole) console.error(`requests were still in flight after ${stopSeconds} s`);
      process.exit(whole ? 0 : 1);
    });
  }
}

/** Whether something is done in so many seconds. */
export function within(done: Promise<unknown>, seconds: number): Promise<boolean> {
  const late = new Promise<boolean>((resolve) => setTimeout(() => resolve(false), 1000 * seconds));
  return Promise.race([done.then(() => true), late]);
}
