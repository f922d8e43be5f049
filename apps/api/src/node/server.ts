/** An HTTP server whose own refusals are problem documents too: those that Node makes before a request reaches the app. */

import { createServer, type Server, type ServerResponse, STATUS_CODES } from "node:http";
import type { Duplex } from "node:stream";
import { getRequestListener } from "@hono/node-server";
import { type ProblemCode, problem } from "@plumbdrift/contract";

type Fetch = Parameters<typeof getRequestListener>[0];
type FetchEnv = Parameters<Fetch>[1];

/** A client has `requestSeconds` to send a request whole, and a third of it for the headers; an idle connection is kept 5 s. */
export function createHttpServer(fetch: Fetch, requestSeconds: number): Server {
  const server = createServer(
    {
      requestTimeout: 1000 * requestSeconds,
      headersTimeout: Math.ceil((1000 * requestSeconds) / 3),
      keepAliveTimeout: 5_000,
      connectionsCheckingInterval: 250,
      maxHeaderSize: 16_384,
      requireHostHeader: false, // refused by the listener, with a document
    },
    getRequestListener(closing(fetch), { errorHandler: () => malformed() }),
  );
  const answering = new WeakMap<Duplex, ServerResponse>();
  server.on("request", (_, response) => response.socket && answering.set(response.socket, response));
  // an expectation that nobody knows may be passed over (RFC 9110, section 10.1.1); Node would answer 417 and no document
  server.on("checkExpectation", (request, response) => server.emit("request", request, response));
  server.on("connect", (_, socket) => socket.end(rawProblem("malformed-request", "This is no proxy.")));
  server.on("clientError", (error: NodeJS.ErrnoException, socket) => {
    const response = answering.get(socket);
    const begun = response?.headersSent === true && !response.writableFinished;
    if (begun || !socket.writable || error.code === "ECONNRESET") socket.destroy();
    else socket.end(rawProblem(...refusal(error.code)));
  });
  return server;
}

/** Closes a connection on which a body is too large to be read: nothing could follow it. */
function closing(fetch: Fetch): Fetch {
  return async (request, env) => {
    const response = (await fetch(request, env)) as Response;
    const { incoming, outgoing } = env;
    if (response.status === 413 && !incoming.complete) {
      outgoing.setHeader("Connection", "close");
      linger(incoming);
    }
    return response;
  };
}

/** Once the answer is sent, what still comes is let go by for a while (RFC 9112, section 9.6): a socket that is closed
 *  on unread bytes resets the connection, and the client loses the answer. */
function linger(incoming: FetchEnv["incoming"]): void {
  const { socket } = incoming;
  const { destroySoon } = socket;
  socket.destroySoon = () => {
    socket.destroySoon = destroySoon; // the listener waits half a second, or 64 MiB, and calls it again
    incoming.removeAllListeners("data"); // the body as a web stream holds the bytes up
    incoming.once("end", destroySoon.bind(socket));
    socket.end();
  };
}

const notHttp = "What came is no request of HTTP/1.1.";

/** For what is HTTP and still no request: a target or a Host that is no address. */
function malformed(): Response {
  const { text, headers } = document("malformed-request", notHttp);
  return new Response(text, { status: 400, headers });
}

function refusal(code: string | undefined): readonly [ProblemCode, string] {
  if (code === "HPE_HEADER_OVERFLOW")
    return ["headers-too-large", "The headers may have 16384 bytes in all."];
  if (code === "ERR_HTTP_REQUEST_TIMEOUT")
    return ["too-slow", "The request did not come whole in the time it has."];
  return ["malformed-request", notHttp];
}

function rawProblem(code: ProblemCode, detail: string): string {
  const { status, text, headers } = document(code, detail);
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}`);
  return `HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\n${lines.join("\r\n")}\r\n\r\n${text}`;
}

function document(
  code: ProblemCode,
  detail: string,
): {
  readonly status: number;
  readonly text: string;
  readonly headers: Readonly<Record<string, string>>;
} {
  const id = crypto.randomUUID();
  const body = problem(code, detail, { instance: `urn:uuid:${id}` });
  const text = JSON.stringify(body);
  const headers = {
    "Content-Type": "application/problem+json",
    "Content-Length": String(Buffer.byteLength(text)),
    "Cache-Control": "no-store",
    "Access-Control-Allow-Origin": "*",
    "X-Content-Type-Options": "nosniff",
    "X-Request-Id": id,
    Connection: "close",
  };
  return { status: body.status, text, headers };
}
