import { z } from "@hono/zod-openapi";
import type { Metres, MetresPerSecond } from "@plumbdrift/core";
import { describe, expect, expectTypeOf, test } from "vitest";
import { decodeBody } from "./decode.js";
import { quantity } from "./schema.js";

const schema = z.strictObject({
  depth: quantity("length", "Depth.", 0.01, 50, "m"),
  speeds: z.array(quantity("speed", "Speed.")).optional(),
  slope: z.number().optional(),
});

describe("decodeBody", () => {
  test("turns quantities into SI numbers of the right brand, and leaves absent fields out", () => {
    const decoding = decodeBody(schema, {
      depth: { value: 3, unit: "ft" },
      speeds: [{ value: 1, unit: "mph" }],
    });
    if (!decoding.ok) throw new Error("refused");
    const { si } = decoding.body;
    expectTypeOf(si.depth).toEqualTypeOf<Metres>();
    expectTypeOf(si).toHaveProperty("speeds").toEqualTypeOf<readonly MetresPerSecond[] | undefined>();
    expect(si.depth).toBe(3 * 0.3048);
    expect(si.speeds?.map((speed) => speed.toFixed(5))).toEqual(["0.44704"]);
    expect(Object.keys(si)).toEqual(["depth", "speeds"]);
  });

  test("both ends of a range are inside, in any unit", () => {
    for (const [value, unit] of [
      [0.01, "m"],
      [1, "cm"],
      [10, "mm"],
      [50, "m"],
      [5000, "cm"],
    ] as const) {
      expect(decodeBody(schema, { depth: { value, unit } }).ok).toBe(true);
    }
    for (const [value, unit] of [
      [0.0099, "m"],
      [9.99, "mm"],
      [50.01, "m"],
      [165, "ft"],
    ] as const) {
      const decoding = decodeBody(schema, { depth: { value, unit } });
      expect(decoding).toMatchObject({
        errors: [{ path: "/depth", expected: "from 0.01 to 50 m", received: `${value} ${unit}` }],
      });
    }
  });
});
