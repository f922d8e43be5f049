import { dimensions, type Unit as UnitOfContract } from "@plumbdrift/contract";
import { describe, expect, expectTypeOf, test } from "vitest";
import type { Quantity, Unit } from "./quantities.js";
import * as quantities from "./quantities.js";
import type { Schemas } from "./types.js";

describe("a function for every unit", () => {
  test("and only for those of the contract", () => {
    const said = Object.values(quantities).map((say) => say(2));
    expect(said.map(({ unit }) => unit).sort()).toEqual(
      Object.values(dimensions).flatMap(Object.keys).sort(),
    );
    expect(said.map(({ value }) => value)).toEqual(said.map(() => 2));
  });

  test("known to the compiler", () => {
    expectTypeOf<Unit>().toEqualTypeOf<UnitOfContract>();
    type Said = ReturnType<(typeof quantities)[keyof typeof quantities]>["unit"];
    expectTypeOf<Said>().toEqualTypeOf<Unit>();
  });

  test("and a unit of the wrong dimension does not compile", () => {
    expectTypeOf<Quantity<"ft">>().toExtend<Schemas["Length"]>();
    expectTypeOf<Quantity<"ft">>().not.toExtend<Schemas["Speed"]>();
    expectTypeOf<Quantity<"ft/s">>().not.toExtend<Schemas["Length"]>();
    // @ts-expect-error degrees of an angle are no temperature
    const cold: Schemas["Temperature"] = quantities.degrees(12);
    expect(cold).toEqual({ value: 12, unit: "deg" });
  });
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])("%d is no value", (value) => {
  expect(() => quantities.feet(value)).toThrow(`a value in ft must be finite, got ${value}`);
});
