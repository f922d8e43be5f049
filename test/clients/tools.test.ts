/** /mcp of the Node entry, asked by the official SDK's own client. */

import { Client } from "@modelcontextprotocol/sdk/client/index.js";
import { StreamableHTTPClientTransport } from "@modelcontextprotocol/sdk/client/streamableHttp.js";
import type { Tool } from "@modelcontextprotocol/sdk/types.js";
import type { JsonSchemaType } from "@modelcontextprotocol/sdk/validation";
import { AjvJsonSchemaValidator } from "@modelcontextprotocol/sdk/validation/ajv";
import { openApiDocument, operations } from "@plumbdrift/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Running, started } from "./server.js";

// biome-ignore lint/suspicious/noExplicitAny: the types of the document do not reach into its bodies
const document = openApiDocument() as any;

const post = (body: unknown): Promise<Response> =>
  fetch(`${server.base}/mcp`, {
    method: "POST",
    headers: { "content-type": "application/json", accept: "application/json, text/event-stream" },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });

let server: Running;
let client: Client;
let tools: readonly Tool[] = [];

beforeAll(async () => {
  server = await started();
  client = new Client({ name: "a test", version: "1.0.0" });
  await client.connect(new StreamableHTTPClientTransport(new URL(`${server.base}/mcp`)));
  ({ tools } = await client.listTools());
});
afterAll(async () => {
  await client.close();
  await server.stop();
});

describe("the list of tools", () => {
  test("has each operation under its id, with its summary and the convention of units", () => {
    expect(tools.map(({ name }) => name)).toEqual(operations.map(({ id }) => id));
    for (const [i, { summary }] of operations.entries()) {
      expect(tools[i]).toMatchObject({ title: summary, annotations: { readOnlyHint: true } });
      expect(tools[i]!.description).toMatch(/^.*says its unit: \{"value": 3, "unit": "ft"\}/);
      expect(tools[i]!.description?.startsWith(summary)).toBe(true);
    }
  });

  test("is told with how to read the answers", () => {
    expect(client.getInstructions()).toContain("Local rules and licensed practice come first.");
    expect(client.getServerVersion()?.name).toBe("plumbdrift");
  });

  test("fits the window of a model: no schema is longer than 40 kB", () => {
    expect(Math.max(...tools.map(({ inputSchema }) => JSON.stringify(inputSchema).length))).toBeLessThan(
      40_000,
    );
  });
});

describe.each(operations.map(({ id, examples, path }) => ({ id, path, examples: Object.values(examples) })))(
  "$id",
  ({ id, path, examples }) => {
    test("has a schema that stands alone, takes every example and refuses a key too many", () => {
      const { inputSchema } = tools.find(({ name }) => name === id)!;
      const verdict = new AjvJsonSchemaValidator().getValidator(inputSchema as JsonSchemaType);
      for (const { value } of examples) expect(verdict(value).errorMessage).toBeUndefined();
      expect(verdict({ ...(examples[0]!.value as object), surplus: 1 }).valid).toBe(false);
    });

    test("has the properties that the document has", () => {
      const { inputSchema } = tools.find(({ name }) => name === id)!;
      const { $ref } = document.paths[path].post.requestBody.content["application/json"].schema;
      const { properties, required } = document.components.schemas[$ref.split("/").at(-1)];
      expect(Object.keys(inputSchema.properties ?? {})).toEqual(Object.keys(properties));
      expect(inputSchema.required).toEqual(required);
    });

    test("answers as the HTTP path does, as data and as text", async () => {
      const value = examples[0]!.value as Record<string, unknown>;
      const result = await client.callTool({ name: id, arguments: value });
      const response = await fetch(server.base + path, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(value),
      });
      expect(result.isError ?? false).toBe(false);
      expect(result.structuredContent).toEqual(await response.json());
      const [said] = result.content as { readonly text: string }[];
      expect(JSON.parse(said!.text)).toEqual(result.structuredContent);
    });

    test("says what is wrong with its arguments as a problem document", async () => {
      const result = await client.callTool({ name: id, arguments: { surplus: 1 } });
      expect(result).toMatchObject({
        isError: true,
        structuredContent: { code: "invalid-request", status: 400 },
      });
    });
  },
);

test("a tool that does not exist is refused, with the one that was meant", async () => {
  await expect(client.callTool({ name: "settleRigs", arguments: {} })).rejects.toThrow("settleRig?");
});

test("a request holds one message: an array cannot ask for more work than an operation may", async () => {
  const call = { jsonrpc: "2.0", id: 1, method: "tools/list" };
  const response = await post([call, call]);
  expect(response.status).toBe(400);
  expect(await response.json()).toMatchObject({ code: "invalid-request" });
});

test("there is no stream to open", async () => {
  const response = await fetch(`${server.base}/mcp`);
  expect([response.status, response.headers.get("allow")]).toEqual([405, "POST"]);
});

test("what is not JSON, or too large, gets a problem document", async () => {
  const broken = await post("{");
  expect([broken.status, (await broken.json()).code]).toEqual([400, "malformed-json"]);
  const large = await post(" ".repeat(600_000));
  expect([large.status, (await large.json()).code]).toEqual([413, "too-large"]);
});
