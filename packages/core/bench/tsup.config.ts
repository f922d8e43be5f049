import { defineConfig } from "tsup";

export default defineConfig({
  entry: ["bench/bench.ts"],
  outDir: ".bench",
  format: "esm",
  target: "es2022",
  platform: "node",
  external: ["mitata"],
  clean: true,
});
