/** Other people's generators read our document: what they write compiles strictly, has every operation, and takes every example. */

import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openApiDocument, operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";

const here = fileURLToPath(new URL(".", import.meta.url));
const out = `${here}.reports/generated`;
const input = `${out}/openapi.json`;

const run = (name: string, ...args: readonly string[]): void => {
  try {
    execFileSync(`${here}node_modules/.bin/${name}`, args, { cwd: out, encoding: "utf8", stdio: "pipe" });
  } catch (error) {
    const { stdout, stderr } = error as { stdout: string; stderr: string };
    throw new Error(`${name} ${args.join(" ")}\n${stdout}${stderr}`);
  }
};

interface Generator {
  readonly name: string;
  readonly generate: (folder: string) => void;
  /** Where the functions are, under the folder. */
  readonly module: string;
  /** How one is called with a body. */
  readonly call: (id: string, body: string) => string;
}

const generators: readonly Generator[] = [
  {
    name: "@hey-api/openapi-ts",
    generate: (folder) => run("openapi-ts", "--input", input, "--output", `${folder}/api`, "--no-log-file"),
    module: "./api/sdk.gen.js",
    call: (id, body) => `sdk.${id}({ body: ${body} })`,
  },
  {
    name: "orval",
    generate: (folder) =>
      run(
        "orval",
        "--input",
        input,
        "--output",
        `${folder}/api/sdk.ts`,
        "--client",
        "fetch",
        "--mode",
        "single",
      ),
    module: "./api/sdk.js",
    call: (id, body) => `sdk.${id}(${body})`,
  },
];

/** Strict, for a program in a browser or Node that bundles. */
const compilerOptions = {
  strict: true,
  noEmit: true,
  target: "ES2022",
  lib: ["ES2023", "DOM", "DOM.Iterable"],
  module: "preserve",
  moduleResolution: "bundler",
  types: [],
  skipLibCheck: false,
};

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
writeFileSync(input, JSON.stringify(openApiDocument()));

describe.each(generators)("$name", ({ name, generate, module, call }) => {
  const folder = `${out}/${name.replaceAll(/\W/g, "-")}`;

  test("writes a client that compiles strictly and takes every example", { timeout: 300_000 }, () => {
    mkdirSync(folder, { recursive: true });
    generate(folder);
    const calls = operations.flatMap(({ id, examples }) =>
      Object.values(examples).map(({ value }) => call(id, JSON.stringify(value))),
    );
    const program = [`import * as sdk from "${module}";`, `export const answers = [${calls.join(",\n")}];`];
    writeFileSync(`${folder}/program.ts`, program.join("\n"));
    writeFileSync(`${folder}/tsconfig.json`, JSON.stringify({ compilerOptions, include: ["**/*.ts"] }));
    expect(calls.length).toBeGreaterThanOrEqual(operations.length);
    expect(() => run("tsc", "-p", folder)).not.toThrow();
  });

  test("and the compiler would refuse a key that the document does not have", { timeout: 300_000 }, () => {
    const wrong = call("readColumn", '{ water: { depth: { value: 1, unit: "m" } }, surplus: 1 }');
    writeFileSync(
      `${folder}/program.ts`,
      `import * as sdk from "${module}";\nexport const answer = ${wrong};`,
    );
    expect(() => run("tsc", "-p", folder)).toThrow(/program\.ts.*surplus/);
  });
});
