/** An engine that fails at whatever it is asked. */

import type { Engine } from "@plumbdrift/api/engine";

const fails = (): never => {
  throw new Error("the secret of the engine");
};

export const broken = new Proxy({}, { get: () => fails }) as Engine;
