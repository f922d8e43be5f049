import { defineConfig, type ViteUserConfig } from "vitest/config";

/** What was built is loaded as it is, not transformed by the runner. */
export const untouched: { deps: { external: RegExp[] } } = { deps: { external: [/apps\/api\/dist/] } };

const config: ViteUserConfig = defineConfig({ test: { server: untouched, testTimeout: 20_000 } });
export default config;
