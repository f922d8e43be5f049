/** `?explain=steps`: each equation, with the numbers beside it, gives the result beside it. */

import { operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { ask, type Body, document, exampleOf, examplesOf, post, sending } from "./api.js";

const explained = operations.filter(({ explain }) => explain !== undefined);
const mute = operations.filter(({ explain }) => explain === undefined);

const functions = {
  sqrt: Math.sqrt,
  ln: Math.log,
  cosh: Math.cosh,
  tanh: Math.tanh,
  atan2: Math.atan2,
  log10: Math.log10,
  abs: Math.abs,
  betainc,
  pi: Math.PI,
};

/** The regularised incomplete beta function by Simpson's rule, over an angle whose squared sine is the variable. */
function betainc(a: number, b: number, x: number): number {
  const steps = 20_000;
  const integral = (to: number): number => {
    const weighted = Array.from({ length: steps + 1 }, (_, i) => {
      const angle = (to * i) / steps;
      const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
      return weight * Math.sin(angle) ** (2 * a - 1) * Math.cos(angle) ** (2 * b - 1);
    });
    return (to / steps / 3) * weighted.reduce((sum, one) => sum + one);
  };
  return integral(Math.asin(Math.sqrt(x))) / integral(Math.PI / 2);
}

/** What the right side of an equation gives: the arithmetic of this test, not of the engine. */
function rightSide({ equation, symbols }: Body): number {
  const names = symbols.map(({ symbol }: Body) => symbol);
  const values = symbols.map(({ quantity, number }: Body) => quantity?.value ?? number);
  const [, text = ""] = equation.split(" = ");
  const run = new Function(...Object.keys(functions), ...names, `return ${text.replaceAll("^", "**")}`);
  return run(...Object.values(functions), ...values);
}

describe.each(explained.map(({ id, path }) => [id, path] as const))("%s", (id, path) => {
  test.each(Object.entries(examplesOf(path)))(
    "explains example %s by equations that hold",
    async (_name, { value }) => {
      const { status, body } = await ask(`${path}?explain=steps`, sending(value));
      expect(status).toBe(200);
      expect(body.steps.length).toBeGreaterThan(0);
      for (const step of body.steps) {
        const result = step.result.quantity?.value ?? step.result.number;
        const scale = Math.max(Math.abs(result), ...termsOf(step));
        expect({ equation: step.equation, off: Math.abs(rightSide(step) - result) / scale > 2e-7 }).toEqual({
          equation: step.equation,
          off: false,
        });
      }
    },
  );

  test("chains its equations: a symbol means one number throughout", async () => {
    const { body } = await ask(`${path}?explain=steps`, sending(exampleOf(path)));
    const known = new Map<string, number>();
    for (const { symbols, result } of body.steps) {
      for (const { symbol, quantity, number } of [...symbols, result]) {
        const value = quantity?.value ?? number;
        expect(known.get(symbol) ?? value).toBeCloseTo(value, 9);
        known.set(symbol, value);
      }
    }
    const results = body.steps.map(({ result }: Body) => result.symbol);
    const used = new Set(
      body.steps.flatMap(({ symbols }: Body) => symbols.map(({ symbol }: Body) => symbol)),
    );
    expect(results.some((symbol: string) => used.has(symbol))).toBe(true);
  });

  test("says the same answer beside its steps, under a name of its own", async () => {
    const plain = await post(path, exampleOf(path));
    const { headers, body } = await ask(`${path}?explain=steps`, sending(exampleOf(path)));
    const { steps, ...rest } = body;
    expect(rest).toEqual(plain.body);
    expect(plain.body).not.toHaveProperty("steps");
    expect(headers.get("etag")).not.toBe(plain.headers.get("etag"));
  });

  test.each([
    [
      "?explian=steps",
      { path: "?explian", expected: "a known parameter: explain", suggestion: 'did you mean "explain"?' },
    ],
    ["?explain=steps&explain=steps", { path: "?explain", expected: "a parameter that is given once" }],
    ["?explain=step", { path: "?explain", expected: "one of steps", suggestion: 'did you mean "steps"?' }],
    ["?explain=steps&debug=1", { path: "?debug", expected: "a known parameter: explain" }],
    ["?__proto__=1", { path: "?__proto__", expected: "a known parameter: explain" }],
  ])("%s is refused", async (query, error) => {
    const { status, body } = await ask(path + query, sending(exampleOf(path)));
    expect({ status, code: body.code }).toEqual({ status: 400, code: "invalid-request" });
    expect(body.errors[0]).toMatchObject(error);
  });

  test("declares the parameter", () => {
    const [parameter] = document.paths[path].post.parameters;
    expect(parameter).toMatchObject({ name: "explain", in: "query" });
    expect(id).toBe(document.paths[path].post.operationId);
  });
});

/** The sizes of what is added up: a small difference of large numbers is as exact as they are. */
function termsOf({ symbols, equation }: Body): number[] {
  if (!/^\w+ = -?\w+ - \w+$/.test(equation)) return [];
  return symbols.map(({ quantity, number }: Body) => Math.abs(quantity?.value ?? number));
}

describe.each(mute.map(({ id, path }) => [id, path] as const))("%s", (_id, path) => {
  test("says that it has no steps, and refuses to be asked for them", async () => {
    expect(document.paths[path].post.description).toMatch(/It has no steps to explain\.$/);
    const { status, body } = await ask(`${path}?explain=steps`, sending(exampleOf(path)));
    expect(status).toBe(400);
    expect(body.errors[0]).toMatchObject({ path: "?explain", expected: "no query parameters" });
  });
});

test("what computes nothing of its own has no steps, and refuses to be asked for them", async () => {
  for (const [path, methods] of Object.entries<Body>(document.paths)) {
    const [method, { parameters = [] }] = Object.entries<Body>(methods)[0]!;
    const offered = parameters.some(({ name }: Body) => name === "explain");
    expect({ path, offered }).toEqual({ path, offered: explained.some((one) => one.path === path) });
    if (offered || !path.startsWith("/v1") || path.includes("{")) continue;
    const init = method === "post" ? sending({ items: [] }) : {};
    expect((await ask(`${path}?explain=steps`, init)).body.errors[0].path).toBe("?explain");
  }
});

test("the incomplete beta function of this test is the binomial sum that it is for whole numbers", () => {
  // DLMF 8.17.5: the chance of at least a of a + b - 1 draws
  const [a, b, x] = [3, 4, 0.3];
  const chances = [3, 4, 5, 6].map((k) => ([20, 15, 6, 1][k - 3] ?? 0) * x ** k * (1 - x) ** (6 - k));
  expect(Math.abs(betainc(a, b, x) - chances.reduce((sum, one) => sum + one))).toBeLessThan(1e-10);
});

test("the arithmetic of this test is not the engine's: a wrong number is seen", () => {
  const step = {
    equation: "V = Q / A",
    symbols: [
      { symbol: "Q", quantity: { value: 6, unit: "m3/s" } },
      { symbol: "A", quantity: { value: 4, unit: "m2" } },
    ],
  };
  expect(rightSide(step)).toBe(1.5);
});
