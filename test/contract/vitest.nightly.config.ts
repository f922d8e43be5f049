import { defineConfig, type ViteUserConfig } from "vitest/config";

/** 200,000 requests in one process, whose memory is measured after collections that the test asks for. */
const config: ViteUserConfig = defineConfig({
  test: { include: ["*.nightly.ts"], pool: "forks", execArgv: ["--expose-gc"], testTimeout: 10_800_000 },
});
export default config;
