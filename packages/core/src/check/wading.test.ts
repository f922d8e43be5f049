import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  abtProduct,
  type Footing,
  feet,
  feetPerSecond,
  karvonenProduct,
  kilograms,
  metres,
  metresPerSecond,
  type Wade,
  type WadingLevel,
  wade,
} from "../index.js";

const adult = { height: metres(1.75), mass: kilograms(75) };
const at = (depth: number, speed: number, more: Partial<Wade> = {}) =>
  wade({ depth: metres(depth), speed: metresPerSecond(speed), ...more });
const rank: Readonly<Record<WadingLevel, number>> = { silent: 0, under: 1, doubtful: 2, beyond: 3 };

const seed = { seed: 17, numRuns: 500 };
const anyDepth = fc.double({ min: 0, max: 3, noNaN: true });
const anySpeed = fc.double({ min: 0, max: 5, noNaN: true });
const anyWader = fc.option(
  fc.record({
    height: fc.double({ min: 1, max: 2.1, noNaN: true }).map(metres),
    mass: fc.double({ min: 15, max: 140, noNaN: true }).map(kilograms),
  }),
);

describe("what is true wherever someone stands", () => {
  test("deeper or quicker never reads milder", () => {
    fc.assert(
      fc.property(anyDepth, anySpeed, anyDepth, anySpeed, anyWader, (d, v, more, faster, wader) => {
        const given = wader === null ? {} : { wader };
        expect(rank[at(d + more, v + faster, given).level]).toBeGreaterThanOrEqual(
          rank[at(d, v, given).level],
        );
      }),
      seed,
    );
  });

  test("a worse footing never reads milder", () => {
    const order: readonly Footing[] = ["good", "normal", "poor"];
    fc.assert(
      fc.property(anyDepth, anySpeed, fc.nat(1), (d, v, i) => {
        const level = (footing: Footing | undefined) =>
          rank[at(d, v, { wader: adult, ...(footing && { footing }) }).level];
        expect(level(order[i + 1])).toBeGreaterThanOrEqual(level(order[i]));
        expect(level(undefined)).toBe(level("poor"));
      }),
      seed,
    );
  });

  test("not saying who wades is never milder than saying it, up to doubt", () => {
    const anyAdult = fc.record({
      height: fc.double({ min: 1.5, max: 2.1, noNaN: true }).map(metres),
      mass: fc.double({ min: 34, max: 140, noNaN: true }).map(kilograms),
    });
    fc.assert(
      fc.property(anyDepth, anySpeed, anyAdult, (d, v, wader) => {
        const known = rank[at(d, v, { wader }).level];
        expect(rank[at(d, v).level]).toBeGreaterThanOrEqual(Math.min(known, rank.doubtful));
      }),
      seed,
    );
  });

  test("a smaller person never gets a higher limit", () => {
    const small = { height: metres(1.5), mass: kilograms(45) };
    expect(abtProduct(small)).toBeLessThan(abtProduct(adult));
    for (const footing of ["good", "normal", "poor"] as const) {
      expect(karvonenProduct(small, footing)).toBeLessThan(karvonenProduct(adult, footing));
    }
  });

  test("the rule of ten and the classes of floods never permit anything", () => {
    fc.assert(
      fc.property(anyDepth, anySpeed, anyWader, (d, v, wader) => {
        const { level, verdicts } = at(d, v, wader === null ? {} : { wader });
        for (const warns of ["LaneFay1997", "AIDR2017", "FOWG2002", "Defra2006"]) {
          const said = verdicts.find(({ source }) => source === warns);
          expect(["silent", "beyond"]).toContain(said?.level);
          if (said?.level === "beyond") expect(level).toBe("beyond");
        }
        expect(level).not.toBe("silent");
      }),
      seed,
    );
  });

  test("nothing is ever called safe", () => {
    fc.assert(
      fc.property(anyDepth, anySpeed, (d, v) => {
        expect(JSON.stringify(at(d, v))).not.toMatch(/\bsafe\b/i);
      }),
      { seed: 17, numRuns: 50 },
    );
  });
});

describe("where the sources disagree", () => {
  test("they differ threefold for one person, and the least heads the answer", () => {
    // 1.75 m and 75 kg: Karvonen, poor footing 0.3625; Abt 1.355 (from memory)
    const { limits, level, verdicts } = at(0.8, 0.5, { wader: adult });
    expect(limits.greatest / limits.least).toBeGreaterThan(3);
    expect(verdicts.map((one) => [one.source, one.level])).toEqual([
      ["Abt1989", "silent"],
      ["Karvonen2000", "beyond"],
      ["Cox2010", "under"],
      ["LaneFay1997", "silent"],
      ["AIDR2017", "silent"],
      ["FOWG2002", "silent"],
      ["Defra2006", "silent"],
    ]);
    expect(level).toBe("beyond");
  });

  test("two feet at five feet a second: the streamgager's own example of too much. Lane and Fay 1997, from memory", () => {
    const given = { depth: feet(2), speed: feetPerSecond(5) };
    const ten = wade(given).verdicts.find(({ source }) => source === "LaneFay1997");
    expect(ten?.level).toBe("beyond");
  });

  test("mid-thigh at four feet a second swept an adult off: never under the limits. Letter of a hazard engineer, as printed", () => {
    expect(at(0.65, 1.2192).level).not.toBe("under");
  });
});

describe("ceilings of their own", () => {
  test.each([
    [1.3, 0.01, adult, "depth"],
    [0.1, 3.1, adult, "speed"],
    [0.6, 0.05, { height: metres(1.3), mass: kilograms(30) }, "depth"],
    [0.1, 0.1, { height: metres(1.1), mass: kilograms(20) }, "height-and-mass"],
  ] as const)("%s m at %s m/s: Cox refuses by %4$s", (depth, speed, wader, rests) => {
    const cox = at(depth, speed, { wader }).verdicts.find(({ source }) => source === "Cox2010");
    expect(cox).toMatchObject({ level: "beyond", rests });
  });
});

describe("classes of floods", () => {
  const child = { height: metres(1.3), mass: kilograms(30) };
  test.each([
    // quicker than 2 m/s is H5, whatever the depth: no class for people has more
    [0.2, 2.1, adult, "AIDR2017", "beyond", "speed", 0.6],
    [0.6, 0.1, adult, "AIDR2017", "silent", "depth-times-speed", 0.6],
    [0.6, 0.1, child, "AIDR2017", "beyond", "depth", 0.6],
    [2.1, 0.1, adult, "FOWG2002", "beyond", "depth", 2],
    [1.9, 0.1, adult, "FOWG2002", "silent", "depth-times-speed", 2],
    // d (v + 0.5) = 1.25 at v = 2 in half a metre, a product of 1; a limit is already of the class above
    [0.5, 2, adult, "Defra2006", "beyond", "depth-times-speed", 1],
    [0.5, 1.9, adult, "Defra2006", "silent", "depth-times-speed", 1],
    [0.5, 1, child, "Defra2006", "beyond", "depth-times-speed", 0.5],
    [2.6, 0, adult, "Defra2006", "beyond", "depth", 0],
  ] as const)(
    "%s m at %s m/s, %o: %s is %s by %s, line at %s",
    (d, v, wader, source, level, rests, limit) => {
      const said = at(d, v, { wader }).verdicts.find((one) => one.source === source);
      expect(said).toMatchObject({ level, rests });
      expect(said?.limit).toBeCloseTo(limit, 9);
    },
  );
});

test("what was not said is listed", () => {
  expect(at(0.5, 0.5).unknown).toEqual(["wader", "footing"]);
  expect(at(0.5, 0.5, { wader: adult, footing: "good" }).unknown).toEqual([]);
  expect(at(0.5, 0.5).grounds.assumptions.map(({ name }) => name)).toEqual(["debris", "wader", "footing"]);
});

test.each([
  [{ depth: metres(-0.1) }, "depth of the wade must be from 0 to 50 m, got -0.1"],
  [{ speed: metresPerSecond(21) }, "speed of the water at the wade must be from 0 to 20 m/s, got 21"],
  [
    { wader: { height: metres(175), mass: kilograms(75) } },
    "height of the wader must be from 0.5 to 2.5 m, got 175",
  ],
  [
    { wader: { height: metres(1.75), mass: kilograms(7.5) } },
    "mass of the wader must be from 10 to 300 kg, got 7.5",
  ],
])("%o is refused", (wrong, message) => {
  expect(() => wade({ depth: metres(0.5), speed: metresPerSecond(0.5), ...wrong })).toThrow(message);
});
