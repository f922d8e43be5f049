import { defineConfig } from "tsup";

/** The root and one entry per room. Splitting keeps one copy of each class, in CommonJS too. */
export default defineConfig({
  entry: ["src/index.ts", "src/*/index.ts"],
  format: ["esm", "cjs"],
  target: "es2022",
  platform: "neutral",
  splitting: true,
  dts: true,
  clean: true,
});
