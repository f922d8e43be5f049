/** One line of JSON for each request. No body, no key, no address. */

import type { Log } from "./config.js";

/** What is known of a request once it is answered. */
export interface Answered {
  readonly id: string;
  readonly method: string;
  /** The template of the path: the path itself may say who asks for what. */
  readonly route: string;
  readonly status: number;
  readonly ms: number;
  /** Units of work that it was charged. */
  readonly work: number;
  /** Length of the answer, where it is known before it is sent. */
  readonly bytes: number | undefined;
  /** Name of the key. */
  readonly key: string | undefined;
}

export interface Logger {
  readonly answered: (request: Answered) => void;
  readonly failed: (id: string, error: unknown) => void;
}

/** Writes lines of a level. `write` that throws does not spoil an answer. */
export function logger(level: Log, write: (line: string) => void, now: () => number): Logger {
  const say = (severity: "info" | "error", event: string, fields: object): void => {
    try {
      write(JSON.stringify({ time: new Date(now()).toISOString(), level: severity, event, ...fields }));
    } catch {
      // a full disk or a closed pipe: the answer matters more
    }
  };
  return {
    answered: (request) => {
      if (level === "requests" || (level === "errors" && request.status >= 500)) {
        say(request.status >= 500 ? "error" : "info", "request", request);
      }
    },
    failed: (id, error) => {
      if (level !== "off") say("error", "failure", { id, error: told(error) });
    },
  };
}

/** The stack of an error, clipped: it names places of ours. */
function told(error: unknown): string {
  return String(error instanceof Error ? (error.stack ?? error) : error).slice(0, 4000);
}
