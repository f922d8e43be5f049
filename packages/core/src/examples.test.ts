/** Runs every `@example expression // => value` of the sources and compares it with the digits it prints. */
import { describe, expect, test } from "vitest";
import * as core from "./index.js";

declare global {
  interface ImportMeta {
    /** Of the test runner: the text of every file that matches. */
    glob(
      patterns: readonly string[],
      options: { readonly query: "?raw"; readonly import: "default"; readonly eager: true },
    ): Record<string, string>;
  }
}

const files = import.meta.glob(["./**/*.ts", "!./**/*.test.ts"], {
  query: "?raw",
  import: "default",
  eager: true,
});

interface Example {
  readonly file: string;
  readonly expression: string;
  readonly printed: string;
}

function examplesOf(file: string, text: string): readonly Example[] {
  return [...text.matchAll(/@example (.+?) \/\/ => (.+?) *(?:\*\/)?$/gm)].map(([, expression, printed]) => ({
    file,
    expression: expression ?? "",
    printed: printed ?? "",
  }));
}

/** The value of an expression with every public export in scope. */
function evaluate(expression: string): unknown {
  const run: unknown = new Function(...Object.keys(core), `"use strict"; return (${expression});`)(
    ...Object.values(core),
  );
  return run;
}

/** Numbers to half of the last printed digit, whole numbers and everything else exactly. */
function check({ expression, printed }: Example): void {
  const value = evaluate(expression);
  if (!/^-?\d+(\.\d+)?(e[+-]?\d+)?$/.test(printed)) {
    expect(value).toEqual(JSON.parse(printed));
    return;
  }
  const parts = /^-?\d+(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(printed);
  const decimals = parts?.[1]?.length ?? 0;
  const half = decimals === 0 ? 0 : 0.5 * 10 ** (Number(parts?.[2] ?? 0) - decimals);
  const expected = Number(printed);
  if (typeof value !== "number") throw new TypeError(`${expression} is no number: ${String(value)}`);
  expect(
    Math.abs(value - expected),
    `${expression} gives ${value}, the example says ${printed}`,
  ).toBeLessThanOrEqual(half * (1 + 1e-9) + 4 * Number.EPSILON * Math.abs(expected));
}

const examples = Object.entries(files).flatMap(([file, text]) => examplesOf(file, text));

describe("the examples of the docstrings", () => {
  test.each(examples)("$file: $expression // => $printed", check);

  test("are all read, and not fewer than they were", () => {
    const marked = Object.values(files).join("\n").split("@example").length - 1;
    expect(examples).toHaveLength(marked);
    expect(examples.length).toBeGreaterThanOrEqual(36);
  });
});

describe("the runner", () => {
  const example = (expression: string, printed: string): Example => ({ file: "here", expression, printed });

  test.each([
    ["feet(3)", "0.9145"],
    ["fahrenheit(50)", "11"],
    ["atLeast(feet(1), inches(12))", "false"],
    ["noSuchFunction(1)", "1"],
    ["feet(NaN)", "1"],
    ["1 / 0 - 1 / 0", "1"],
    ['({ law: "log" })', '{ "law": "power" }'],
    ['"0.9144"', "0.9144"],
  ])("fails on %s // => %s", (expression, printed) => {
    expect(() => check(example(expression, printed))).toThrow();
  });

  test.each([
    ["feet(3)", "0.9144"],
    ["1 / 3", "0.33"],
    ["({ law: [1, true] })", '{ "law": [1, true] }'],
    ["2 / 3e9", "6.67e-10"],
  ])("passes %s // => %s", (expression, printed) => {
    expect(() => check(example(expression, printed))).not.toThrow();
  });

  test("reads an example on one line and one inside a longer comment", () => {
    const text =
      "/** Feet. @example feet(3) // => 0.9144 */\n/** More.\n *  @example feet(1) // => 0.3048\n *  End. */";
    expect(examplesOf("a.ts", text).map(({ printed }) => printed)).toEqual(["0.9144", "0.3048"]);
  });
});
