import { describe, expect, test } from "vitest";
import { QuantityError, requirePositive, requireWithin } from "./index.js";

test("an error names the quantity, what was expected and what came", () => {
  const error = new QuantityError("depth", "above 0 m", -1);
  expect(error).toBeInstanceOf(RangeError);
  expect(error).toMatchObject({
    name: "QuantityError",
    message: "depth must be above 0 m, got -1",
    quantity: "depth",
    expected: "above 0 m",
    received: -1,
  });
});

describe("requirePositive", () => {
  test.each([0, -0, -1e-300, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d", (value) => {
    expect(() => requirePositive("depth", value, "m")).toThrow(`depth must be above 0 m, got ${value}`);
  });

  test.each([Number.MIN_VALUE, 1, Number.MAX_VALUE])("takes %d", (value) => {
    expect(() => requirePositive("depth", value)).not.toThrow();
  });

  test("says no unit where there is none", () => {
    expect(() => requirePositive("share", 0)).toThrow("share must be above 0, got 0");
  });
});

describe("requireWithin", () => {
  test.each([0.9999, 3.0001, Number.NaN, 1e308, -2])("refuses %d", (value) => {
    expect(() => requireWithin("speed", value, 1, 3, "m/s")).toThrow(
      `speed must be from 1 to 3 m/s, got ${value}`,
    );
  });

  test.each([1, 2, 3])("takes %d: the ends are inside", (value) => {
    expect(() => requireWithin("speed", value, 1, 3)).not.toThrow();
  });

  test("says a limit without the last bits of a conversion", () => {
    // 3 × 0.3048 is 0.9144000000000001 in double precision
    expect(() => requireWithin("height", 2, 0, 3 * 0.3048, "m")).toThrow(
      "height must be from 0 to 0.9144 m, got 2",
    );
  });
});
