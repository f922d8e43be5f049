import { defineConfig } from "vitest/config";

/** What `pnpm run slow` runs: too long for every test run. */
export default defineConfig({ test: { include: ["src/**/*.slow.ts"] } });
