import { build } from "esbuild";
import { defineConfig } from "vitest/config";

/** What `pnpm run slow` runs: too long for every test run. Each file is bundled first: the runner reaches from module to module through getters,
 *  which took half as long again. */
export default defineConfig({
  plugins: [
    {
      name: "bundle",
      enforce: "pre",
      load: async (id) => {
        if (!id.endsWith(".slow.ts")) return null;
        const options = { bundle: true, format: "esm", packages: "external", write: false } as const;
        const { outputFiles } = await build({ ...options, entryPoints: [id], sourcemap: "inline" });
        return outputFiles[0]?.text ?? null;
      },
    },
  ],
  test: { include: ["src/**/*.slow.ts"] },
});
