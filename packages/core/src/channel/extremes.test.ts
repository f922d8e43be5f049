/** Nothing, a billionth, a billion, below nothing: every exported function of the room answers in finite numbers, or with an error that names
 *  the quantity. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, kilogramsPerCubicMetre, metres, QuantityError } from "../units/index.js";
import { type Draw, drawing } from "./extremes.fixture.js";
import { calls } from "./extremes-calls.fixture.js";
import * as channel from "./index.js";
import { surveyOf } from "./sections.fixture.js";

/** A section without a top has no greatest depth. */
const mayBeInfinite = new Set(["greatestDepth", "high"]);

/** Where an answer holds a number that is none. */
function faults(answer: unknown, path = "answer"): readonly string[] {
  if (typeof answer === "number") {
    const open = answer === Number.POSITIVE_INFINITY && mayBeInfinite.has(path.split(".").at(-1) ?? "");
    return Number.isFinite(answer) || open ? [] : [`${path} is ${answer}`];
  }
  if (typeof answer !== "object" || answer === null) return [];
  return Object.entries(answer).flatMap(([key, value]) => faults(value, `${path}.${key}`));
}

/** What a constructor of units says of a number that is none: a unit names no quantity. */
const bare = new Set([
  "metres",
  "square metres",
  "cubic metres",
  "metres per second",
  "cubic metres per second",
  "pascals",
  "watts",
]);

/** What is wrong with one call: nothing where it answers in finite numbers, null where it names the quantity that it cannot take. */
function wrongWith(call: (d: Draw) => unknown, numbers: readonly number[]): readonly string[] | null {
  try {
    return faults(call(drawing(numbers)));
  } catch (error) {
    return error instanceof QuantityError && !bare.has(error.quantity) ? null : [String(error)];
  }
}

describe("at the ends of what can be asked", () => {
  test.each(Object.entries(calls))("%s", (_, call) => {
    let answers = 0;
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 5039 }), { minLength: 24, maxLength: 24 }), (numbers) => {
        const wrong = wrongWith(call, numbers);
        answers += Number(wrong !== null);
        expect(wrong ?? []).toEqual([]);
      }),
      { seed: 53, numRuns: 1500 },
    );
    expect(answers).toBeGreaterThan(0);
  });
});

describe("what such sizes brought to light", () => {
  const wide = channel.rectangularSection(metres(40));
  const rough: channel.Friction = { law: "rough", roughness: metres(1000) };

  test("a bed rougher than its channel is wide has no normal depth", () => {
    const stream = { section: wide, friction: rough, slope: 0.01 };
    expect(() => channel.normalDepth(stream, cubicMetresPerSecond(1))).toThrow("depth that balances");
  });

  test("still water rubs on nothing", () => {
    const stream = { section: wide, friction: { ...rough, roughness: metres(0.1) } };
    expect(channel.frictionSlope(stream, metres(1), cubicMetresPerSecond(0))).toBe(0);
  });

  test("conveyance has no derivative at the crown of a pipe", () => {
    const pipe: channel.Channel = {
      section: channel.circularSection(metres(1)),
      friction: { law: "manning", n: 0.013 },
      slope: 0.01,
    };
    expect(() => channel.conveyance(pipe, metres(1))).toThrow("depth must be below the crown");
    expect(channel.uniformDischarge(pipe, metres(1))).toBeGreaterThan(0);
  });

  test("ineffective ends must leave something to carry water", () => {
    const ineffective = { left: { station: metres(2.5), elevation: metres(5) } };
    const ground = [
      [0, 1],
      [1, 0],
      [2, 0],
      [3, 3],
    ] as const;
    expect(() => surveyOf(ground, { ineffective })).toThrow("area that carries water");
  });

  test("strips do not change with the datum of the survey", () => {
    const valley = (datum: number) =>
      surveyOf([
        [0, datum + 2],
        [3, datum],
        [6, datum + 2],
      ]);
    const depths = (datum: number) =>
      channel.stripsAcross(valley(datum), metres(2 ** -20), 6).map((strip) => strip.depth);
    // 2^33 m and 2^-20 m are exact alone, but not their sum
    expect(depths(2 ** 33)).toEqual(depths(0));
  });

  test.each<readonly [string, () => unknown]>([
    ["coefficient of deep water", () => channel.fergusonRatio(5, 0)],
    ["coefficient of shallow water", () => channel.fergusonRatio(5, 6.5, 0)],
    [
      "gravity",
      () =>
        channel.bedShear(
          { section: wide, friction: rough, slope: 0.01, gravity: -1 },
          metres(1),
          kilogramsPerCubicMetre(1000),
        ),
    ],
    [
      "energy and momentum coefficients",
      () =>
        channel.hydraulicJump(
          { section: wide, discharge: cubicMetresPerSecond(200), momentumCoefficient: 10 },
          metres(1),
          kilogramsPerCubicMetre(1000),
        ),
    ],
    [
      "coefficient of the rating",
      () =>
        channel.rateStage(
          [1, 2, 3].map((h) => ({ stage: metres(h), discharge: cubicMetresPerSecond(1e-9 * 1000 ** h) })),
          { stage: metres(-1e6) },
        ),
    ],
  ])("%s is named", (quantity, call) => {
    expect(call).toThrow(quantity);
  });
});
