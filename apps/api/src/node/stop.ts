/** Stops a server without losing a request that it has taken. */

import type { Server, ServerResponse } from "node:http";
import { Server as Listener } from "node:net";

/** How long a connection must rest before it counts as idle, in ms: a request may be on its way. */
const REST = 100;

export interface Stopper {
  /** Takes no new connection, answers what is in flight, then closes what rests. False when `seconds` did not do and requests were cut off. */
  readonly stop: (seconds: number) => Promise<boolean>;
}

/** Watches the requests of a server, from before it listens. */
export function stopper(server: Server): Stopper {
  const open = new Set<ServerResponse>();
  let stopping = false;
  let lastSeen = 0;
  // ahead of the app's own listener, which may answer at once
  server.prependListener("request", (_, response) => {
    open.add(response);
    lastSeen = Date.now();
    if (stopping) response.setHeader("Connection", "close");
    response.on("close", () => open.delete(response));
  });
  const stop = async (seconds: number): Promise<boolean> => {
    stopping = true;
    const deadline = Date.now() + 1000 * seconds;
    lastSeen = Date.now();
    for (const response of open) if (!response.headersSent) response.setHeader("Connection", "close");
    // the listener alone: closing the HTTP server would cut connections on which a request is about to come
    const closed = new Promise<void>((resolve) => Listener.prototype.close.call(server, () => resolve()));
    let finished = false;
    void closed.then(() => {
      finished = true;
    });
    while (!finished && Date.now() < deadline) {
      if (open.size === 0 && Date.now() - lastSeen >= REST) server.closeIdleConnections();
      await Promise.race([closed, new Promise((resolve) => setTimeout(resolve, 20))]);
    }
    server.closeAllConnections();
    return finished || open.size === 0;
  };
  return { stop };
}
