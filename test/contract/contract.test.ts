import { app } from "@plumbdrift/api";
import { CONTRACT_VERSION } from "@plumbdrift/contract";
import { expect, test } from "vitest";

test("the built API states the version of the contract it was built with", async () => {
  const response = await app.request("/healthz");
  expect(await response.json()).toMatchObject({ contract: CONTRACT_VERSION });
});
