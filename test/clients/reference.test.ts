/** What /reference of the Node entry serves; reference.slow.ts opens it in a browser. */

import { afterAll, beforeAll, expect, test } from "vitest";
import { type Running, started } from "./server.js";

let server: Running;

beforeAll(async () => {
  server = await started();
});
afterAll(() => server.stop());

test.each([
  ["/reference", "text/html; charset=utf-8"],
  ["/reference/rapidoc.js", "text/javascript; charset=utf-8"],
])("%s comes with a policy that lets nothing in from outside", async (path, type) => {
  const response = await fetch(server.base + path);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe(type);
  const policy = response.headers.get("content-security-policy") ?? "";
  expect(policy).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self' 'sha256-[\w+/=]+'; /);
  // styles written into attributes cannot run; nothing else may be inline
  expect(policy.replace("style-src-attr 'unsafe-inline'", "")).not.toContain("unsafe");
  expect(policy).not.toMatch(/https?:|\*/);
});

test("the page itself names no other origin", async () => {
  const text = await (await fetch(`${server.base}/reference`)).text();
  expect(text).toContain('spec-url="/openapi.json"');
  expect(text).not.toMatch(/https?:\/\/|["']\/\//);
});
