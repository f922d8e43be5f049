/** Every operation × every status that the document declares for it. */

import { app, createApp } from "@plumbdrift/api";
import { type Engine, engine } from "@plumbdrift/api/engine";
import { ENGINE_VERSION, MAX_BODY_BYTES, operations, problemKinds, renderings } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import core from "../../packages/core/package.json" with { type: "json" };
import { ask, type Body, document, exampleOf, examplesOf, post, requiredOf } from "./api.js";
import { broken } from "./broken.js";
import { impossible } from "./hostile/impossible.js";

const imperial = new Set("ft in ft/s lbf gr degF ft2 ft3 ft3/s lbf/ft2 hp".split(" "));
const metric = new Set("m cm mm m/s N g degC m2 m3 m3/s L/s Pa W".split(" "));
const silent = { ...console };

describe.each(operations.map(({ id, path }) => [id, path] as const))("%s", (id, path) => {
  test.each(Object.entries(examplesOf(path)))("200: example %s", async (_name, { value }) => {
    const reply = await post(path, value);
    expect(reply).toMatchObject({ status: 200, type: "application/json" });
    expect(reply.body.meta).toMatchObject({ engine: ENGINE_VERSION, units: value.units ?? "si" });
  });

  test("answers in the system that is asked for", async () => {
    const symbols = async (units: string) => {
      const { body } = await post(path, { ...exampleOf(path), units });
      return new Set(JSON.stringify(body).match(/(?<="unit":")[^"]+/g));
    };
    const [si, us] = [await symbols("si"), await symbols("us")];
    expect([...si].filter((unit) => imperial.has(unit))).toEqual([]);
    expect([...us].filter((unit) => metric.has(unit))).toEqual([]);
    expect(si.size).toBeGreaterThan(0);
    expect(us.size).toBeGreaterThan(0);
  });

  test("names equal requests alike, and others otherwise", async () => {
    const example = exampleOf(path);
    const reversed = Object.fromEntries(Object.entries(example).reverse());
    const name = async (body: unknown) => (await post(path, body)).body.meta.request;
    expect(await name(reversed)).toBe(await name(example));
    const text = JSON.stringify(example);
    const nudged = text.replace(/(?<="value":)[1-9][\d.]*/, (value) => String(1.01 * Number(value)));
    expect(nudged).not.toBe(text);
    expect(await name(JSON.parse(nudged))).not.toBe(await name(example));
  });

  test("400: malformed JSON", async () => {
    expect((await post(path, "{")).body).toMatchObject({ code: "malformed-json", status: 400 });
  });

  test("400: a body that does not fit", async () => {
    const { body } = await post(path, {});
    expect(body).toMatchObject({ code: "invalid-request", status: 400 });
    const wanted = requiredOf(path).map((field) =>
      expect.objectContaining({ path: field, received: "nothing" }),
    );
    expect(wanted).not.toEqual([]);
    expect(body.errors).toEqual(wanted);
  });

  test("405: another method, with those that are allowed", async () => {
    for (const method of ["GET", "PUT", "DELETE", "PATCH", "OPTIONS"]) {
      const reply = await ask(path, { method });
      expect(reply.status).toBe(405);
      expect(reply.headers.get("allow")).toBe("POST, QUERY");
      expect(reply.headers.get("accept-query")).toBe("application/json");
    }
  });

  test("413: one byte too many", async () => {
    const text = JSON.stringify(exampleOf(path));
    expect((await post(path, text.padEnd(MAX_BODY_BYTES))).status).toBe(200);
    expect((await post(path, text.padEnd(MAX_BODY_BYTES + 1))).body).toMatchObject({ code: "too-large" });
  });

  test.each([
    undefined,
    "text/plain",
    "application/xml",
    "application/jsonx",
    "application/json; charset=latin1",
  ])("415: content type %s", async (type) => {
    const body = new TextEncoder().encode(JSON.stringify(exampleOf(path)));
    const reply = await ask(path, { method: "POST", body, headers: type ? { "content-type": type } : {} });
    expect(reply.body).toMatchObject({ code: "unsupported-media-type", status: 415 });
  });

  test("422: values that cannot hold together", async () => {
    const example = exampleOf(path);
    const { change, path: blamed } = impossible[id] ?? impossible.water;
    change(example);
    const { body } = await post(path, example);
    expect(body).toMatchObject({ code: "impossible", status: 422 });
    expect(body.errors[0].path).toBe(blamed);
  });

  test("500: a failure of ours says nothing of its cause", async () => {
    console.error = () => {};
    const reply = await post(path, exampleOf(path), createApp(broken));
    console.error = silent.error;
    expect(reply.body).toMatchObject({ code: "internal", status: 500, errors: [] });
    expect(reply.body.instance).toMatch(/^urn:uuid:[0-9a-f-]{36}$/);
    expect(JSON.stringify(reply.body)).not.toContain("secret");
  });
});

describe("a number that is not finite", () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY])("%s never leaves as an answer", async (froude) => {
    const readColumn: Engine["readColumn"] = (input) => ({ ...engine.readColumn(input), froude });
    console.error = () => {};
    const reply = await post("/v1/columns", exampleOf("/v1/columns"), createApp({ readColumn }));
    console.error = silent.error;
    expect(reply).toMatchObject({ status: 500, body: { code: "internal" } });
  });
});

describe("the service", () => {
  test("says that it is up", async () => {
    expect((await ask("/healthz")).body.engine).toBe(core.version);
  });

  test("says that it computes what was published", async () => {
    expect((await ask("/readyz")).body.checks).toHaveLength(3);
  });

  test.each(Object.entries(renderings))(
    "serves the document at %s, and 304 to who has it",
    async (path, { type }) => {
      const asked = (tag = "") => app.request(path, { headers: { "if-none-match": tag } });
      const first = await asked();
      const etag = first.headers.get("etag") ?? "";
      expect([first.status, first.headers.get("content-type")]).toEqual([200, type]);
      expect(etag).toMatch(/^"[0-9a-f-]+"$/);
      expect((await asked(`W/"x", ${etag}`)).status).toBe(304);
      expect((await asked('"other"')).status).toBe(200);
      const others = Object.keys(renderings).filter((other) => other !== path);
      for (const other of others) expect((await app.request(other)).headers.get("etag")).not.toBe(etag);
    },
  );

  test("says the same in JSON, in YAML and in OpenAPI 3.0", async () => {
    const text = async (path: string): Promise<string> => (await app.request(path)).text();
    expect(parse(await text("/openapi.yaml"))).toEqual(document);
    const { paths, tags } = JSON.parse(await text("/openapi-3.0.json"));
    expect({ paths, tags }).toEqual({ paths: document.paths, tags: document.tags });
  }, 60_000);

  test("404: an unknown path, with the nearest known one", async () => {
    expect((await ask("/v1/colums")).body).toMatchObject({ code: "not-found", status: 404 });
    expect((await ask("/v1/colums")).body.detail).toContain("/v1/columns");
  });

  test("passes over parameters: probes and caches add them", async () => {
    for (const path of ["/healthz", "/readyz", "/openapi.json"])
      expect((await app.request(`${path}?t=1`)).status).toBe(200);
  });

  test("405 on the paths of the service", async () => {
    for (const path of ["/healthz", "/openapi.json"]) {
      const reply = await ask(path, { method: "POST" });
      expect(reply).toMatchObject({ status: 405, body: { code: "method-not-allowed" } });
      expect(reply.headers.get("allow")).toBe("GET, HEAD");
    }
  });
});

describe("the document", () => {
  test("declares every status that these tests ask for, and no other", () => {
    for (const { path } of operations) {
      const statuses = Object.keys(document.paths[path].post.responses).sort();
      expect(statuses).toEqual("200 304 400 401 408 413 415 422 429 431 500 503".split(" "));
    }
  });

  test("names each problem code once, with the status of the table", () => {
    const { responses } = document.components;
    for (const [code, { status }] of Object.entries(problemKinds)) {
      expect(responses[`Problem${status}`].description).toContain(`\`${code}\``);
    }
  });

  test("describes every component but the bodies themselves", () => {
    const schemas = Object.entries<Body>(document.components.schemas);
    const bare = schemas.filter(([, schema]) => schema.description === undefined).map(([name]) => name);
    expect(bare.filter((name) => !/(Request|Response)$/.test(name))).toEqual([]);
  });

  test("lets no description of a field leak into the component it refers to", () => {
    const leaks: string[] = [];
    const visit = (value: Body): void => {
      if (typeof value !== "object" || value === null) return;
      const [reference, own] = value.allOf ?? [];
      const name = String(reference?.$ref).split("/").at(-1) ?? "";
      const component = document.components.schemas[name];
      if (component && component.description === own?.description) leaks.push(name);
      Object.values(value).forEach(visit);
    };
    visit(document);
    expect(leaks).toEqual([]);
  });
});
