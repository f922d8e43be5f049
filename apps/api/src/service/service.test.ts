/** The service around the real app, in this process, on a clock that the tests move. */

import { gunzipSync } from "node:zlib";
import {
  type ProblemCode,
  ProblemSchema,
  problemCodes,
  problemKinds,
  type Ready,
} from "@plumbdrift/contract";
import { metres } from "@plumbdrift/core";
import { describe, expect, test } from "vitest";
import { engine, type Given } from "../engine.js";
import { type Environment, readConfig } from "./config.js";
import { newKey } from "./keys.js";
import { createService, type Host } from "./service.js";

const app = await newKey("app");
const uuid = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/;
const channel = {
  section: { shape: "rectangular", width: { value: 5, unit: "m" } },
  friction: { law: "manning", n: 0.015 },
  slope: 0.0025,
  depth: { value: 0.8, unit: "m" },
};

/** A drift that is cut into more than one call may ask for. */
const long = {
  water: { depth: { value: 1, unit: "m" }, surfaceSpeed: { value: 1, unit: "m/s" }, bed: "cobble" },
  rig: {
    float: { kind: "dry", size: 10, style: "foam" },
    sections: [
      {
        line: { kind: "tippet", material: "nylon", x: 5, length: { value: 1, unit: "m" } },
        sinker: {
          kind: "nymph",
          size: 16,
          bead: { diameter: { value: 2.3, unit: "mm" }, material: "tungsten" },
        },
      },
    ],
  },
  duration: { value: 120, unit: "s" },
  timeStep: { value: 0.001, unit: "s" },
  segments: 40,
};

interface Sent extends RequestInit {
  readonly path?: string;
}

/** A service, what it has logged, and its clock. */
function start(environment: Environment = {}, host: Host = {}) {
  const reading = readConfig(environment);
  if (!reading.ok) throw new Error(reading.mistakes.join());
  const lines: string[] = [];
  const clock = { now: Date.UTC(2026, 0, 1) };
  const service = createService(reading.config, {
    log: (line) => lines.push(line),
    now: () => clock.now,
    ...host,
  });
  const ask = async ({ path = "/v1/channels/flows", ...init }: Sent = {}) => {
    const headers = { "content-type": "application/json", ...(init.headers as object) };
    const { method = "POST" } = init;
    const body = method === "POST" ? JSON.stringify(channel) : null;
    return service.request(path, { body, ...init, method, headers });
  };
  return { ask, clock, lines, logged: () => lines.map((line) => JSON.parse(line)) };
}

const secret = (): never => {
  throw new Error("the secret of the host");
};
/** An engine whose jumps are a hundredth too high, or which fails. */
const off: Given = {
  ...engine,
  jumpFlow: (input) => {
    const jump = engine.jumpFlow(input);
    return jump.kind === "jump" ? { ...jump, after: metres(1.01 * jump.after) } : jump;
  },
};
const limited = { PLUMBDRIFT_RATE_UNITS: "1000", PLUMBDRIFT_RATE_SECONDS: "60" };
const keyed = { PLUMBDRIFT_API_KEYS: app.entry };
const bearer = (key: string) => ({ headers: { authorization: `Bearer ${key}` } });
const flat = { ...channel, section: { shape: "triangular", leftRun: 0, rightRun: 0 } };

interface Failure {
  readonly code: ProblemCode;
  readonly sent?: Sent;
  readonly environment?: Environment;
  readonly host?: Host;
}

const failures: readonly Failure[] = [
  { code: "malformed-json", sent: { body: "{" } },
  { code: "invalid-request", sent: { body: "{}" } },
  { code: "unauthorised", environment: keyed },
  { code: "not-found", sent: { path: "/v1/nothing", method: "GET" } },
  { code: "method-not-allowed", sent: { method: "DELETE" } },
  { code: "too-large", sent: { body: " ".repeat(600_000) } },
  { code: "unsupported-media-type", sent: { headers: { "content-type": "text/plain" } } },
  { code: "impossible", sent: { body: JSON.stringify(flat) } },
  { code: "over-budget", sent: { path: "/v1/drifts/unsteady", body: JSON.stringify(long) } },
  { code: "too-many-requests", environment: { PLUMBDRIFT_RATE_UNITS: "1" } },
  { code: "internal", host: { engine: { ...engine, carryFlow: secret } } },
  { code: "internal", environment: limited, host: { address: secret } },
  { code: "unavailable", sent: { path: "/readyz", method: "GET" }, host: { engine: off } },
  {
    code: "unavailable",
    sent: { path: "/readyz", method: "GET" },
    host: { engine: { ...engine, findDepth: secret } },
  },
];

describe("a failure is a problem with CORS headers and a request id", () => {
  test.each(failures.map((row) => [row.code, row] as const))("%s", async (code, row) => {
    const { ask, logged } = start(row.environment, row.host);
    if (code === "too-many-requests") await ask();
    const response = await ask(row.sent);
    const id = response.headers.get("x-request-id");
    expect(response.headers.get("content-type")).toBe("application/problem+json");
    const text = await response.text();
    expect(ProblemSchema.parse(JSON.parse(text))).toMatchObject({ code, instance: `urn:uuid:${id}` });
    expect(text).not.toContain("secret");
    expect(response.status).toBe(problemKinds[code].status);
    expect(id).toMatch(uuid);
    expect(response.headers.get("access-control-allow-origin")).toBe("*");
    expect(response.headers.get("access-control-expose-headers")).toContain("Retry-After");
    expect(response.headers.get("x-content-type-options")).toBe("nosniff");
    expect(response.headers.get("cache-control")).toBe("no-store");
    const lines = logged();
    expect(lines.at(-1)).toMatchObject({ event: "request", id, status: response.status });
    const told = lines.filter(({ event }) => event === "failure").map((line) => [line.id, line.error]);
    const ours = code === "internal" || row.host?.engine?.findDepth === secret;
    expect(told).toEqual(ours ? [[id, expect.stringContaining("the secret of the host")]] : []);
  });

  test("covers every code but those that the host answers before the app", () => {
    const before: ProblemCode[] = ["malformed-request", "too-slow", "headers-too-large", "not-acceptable"];
    const covered = new Set(failures.map(({ code }) => code));
    expect(problemCodes.filter((code) => !covered.has(code)).sort()).toEqual(before.sort());
  });
});

describe("keys", () => {
  test("let in who has one, and name them in the log", async () => {
    const { ask, lines, logged } = start(keyed);
    expect((await ask(bearer(app.key))).status).toBe(200);
    expect(logged().at(-1)).toMatchObject({ key: "app", status: 200 });
    expect(lines.join()).not.toContain(app.key);
  });

  test.each([
    ["no key", {}, 'Bearer realm="plumbdrift"'],
    ["another key", bearer("another"), 'Bearer realm="plumbdrift", error="invalid_token"'],
    ["another scheme", { headers: { authorization: "Basic YTpi" } }, /invalid_token/],
    ["a key of 9,000 letters", bearer("a".repeat(9000)), /invalid_token/],
    ["bytes that are no letters", { headers: { authorization: "Bearer \u00ff\u00fe" } }, /invalid_token/],
    ["the hash for the key", bearer(app.entry.split("=")[1] ?? ""), /invalid_token/],
  ])("refuse %s as RFC 6750 says it", async (_name, sent, challenge) => {
    const response = await start(keyed).ask(sent);
    expect(response.status).toBe(401);
    expect(response.headers.get("www-authenticate")).toMatch(challenge);
  });

  test("are not asked for what explains the service or a refusal", async () => {
    const { ask } = start(keyed);
    for (const path of ["/healthz", "/readyz", "/openapi.json", "/v1/problems/unauthorised"]) {
      expect((await ask({ path, method: "GET" })).status).toBe(200);
    }
    for (const path of ["/v1/limits", "/%76%31/limits", "/v1/nothing", "/v1"]) {
      expect((await ask({ path, method: "GET" })).status).toBe(401);
    }
    expect((await ask({ path: "/v1/problems/../limits", method: "GET" })).status).toBe(401);
    expect((await ask({ path: "/mcp", method: "GET" })).status).toBe(401);
  });

  test("beside leave for anyone: none is let in, a wrong one is not", async () => {
    const { ask } = start({ ...keyed, ALLOW_ANONYMOUS: "1" });
    expect((await ask()).status).toBe(200);
    expect((await ask(bearer("wrong"))).status).toBe(401);
  });

  test("are no matter where none are set", async () => {
    expect((await start().ask(bearer("any"))).status).toBe(200);
  });
});

describe("limits", () => {
  // carryFlow costs 1050 units: 3150 in 63 s are three calls, and one comes back every 21 s
  const three = { PLUMBDRIFT_RATE_UNITS: "3150", PLUMBDRIFT_RATE_SECONDS: "63" };
  const cost = 1050;

  test("count work, say what is left, and let in exactly who waits as told", async () => {
    const { ask, clock, logged } = start(three);
    for (const left of [2 * cost, cost, 0]) {
      const response = await ask();
      expect(response.status).toBe(200);
      expect(response.headers.get("ratelimit-policy")).toBe('"work";q=3150;w=63;qu="work"');
      expect(response.headers.get("ratelimit")).toBe(`"work";r=${left};t=${(3150 - left) / 50}`);
      expect(logged().at(-1).work).toBe(cost);
    }
    const refused = await ask();
    expect(refused.status).toBe(429);
    expect(refused.headers.get("retry-after")).toBe("21");
    expect(refused.headers.get("ratelimit")).toBe('"work";r=0;t=21');
    clock.now += 20_999;
    expect((await ask()).status).toBe(429);
    clock.now += 1;
    expect((await ask()).status).toBe(200);
  });

  test("charge what fails as any call, and what is known as much", async () => {
    const { ask } = start(three);
    const left = async (sent: Sent) => (await ask(sent)).headers.get("ratelimit");
    const etag = (await ask()).headers.get("etag") ?? "";
    expect(await left({ headers: { "if-none-match": etag } })).toContain("r=1100;");
    expect(await left({ body: "{" })).toContain("r=100;");
    const spent = await ask({ headers: { "if-none-match": etag } });
    expect(spent.status).toBe(429);
    expect(spent.headers.get("etag")).toBeNull();
    expect(spent.headers.get("cache-control")).toBe("no-store");
    expect(spent.headers.get("access-control-allow-origin")).toBe("*");
    expect((await ask({ path: "/healthz", method: "GET" })).status).toBe(200);
  });

  test("a request heavier than the bucket takes a full one", async () => {
    const { ask, clock } = start({ PLUMBDRIFT_RATE_UNITS: "100", PLUMBDRIFT_RATE_SECONDS: "10" });
    expect((await ask()).status).toBe(200);
    expect((await ask()).headers.get("retry-after")).toBe("10");
    clock.now += 10_000;
    expect((await ask()).status).toBe(200);
  });

  test("count all of a batch before it, and a stream line by line", async () => {
    const item = { operation: "carryFlow", body: channel };
    const { ask } = start(three);
    const path = "/v1/batch";
    const listed = await ask({ path, body: JSON.stringify({ items: [item, item, item, item] }) });
    expect(listed.status).toBe(200); // four calls are more than the bucket holds: they take a full one
    expect((await ask({ path, body: JSON.stringify({ items: [item] }) })).headers.get("retry-after")).toBe(
      "21",
    );
    const lines = start({ ...three, PLUMBDRIFT_RATE_UNITS: "2150" });
    const sent = { headers: { "content-type": "application/x-ndjson" } };
    const streamed = await lines.ask({ path, ...sent, body: `${JSON.stringify(item)}\n`.repeat(4) });
    const statuses = (await streamed.text())
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line).status);
    expect(statuses).toEqual([200, 200, 429]);
  });

  test("that cannot be kept let everyone through, and the log says so", async () => {
    const { ask, logged } = start(three, { store: { take: secret } });
    expect((await ask()).status).toBe(200);
    expect(logged()[0]).toMatchObject({ event: "failure", error: expect.stringContaining("secret") });
  });

  test("are those of a key, or of an address where there is none", async () => {
    let address = "192.0.2.1";
    const { ask } = start({ ...three, ...keyed, ALLOW_ANONYMOUS: "1" }, { address: () => address });
    const spent = async (sent?: Sent) => {
      for (let i = 0; i < 3; i++) await ask(sent);
      return (await ask(sent)).status;
    };
    expect(await spent()).toBe(429);
    expect((await ask(bearer(app.key))).status).toBe(200);
    address = "192.0.2.2";
    expect((await ask()).status).toBe(200);
  });
});

describe("an answer", () => {
  test("carries what OWASP's REST cheat sheet asks for", async () => {
    const { headers } = await start().ask();
    expect(headers.get("content-security-policy")).toBe("default-src 'none'; frame-ancestors 'none'");
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("x-frame-options")).toBe("DENY");
    expect(headers.get("strict-transport-security")).toMatch(/^max-age=\d+$/);
    expect(headers.get("server-timing")).toMatch(/^total;dur=[\d.]+$/);
  });

  test("keeps an id that is a UUID, and no other", async () => {
    const { ask } = start();
    const given = "01890a5d-ac96-774b-bcce-b302099a8057"; // RFC 9562's form
    const id = async (value: string) =>
      (await ask({ headers: { "x-request-id": value } })).headers.get("x-request-id");
    expect(await id(given)).toBe(given);
    for (const other of ["", "1", `${given}0`, '{"level":"error"}', "../..", "a".repeat(5000)]) {
      expect(await id(other)).toMatch(uuid);
      expect(await id(other)).not.toBe(other);
    }
  });

  test("is compressed once for who accepts it, and says that it varies", async () => {
    const gzip = await start().ask({ headers: { "accept-encoding": "gzip" } });
    expect(gzip.headers.get("content-encoding")).toBe("gzip");
    expect(gzip.headers.get("vary")).toContain("Accept-Encoding");
    const plain = await start().ask();
    expect(plain.headers.get("content-encoding")).toBeNull();
    expect(gunzipSync(await gzip.arrayBuffer()).toString()).toBe(await plain.text());
    const etag = gzip.headers.get("etag") ?? "";
    const known = await start().ask({ headers: { "accept-encoding": "gzip", "if-none-match": etag } });
    expect(known.status).toBe(304);
  });

  test("may be read by the pages that are listed", async () => {
    const { ask } = start({ PLUMBDRIFT_CORS_ORIGINS: "https://a.example, https://b.example" });
    const allowed = async (origin: string) =>
      (await ask({ headers: { origin } })).headers.get("access-control-allow-origin");
    expect(await allowed("https://b.example")).toBe("https://b.example");
    expect(await allowed("https://c.example")).toBeNull();
    expect((await ask()).headers.get("vary")).toContain("Origin");
  });

  test("to a page that asks first needs no key and names what it may send", async () => {
    const { ask } = start(keyed);
    const asks = { "access-control-request-method": "QUERY", origin: "https://a.example" };
    const response = await ask({ method: "OPTIONS", headers: asks });
    expect(response.status).toBe(204);
    expect(response.headers.get("access-control-allow-methods")).toContain("QUERY");
    expect(response.headers.get("access-control-allow-headers")).toContain("Authorization");
  });
});

describe("the log", () => {
  test("has one line for a request, with the template of its path", async () => {
    const { ask, logged } = start();
    await ask({ path: "/v1/relations/Chow1959", method: "GET" });
    await ask();
    expect(logged()).toEqual([
      expect.objectContaining({ event: "request", method: "GET", route: "/v1/relations/:key", status: 200 }),
      expect.objectContaining({ route: "/v1/channels/flows", status: 200, work: 1050, ms: 0 }),
    ]);
    expect(logged()[1].time).toBe("2026-01-01T00:00:00.000Z");
  });

  test("says nothing of bodies, queries, addresses or keys", async () => {
    const { ask, lines } = start(
      { ...keyed, PLUMBDRIFT_RATE_UNITS: "100" },
      { address: () => "192.0.2.1", engine: off },
    );
    await ask({ path: "/v1/channels/flows?depth=secret", ...bearer(app.key) });
    await ask(bearer("wrong"));
    expect(lines).toHaveLength(2);
    for (const word of [app.key, "wrong", "192.0.2.1", "secret", "0.015", "Bearer"]) {
      expect(lines.join()).not.toContain(word);
    }
  });

  test.each([
    ["off", 0],
    ["errors", 2],
    ["requests", 3],
  ])("%s has %i lines of a success and a failure", async (level, count) => {
    const { ask, lines } = start({ PLUMBDRIFT_LOG: level }, { engine: { ...engine, findDepth: secret } });
    await ask();
    await ask({ path: "/readyz", method: "GET" });
    expect(lines).toHaveLength(count);
  });

  test("that cannot be written spoils no answer", async () => {
    expect((await start({}, { log: secret }).ask()).status).toBe(200);
  });
});

test("a host is ready when it computes the published values", async () => {
  const reply = await start().ask({ path: "/readyz", method: "GET" });
  const body = (await reply.json()) as Ready;
  // printed by the sources that the answer names, as cases U-01, U-20 and J-01 of test/conformance have them
  expect(body.checks.map(({ published }) => published)).toEqual(["9.548 m3/s", "1.215 m", "1.53 m"]);
});
