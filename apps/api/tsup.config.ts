import { defineConfig, type Options } from "tsup";

/** Everything is bundled: what is deployed is one folder, with no node_modules beside it. */
const bundled: Options = { format: "esm", target: "es2022", noExternal: [/./] };

export default defineConfig([
  { ...bundled, entry: ["src/app.ts", "src/node.ts", "src/demo.ts"], clean: true },
  // one file each, so that a host is given one file
  {
    ...bundled,
    entry: ["src/hosts/workerd.ts", "src/hosts/lambda.ts", "src/hosts/sqs.ts", "src/hosts/fetch.ts"],
    splitting: false,
    minify: true,
    platform: "neutral",
  },
]);
