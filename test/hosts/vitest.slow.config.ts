import { defineConfig, type ViteUserConfig } from "vitest/config";
import { untouched } from "./vitest.config.js";

/** What `pnpm run slow` runs: real runtimes, one file after another, since they share two processors. */
const config: ViteUserConfig = defineConfig({
  test: {
    include: ["*.slow.ts"],
    server: untouched,
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
export default config;
