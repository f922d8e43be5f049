/** Every path and method of the document by the ways to fail that a guarded, a limited and a broken host add: a problem that pages may read, named as in the log. */

import { createHash } from "node:crypto";
import { MAX_ERRORS, operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { type Body, document, exampleOf, verdict } from "./api.js";
import { serviceWith } from "./service.js";

interface Route {
  readonly name: string;
  readonly path: string;
  readonly method: string;
  readonly body?: string;
}

/** What the document lists, and QUERY beside the POST of a computation. */
const routes: readonly Route[] = Object.entries<Body>(document.paths).flatMap(([path, { get, post }]) => {
  const key = get?.parameters?.[0];
  const asked = path.replace(/\{\w+\}/, key?.example ?? key?.schema.example);
  const route = (method: string, body?: string): Route => ({
    name: `${method} ${path}`,
    path: asked,
    method,
    ...(body === undefined ? {} : { body }),
  });
  if (get) return [route("GET")];
  const { examples } = post.requestBody.content["application/json"];
  const batch = path === "/v1/batch";
  const body = JSON.stringify(batch ? Object.values<Body>(examples)[0].value : exampleOf(path));
  return [route("POST", body), ...(batch ? [] : [route("QUERY", body)])];
});
/** What computes or looks up; what explains a refusal is open to whoever got it. */
const guarded = routes.filter(({ path }) => /^\/v1\/(?!problems)/.test(path));
const open = routes.filter((route) => !guarded.includes(route));

const explained = new Set(operations.flatMap(({ path, explain }) => (explain === undefined ? [] : [path])));

type Asked = Awaited<ReturnType<typeof ask>>;

async function ask(
  service: ReturnType<typeof serviceWith>,
  { path, method, body }: Route,
  headers: Readonly<Record<string, string>> = {},
) {
  const response = await service.request(path, {
    method,
    headers: { "content-type": "application/json", ...headers },
    ...(body === undefined ? {} : { body }),
  });
  return { status: response.status, headers: response.headers, text: await response.text() };
}

function expectProblem({ status, headers, text }: Asked, code: string, expected: number): void {
  const said = JSON.parse(text);
  expect({ status, code: said.code, type: headers.get("content-type") }).toEqual({
    status: expected,
    code,
    type: "application/problem+json",
  });
  expect(verdict({ $ref: "#/components/schemas/Problem" }, said)).toMatchObject({ valid: true });
  expect(said.instance).toBe(`urn:uuid:${headers.get("x-request-id")}`);
  expect(headers.get("access-control-allow-origin")).toBe("*");
  expect(headers.get("cache-control")).toBe("no-store");
  expect(headers.get("etag")).toBeNull();
}

const hash = createHash("sha256").update("the-key-of-a-test").digest();
const keys = { keys: [{ name: "app", hash }], anonymous: false };

describe.each(guarded.map((route) => [route.name, route] as const))("%s", (_name, route) => {
  const silent = { log: () => {} };

  test("unauthorised: without a key, and with a wrong one", async () => {
    const service = serviceWith(silent, keys);
    const none = await ask(service, route);
    expectProblem(none, "unauthorised", 401);
    expect(none.headers.get("www-authenticate")).toBe('Bearer realm="plumbdrift"');
    const wrong = await ask(service, route, { authorization: "Bearer another" });
    expectProblem(wrong, "unauthorised", 401);
    expect(wrong.headers.get("www-authenticate")).toContain('error="invalid_token"');
    expect(wrong.text).not.toContain("another");
  });

  test("an unknown parameter, and a known one misspelt", async () => {
    const service = serviceWith(silent);
    const parameters = Array.from({ length: 30 }, (_, i) => `p${i}=${"y".repeat(200)}`).join("&");
    const reply = await ask(service, { ...route, path: `${route.path}?explian=steps&${parameters}` });
    expectProblem(reply, "invalid-request", 400);
    const { errors } = JSON.parse(reply.text);
    expect(errors).toHaveLength(MAX_ERRORS);
    expect(errors[0].path).toBe("?explian");
    expect(errors[0].suggestion).toBe(explained.has(route.path) ? 'did you mean "explain"?' : undefined);
    expect(reply.text).not.toContain("y".repeat(70));
  });

  test("too many requests: Retry-After is when it is let in, to the millisecond", async () => {
    let now = 0;
    // a bucket that every request empties, and that takes 7 s to fill
    const service = serviceWith({ ...silent, now: () => now }, { rate: { units: 100, seconds: 7 } });
    const named = { "if-none-match": "*" }; // what is known costs as much as any call, and nothing is computed
    const bad = route.method === "GET" ? route : { ...route, body: "{" };
    expect((await ask(service, bad, named)).status).toBe(route.method === "GET" ? 304 : 400);
    const refused = await ask(service, bad, named);
    expectProblem(refused, "too-many-requests", 429);
    expect(refused.headers.get("retry-after")).toBe("7");
    expect(refused.headers.get("access-control-expose-headers")).toContain("Retry-After");
    now = 6999;
    expect((await ask(service, bad, named)).status).toBe(429);
    now = 7000;
    expect((await ask(service, bad, named)).status).not.toBe(429);
  });

  test("internal: opaque, and the log has the same id", async () => {
    const lines: string[] = [];
    const address = (): never => {
      throw new Error("the secret of the host");
    };
    const reply = await ask(serviceWith({ log: (line) => lines.push(line), address }), route);
    expectProblem(reply, "internal", 500);
    expect(reply.text).not.toContain("secret");
    const failures = lines.map((line) => JSON.parse(line)).filter(({ event }) => event === "failure");
    expect(failures).toEqual([
      expect.objectContaining({
        id: reply.headers.get("x-request-id"),
        error: expect.stringContaining("secret"),
      }),
    ]);
  });
});

test.each(open.map((route) => [route.name, route] as const))(
  "%s asks for no key and charges nothing: neither unauthorised nor too many requests",
  async (_name, route) => {
    const service = serviceWith({ log: () => {} }, { ...keys, rate: { units: 1, seconds: 60 } });
    for (let times = 0; times < 3; times++) {
      const { status, headers } = await ask(service, route);
      expect([status, headers.get("ratelimit")]).toEqual([200, null]);
    }
  },
);

test.each(routes.map((route) => [route.name, route] as const))(
  "%s: a wrong method and a path of another version are problems that pages may read",
  async (_name, { body: _, ...route }) => {
    const service = serviceWith({ log: () => {} });
    const wrong = await ask(service, { ...route, method: "PATCH" });
    expectProblem(wrong, "method-not-allowed", 405);
    expect(wrong.headers.get("allow")?.split(", ")).toContain(route.method);
    const gone = await ask(service, { ...route, path: `/v2${route.path}`, method: "GET" });
    expectProblem(gone, "not-found", 404);
  },
);
