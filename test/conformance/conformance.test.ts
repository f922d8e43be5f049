import * as core from "@plumbdrift/core";
import { expect, test } from "vitest";

test("the built core is what is measured", () => {
  expect(Object.keys(core)).not.toEqual([]);
});
