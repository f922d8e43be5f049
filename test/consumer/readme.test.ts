/** The README says what happens: its program runs and prints what it shows. */

import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const here = fileURLToPath(new URL(".", import.meta.url));
const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const examples = [...readme.matchAll(/```ts\n(.*?)```\n\n```text\n(.*?)```/gs)];

test("there is a program in the README", () => {
  expect(examples).toHaveLength(1);
});

test.each(examples.map(([, program = "", output = ""]) => ({ program, output })))(
  "its program prints what it shows",
  ({ program, output }) => {
    const printed = execFileSync(process.execPath, ["--input-type=module", "-e", program], {
      cwd: here,
      encoding: "utf8",
    });
    expect(printed).toBe(output);
  },
);
