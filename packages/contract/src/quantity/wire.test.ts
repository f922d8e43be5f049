import { z } from "@hono/zod-openapi";
import {
  type HeightAboveBed,
  heightAboveBed,
  type Metres,
  type MetresPerSecond,
  metres,
  newtons,
} from "@plumbdrift/core";
import { describe, expect, expectTypeOf, test } from "vitest";
import { encode } from "./encode.js";
import { quantitySchemas as q, quantity } from "./schema.js";
import { type Decoded, type Said, strict, type Wire } from "./wire.js";

interface Seen {
  readonly depth: Metres;
  readonly speeds?: readonly MetresPerSecond[];
  readonly height: HeightAboveBed | null;
  readonly slope: number;
  readonly bed: "sand" | "silt";
}

const seenSchema = strict<Wire<Seen>>({
  depth: q.length,
  speeds: z.array(q.speed).optional(),
  height: quantity("length", "Small.", "mm").optional(),
  slope: z.number(),
  bed: z.enum(["sand", "silt"]),
});

describe("the types of the wire", () => {
  test("a quantity is said, what may be null may be absent, the rest stays", () => {
    expectTypeOf<Wire<Seen>>().toHaveProperty("depth").toEqualTypeOf<Said<"length">>();
    expectTypeOf<Wire<Seen>["height"]>().toEqualTypeOf<Said<"length"> | undefined>();
    expectTypeOf<Wire<Seen>["speeds"]>().toEqualTypeOf<readonly Said<"speed">[] | undefined>();
    expectTypeOf<Wire<Seen>["slope"]>().toEqualTypeOf<number>();
    expectTypeOf<Wire<Seen>["bed"]>().toEqualTypeOf<"sand" | "silt">();
    expectTypeOf<Said<"force">["unit"]>().toEqualTypeOf<"N" | "mN" | "lbf">();
  });

  test("decoding gives the brands back, from a schema or from its type", () => {
    expectTypeOf<Decoded<Wire<Seen>>["depth"]>().toEqualTypeOf<Metres>();
    expectTypeOf<Decoded<Wire<Seen>>["depth"]>().not.toEqualTypeOf<MetresPerSecond>();
    expectTypeOf<Decoded<z.output<typeof seenSchema>>["speeds"]>().toEqualTypeOf<
      readonly MetresPerSecond[] | undefined
    >();
  });

  test("a schema has the keys and types of its object, no more and no less", () => {
    const fields = { depth: q.length, low: q.length };
    interface Pair {
      readonly depth: Said<"length">;
      readonly low?: Said<"length"> | undefined;
    }
    // @ts-expect-error a required field where an optional one is due
    const required = strict<Pair>(fields);
    // @ts-expect-error a field of another dimension
    const other = strict<Pair>({ depth: q.speed, low: q.length.optional() });
    // @ts-expect-error a key too many
    const more = strict<Pair>({ depth: q.length, low: q.length.optional(), high: q.length });
    // @ts-expect-error a key too few
    const fewer = strict<Pair>({ depth: q.length });
    expect([required, other, more, fewer].map((s) => Object.keys(s.shape).length)).toEqual([2, 2, 3, 1]);
  });
});

describe("encode", () => {
  const seen = { depth: metres(0.9144), height: null, slope: 0.001, bed: "sand", hidden: 1 } as const;

  test("says what the schema names in the system asked for: metres for depth, millimetres for small things", () => {
    expect(encode(seenSchema, { ...seen, height: heightAboveBed(0.0254) }, "si")).toEqual({
      depth: { value: 0.9144, unit: "m" },
      height: { value: 25.4, unit: "mm" },
      slope: 0.001,
      bed: "sand",
    });
    expect(encode(seenSchema, { ...seen, height: heightAboveBed(0.0254) }, "us")).toMatchObject({
      depth: { value: 3, unit: "ft" },
      height: { value: 1, unit: "in" },
    });
  });

  test("leaves nulls out", () => {
    expect(Object.keys(encode(seenSchema, seen, "si"))).toEqual(["depth", "slope", "bed"]);
  });

  test("says a force in millinewtons in either system, a strength in pounds where they are usual", () => {
    const force = strict<{ pull: Said<"force">; strength: Said<"force"> }>({
      pull: q.force,
      strength: quantity("force", "Strength.", "N"),
    });
    const given = { pull: newtons(0.002), strength: newtons(4.4482216152605) };
    const pull = { value: 2, unit: "mN" };
    expect(encode(force, given, "si")).toEqual({ pull, strength: { value: 4.44822161526, unit: "N" } });
    expect(encode(force, given, "us")).toEqual({ pull, strength: { value: 1, unit: "lbf" } });
  });

  test("takes no result of another shape", () => {
    // @ts-expect-error a speed where a length is due
    const wrong = () => encode(q.length, newtons(1), "si");
    expect(wrong()).toEqual({ value: 1, unit: "m" });
  });
});
