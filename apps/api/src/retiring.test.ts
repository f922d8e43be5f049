import { readColumn } from "@plumbdrift/contract";
import { Hono } from "hono";
import { expect, test } from "vitest";
import { computation } from "./computation.js";
import { compute, limited } from "./compute.js";
import { engine } from "./engine.js";
import { retiring } from "./retiring.js";

const since = "2026-11-26T00:00:00Z";
const deprecated = { since, sunset: "2027-11-26T00:00:00Z", link: "https://example.org/columns" };
const old = { ...readColumn, path: "/v1/old-columns", deprecated };

/** An app with an operation that is made up to be on its way out, and the one that stays. */
const app = new Hono();
for (const one of [old, readColumn]) {
  const find = async () => computation(one, engine.readColumn);
  app.post(one.path, retiring(find), limited, compute(find));
}

async function headersOf(path: string, body: unknown): Promise<readonly unknown[]> {
  const headers = { "content-type": "application/json" };
  const response = await app.request(path, { method: "POST", headers, body: JSON.stringify(body) });
  const named = ["deprecation", "sunset", "link"].map((name) => response.headers.get(name));
  return [response.status, ...named];
}

const said = [
  "@1795651200",
  "Fri, 26 Nov 2027 00:00:00 GMT",
  `<${deprecated.link}>; rel="deprecation"; type="text/html"`,
];

test("an operation on its way out says so in answers and in problems", async () => {
  expect(await headersOf(old.path, readColumn.examples.cobbles?.value)).toEqual([200, ...said]);
  expect(await headersOf(old.path, {})).toEqual([400, ...said]);
  expect(await headersOf(old.path, "x".repeat(600_000))).toEqual([413, ...said]);
});

test("an operation that stays says nothing", async () => {
  expect(await headersOf(readColumn.path, readColumn.examples.cobbles?.value)).toEqual([
    200,
    null,
    null,
    null,
  ]);
});
