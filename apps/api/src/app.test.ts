import { expect, test } from "vitest";
import { app } from "./app.js";

test("the API says that it is up", async () => {
  const response = await app.request("/healthz");
  expect(response.status).toBe(200);
  expect(await response.json()).toMatchObject({ status: "ok" });
});
