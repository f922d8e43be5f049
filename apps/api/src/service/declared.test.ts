/** Whatever the service answers, statuses and headers alike, the document declares; and it declares no header that nothing answers. */

import { openApiDocument, operationIds } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import type { Engine } from "../engine.js";
import { type Environment, readConfig } from "./config.js";
import { newKey } from "./keys.js";
import { createService, type Host } from "./service.js";

// biome-ignore lint/suspicious/noExplicitAny: a document as the test walks it
type Json = any;

const document: Json = JSON.parse(JSON.stringify(openApiDocument()));
const key = await newKey("app");
const fails = (): never => {
  throw new Error("broken");
};
const broken = Object.fromEntries(operationIds.map((name) => [name, fails])) as unknown as Engine;

function service(environment: Environment = {}, host: Host = {}) {
  const reading = readConfig({ PLUMBDRIFT_LOG: "off", ...environment });
  if (!reading.ok) throw new Error(reading.mistakes.join());
  return createService(reading.config, host);
}

const usual = service({
  PLUMBDRIFT_RATE_UNITS: "1000000000",
  PLUMBDRIFT_CORS_ORIGINS: "https://a.example",
});
const guarded = service({ PLUMBDRIFT_API_KEYS: key.entry });
const failing = service({}, { engine: broken });
const poor = service({ PLUMBDRIFT_RATE_UNITS: "1" }, { now: () => 0 });
const [jump] = Object.values<Json>(
  document.paths["/v1/channels/jumps"].post.requestBody.content["application/json"].examples,
);
await poor.request("/v1/channels/jumps", posted(jump.value));

function posted(body: unknown, type = "application/json"): RequestInit {
  const headers = { "content-type": type };
  return { method: "POST", headers, body: typeof body === "string" ? body : JSON.stringify(body) };
}

/** A component, or what is said in its place. */
function resolved(value: Json): Json {
  const [, kind = "", name = ""] = /#\/components\/(\w+)\/(.+)/.exec(value?.$ref) ?? [];
  return kind === "" ? value : document.components[kind][name];
}

/** OpenAPI passes over the type, which `content` says (3.1.0, section 4.8.17.1). */
const elsewhere = ["content-type"];
const { headers: anyAnswer } = document["x-any-answer"];
const seen = { headers: new Set<string>(), statuses: new Set<number>() };

/** What of an answer is not declared, and what that is declared as always there it lacks. */
function undeclared(responses: Json, { status, headers }: Response): readonly string[] {
  seen.statuses.add(status);
  for (const name of headers.keys()) seen.headers.add(name);
  const response = resolved(responses[status]);
  if (response === undefined) return [`status ${status}`];
  const declared = { ...anyAnswer, ...response.headers };
  const known = [...elsewhere, ...Object.keys(declared).map((name) => name.toLowerCase())];
  const always = Object.keys(declared).filter((name) => resolved(declared[name]).required === true);
  return [
    ...[...headers.keys()].filter((name) => !known.includes(name)),
    ...always.filter((name) => !headers.has(name)).map((name) => `no ${name}`),
  ];
}

const listed = Object.entries<Json>(document.paths).flatMap(([path, methods]) =>
  Object.entries<Json>(methods).map(([method, operation]) => {
    const examples = Object.values<Json>(operation.requestBody?.content["application/json"].examples ?? {});
    const asked = (operation.parameters ?? []).reduce(
      (text: string, { name, example }: Json) => text.replace(`{${name}}`, example),
      path,
    );
    const sent = method === "get" ? {} : posted(examples.at(0)?.value);
    return { name: `${method} ${path}`, asked, sent, responses: operation.responses };
  }),
);

describe.each(listed.map((one) => [one.name, one] as const))("%s", (_name, { asked, sent, responses }) => {
  const withHeaders = (headers: Readonly<Record<string, string>>): RequestInit => ({
    ...sent,
    headers: { ...sent.headers, ...headers },
  });
  const tries: Readonly<Record<string, readonly [typeof usual, string, RequestInit]>> = {
    "its example": [usual, asked, sent],
    "a page": [usual, asked, withHeaders({ origin: "https://a.example", "accept-encoding": "gzip" })],
    "who has the answer": [usual, asked, withHeaders({ "if-none-match": "*" })],
    "an unknown parameter": [usual, `${asked}?debug=1`, sent],
    "who has no key": [guarded, asked, sent],
    "who has spent all": [poor, asked, sent],
    "who accepts nothing": [usual, asked, withHeaders({ accept: "text/html" })],
    "a failure of ours": [failing, asked, sent],
    ...(sent.method === "POST" && {
      "what is no JSON": [usual, asked, posted("{")],
      "another type": [usual, asked, posted("{}", "text/plain")],
      "too long a body": [usual, asked, posted("x".repeat(5_000_000))],
      lines: [usual, asked, posted("{}", "application/x-ndjson")],
    }),
    ...(asked.includes("/") && { "a key that is none": [usual, `${asked}x`, sent] }),
  };

  test.each(Object.entries(tries))("%s", async (what, [host, path, init]) => {
    const response = await host.request(path, init);
    // a path with a key that is none is not listed where it has no key
    const own = what !== "a key that is none" || response.status !== 404 || "404" in responses;
    expect(undeclared(own ? responses : document["x-any-path"], response)).toEqual([]);
    await response.body?.cancel();
  });

  test.each(["DELETE", "OPTIONS"])("%s", async (method) => {
    const asks = { origin: "https://a.example", "access-control-request-method": "POST" };
    for (const host of [usual, guarded, poor]) {
      const response = await host.request(asked, { method, headers: asks });
      expect(undeclared(document["x-any-path"], response)).toEqual([]);
    }
  });
});

test("a host that guards says so in the document, on every operation that asks for a key", async () => {
  for (const [path, methods] of Object.entries<Json>(document.paths)) {
    for (const [method, { security = document.security, responses }] of Object.entries<Json>(methods)) {
      const { status } = await guarded.request(path, { method });
      expect({ path, asks: security.length > 0, 401: "401" in responses, 429: "429" in responses }).toEqual({
        path,
        asks: status === 401,
        401: status === 401,
        429: status === 401,
      });
    }
  }
});

test("every header that the document declares was among these answers", () => {
  const components = Object.keys(document.components.headers);
  const preflight = Object.keys(document["x-any-path"]["204"].headers);
  const declared = [...components, ...Object.keys(anyAnswer), ...preflight];
  // the server below the app counts the bytes of an answer
  const silent = declared.filter(
    (name) => name !== "Content-Length" && !seen.headers.has(name.toLowerCase()),
  );
  expect(silent).toEqual([]);
  expect([...seen.statuses].sort()).toEqual([
    200, 204, 304, 400, 401, 404, 405, 406, 413, 415, 429, 500, 503,
  ]);
});
