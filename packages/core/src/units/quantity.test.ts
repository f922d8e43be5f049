import { describe, expect, expectTypeOf, test } from "vitest";
import {
  atLeast,
  type DepthBelowSurface,
  depthBelowSurface,
  type HeightAboveBed,
  heightAboveBed,
  type Kilograms,
  type Metres,
  metres,
  minus,
  type Newtons,
  plus,
  ratio,
  type Seconds,
  seconds,
  times,
} from "./index.js";

describe("the type of a quantity", () => {
  test("is not the type of another, nor of a plain number", () => {
    expectTypeOf<Metres>().not.toExtend<Seconds>();
    expectTypeOf<Kilograms>().not.toExtend<Newtons>();
    expectTypeOf<number>().not.toExtend<Metres>();
    expectTypeOf<Metres>().toExtend<number>();
    expect(typeof metres(1)).toBe("number");
  });

  test("keeps its datum", () => {
    expectTypeOf<HeightAboveBed>().not.toExtend<DepthBelowSurface>();
    expectTypeOf<DepthBelowSurface>().not.toExtend<HeightAboveBed>();
    expectTypeOf<HeightAboveBed>().toExtend<Metres>();
    expectTypeOf<Metres>().not.toExtend<HeightAboveBed>();
    expect(heightAboveBed(1)).toBe(1);
  });

  test("is refused where it does not belong", () => {
    // @ts-expect-error seconds are no metres
    expect(plus(metres(1), seconds(2))).toBe(3);
    // @ts-expect-error a plain number is no length
    expect(minus(metres(1), 2)).toBe(-1);
    // @ts-expect-error a height is measured from the other end
    expect(atLeast(heightAboveBed(1), depthBelowSurface(1))).toBe(true);
    // @ts-expect-error a ratio is of one dimension
    expect(ratio(metres(1), seconds(2))).toBe(0.5);
  });
});

test("sums, differences and multiples keep the type", () => {
  expectTypeOf(plus(metres(1), metres(2))).toEqualTypeOf<Metres>();
  expectTypeOf(times(seconds(1), 2)).toEqualTypeOf<Seconds>();
  expectTypeOf(ratio(metres(1), metres(2))).toEqualTypeOf<number>();
  expect(plus(metres(1), metres(2))).toBe(3);
  expect(minus(metres(1), metres(2))).toBe(-1);
  expect(times(seconds(1), 2)).toBe(2);
  expect(ratio(metres(1), metres(2))).toBe(0.5);
  expect(atLeast(metres(1), metres(1))).toBe(true);
  expect(atLeast(metres(1), metres(2))).toBe(false);
});
