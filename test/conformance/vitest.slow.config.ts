import { defineConfig, type ViteUserConfig } from "vitest/config";

/** What `pnpm run slow` and `pnpm perturb` run: too long for every test run. */
const config: ViteUserConfig = defineConfig({ test: { include: ["**/*.slow.ts"] } });
export default config;
