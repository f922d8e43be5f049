import { defineConfig } from "vitest/config";

/** What `pnpm run nightly` runs: quarters of an hour, too long for `.ci/run`. */
export default defineConfig({ test: { include: ["src/**/*.nightly.ts"] } });
