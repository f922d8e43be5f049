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
import { CONTRACT_VERSION, nearest, operationIds, type Problem } from "@plumbdrift/contract";
import type { Context } from "hono";
import { charge } from "./call.js";
import type { Computation } from "./computation.js";
import type { Find } from "./operations/index.js";
import type { problemFor } from "./refuse.js";
import { documents } from "./rendered.js";
import { instructions, toolList } from "./tool-list.js";

/** One for all requests: making one takes longer than most answers. */
const jsonSchemaValidator = new AjvJsonSchemaValidator();

/** What is called, and what an error of it is. It comes from the app: in a bundle of its own this file knows no error of the core. */
export interface Called {
  readonly find: Find;
  readonly problemFor: typeof problemFor;
}

/** What answers a message: nothing is kept between two requests, so any host may answer the next. */
export function toolServer({
  find,
  problemFor,
}: Called): (c: Context, message: unknown) => Promise<Response> {
  const tools = toolList(JSON.parse(documents["/openapi.json"]));
  const call: Calling = async (c, name, given) => {
    const id = operationIds.find((one) => one === name);
    if (id === undefined) throw noTool(name);
    try {
      return await called(c, await find(id), given);
    } catch (error) {
      return refused(problemFor(error, c.get("call")));
    }
  };
  return async (c, message) => {
    const transport = new WebStandardStreamableHTTPServerTransport({ enableJsonResponse: true });
    await serverOf(c, tools, call).connect(transport);
    return transport.handleRequest(c.req.raw, { parsedBody: message });
  };
}

type Calling = (c: Context, name: string, given: unknown) => Promise<CallToolResult>;

function serverOf(c: Context, tools: readonly Tool[], call: Calling): Server {
  const name = { name: "plumbdrift", version: CONTRACT_VERSION };
  const server = new Server(name, { capabilities: { tools: {} }, instructions, jsonSchemaValidator });
  server.setRequestHandler(ListToolsRequestSchema, () => ({ tools: [...tools] }));
  server.setRequestHandler(CallToolRequestSchema, ({ params }) =>
    call(c, params.name, params.arguments ?? {}),
  );
  return server;
}

function noTool(name: string): McpError {
  const near = nearest(name, operationIds);
  const hint = near === undefined ? "tools/list has every name." : `Did you mean ${near}?`;
  return new McpError(ErrorCode.InvalidParams, `There is no such tool. ${hint}`);
}

/** The answer, or the problem document as an error of the tool. */
async function called(c: Context, { prepare }: Computation, given: unknown): Promise<CallToolResult> {
  const prepared = prepare(given);
  if (!prepared.ok) return refused(prepared.problem);
  const tooMuch = await charge(c, prepared.work);
  return tooMuch === undefined ? said(prepared.run()) : refused(tooMuch);
}

function refused(problem: Problem): CallToolResult {
  return { ...said(problem), isError: true };
}

/** As data, and as text for clients that read nothing else. */
function said(body: object): CallToolResult {
  return { structuredContent: { ...body }, content: [{ type: "text", text: JSON.stringify(body) }] };
}
