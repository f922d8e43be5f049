import { defineConfig, type ViteUserConfig } from "vitest/config";

/** The linters take seconds each, so they run apart from the quick tests. */
const config: ViteUserConfig = defineConfig({ test: { include: ["*.slow.ts"], testTimeout: 300_000 } });
export default config;
