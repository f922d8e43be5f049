import { defineConfig } from "tsup";

/** Everything is bundled: what is deployed is one folder, with no node_modules beside it. */
export default defineConfig({
  entry: ["src/app.ts", "src/node.ts", "src/demo.ts"],
  format: "esm",
  target: "es2022",
  noExternal: [/./],
  clean: true,
});
