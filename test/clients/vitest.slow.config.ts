import { defineConfig, type ViteUserConfig } from "vitest/config";

/** What `pnpm run slow` runs: other people's generators, and a browser. One after the other, for a machine of two cores. */
const config: ViteUserConfig = defineConfig({
  test: { include: ["*.slow.ts"], fileParallelism: false, testTimeout: 60_000 },
});
export default config;
