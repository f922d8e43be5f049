/** What answers at /mcp. The SDK would outweigh the rest of an edge bundle, and takes as long to load as all else. */

import { Server } from "@modelcontextprotocol/sdk/server/index.js";
import { WebStandardStreamableHTTPServerTransport } from "@modelcontextprotocol/sdk/server/webStandardStreamableHttp.js";
import {
  CallToolRequestSchema,
  type CallToolResult,
  ErrorCode,
  ListToolsRequestSchema,
  McpError,
  type Tool,
} from "@modelcontextprotocol/sdk/types.js";
import { AjvJsonSchemaValidator } from "@modelcontextprotocol/sdk/validation/ajv";
import { CONTRACT_VERSION, nearest, type Problem } from "@plumbdrift/contract";
import type { Context } from "hono";
import { charge } from "./call.js";
import type { Computation } from "./computation.js";
import { problemFor } from "./refuse.js";
import { documents } from "./rendered.js";
import { instructions, toolList } from "./tool-list.js";

/** One for all requests: making one takes longer than most answers. */
const jsonSchemaValidator = new AjvJsonSchemaValidator();

/** What answers a message: nothing is kept between two requests, so any host may answer the next. */
export function toolServer(
  computations: readonly Computation[],
): (c: Context, message: unknown) => Promise<Response> {
  const tools = toolList(
    computations.map(({ described }) => described),
    JSON.parse(documents["/openapi.json"]),
  );
  const byName = new Map(computations.map((bound) => [bound.described.id, bound]));
  return async (c, message) => {
    const transport = new WebStandardStreamableHTTPServerTransport({ enableJsonResponse: true });
    await serverOf(c, tools, byName).connect(transport);
    return transport.handleRequest(c.req.raw, { parsedBody: message });
  };
}

function serverOf(c: Context, tools: readonly Tool[], byName: ReadonlyMap<string, Computation>): Server {
  const name = { name: "plumbdrift", version: CONTRACT_VERSION };
  const server = new Server(name, { capabilities: { tools: {} }, instructions, jsonSchemaValidator });
  server.setRequestHandler(ListToolsRequestSchema, () => ({ tools: [...tools] }));
  server.setRequestHandler(CallToolRequestSchema, ({ params }) => {
    const bound = byName.get(params.name);
    if (bound) return called(c, bound, params.arguments ?? {});
    const near = nearest(params.name, [...byName.keys()]);
    const hint = near === undefined ? "tools/list has every name." : `Did you mean ${near}?`;
    throw new McpError(ErrorCode.InvalidParams, `There is no such tool. ${hint}`);
  });
  return server;
}

/** The answer, or the problem document as an error of the tool. */
async function called(c: Context, { prepare }: Computation, given: unknown): Promise<CallToolResult> {
  try {
    const prepared = prepare(given);
    if (!prepared.ok) return refused(prepared.problem);
    const tooMuch = await charge(c, prepared.work);
    return tooMuch === undefined ? said(prepared.run()) : refused(tooMuch);
  } catch (error) {
    return refused(problemFor(error, c.get("call")));
  }
}

function refused(problem: Problem): CallToolResult {
  return { ...said(problem), isError: true };
}

/** As data, and as text for clients that read nothing else. */
function said(body: object): CallToolResult {
  return { structuredContent: { ...body }, content: [{ type: "text", text: JSON.stringify(body) }] };
}
