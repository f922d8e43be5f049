/** The generated pages are what the suite and the core give today. `pnpm run write` writes them. */
import { expect, test } from "vitest";
import { sourcesPage } from "./report/sources.js";
import { validation } from "./report/validation.js";

const core = new URL("../../packages/core/src/", import.meta.url);

// every case is measured, on a machine that may be busy
test("docs/validation.md", { timeout: 60_000 }, async () => {
  await expect(validation(core)).toMatchFileSnapshot("../../docs/validation.md");
});

test("docs/sources.md", async () => {
  await expect(sourcesPage(core)).toMatchFileSnapshot("../../docs/sources.md");
});
