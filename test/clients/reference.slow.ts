/** /reference in headless Chromium, under its own policy: it shows every operation, says nothing in the console and asks no other origin. */

import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { operations } from "@plumbdrift/contract";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { program } from "./debian.js";
import { type Running, started } from "./server.js";

const picture = fileURLToPath(new URL(".reports/reference.png", import.meta.url));

let server: Running;
let browser: Browser;
let page: Page;
const asked: string[] = [];
const said: string[] = [];

beforeAll(async () => {
  server = await started();
  browser = await chromium.launch({ executablePath: program("chromium"), args: ["--no-sandbox"] });
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  page.on("request", (request) => void asked.push(request.url()));
  page.on("console", (message) => void said.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => void said.push(`error: ${error.message}`));
  page.setDefaultTimeout(120_000);
  await page.goto(`${server.base}/reference`);
  await page.getByRole("heading", { name: operations[0]!.summary }).first().waitFor();
}, 300_000);

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

test.each(operations.map(({ path, summary }) => ({ path, summary })))(
  "shows $path",
  async ({ path, summary }) => {
    expect(await page.getByText(summary).count()).toBeGreaterThan(0);
    expect(await page.getByText(path).count()).toBeGreaterThan(0);
  },
);

test("can be looked at", async () => {
  mkdirSync(fileURLToPath(new URL(".reports", import.meta.url)), { recursive: true });
  expect((await page.screenshot({ path: picture })).length).toBeGreaterThan(20_000);
});

test("asks the API from the page, and shows what came", async () => {
  const button = page.getByRole("button", { name: "Try" }).first();
  await button.scrollIntoViewIfNeeded();
  const [response] = await Promise.all([
    page.waitForResponse((answer) => answer.request().method() === "POST"),
    button.click(),
  ]);
  expect(response.status()).toBe(200);
});

test("says nothing in the console", () => {
  expect(said).toEqual([]);
});

test("asks no other origin", () => {
  expect(asked.length).toBeGreaterThan(2);
  expect(asked.filter((url) => !url.startsWith(`${server.base}/`) && !url.startsWith("data:"))).toEqual([]);
});
