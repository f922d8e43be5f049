import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Metres, metres } from "../units/index.js";
import {
  bathurstRatio,
  chowTable,
  cowanRoughness,
  cowanTable,
  fergusonRatio,
  heyRatio,
  jarrettRoughness,
  limerinosRatio,
  manningOf,
  type RoughnessRange,
  resistanceLaws,
  resistanceOf,
  rickenmannReckingRatio,
  rickenmannReckingSpeed,
  velocityRatioOf,
} from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
const x = fc.double({ min: 0.3, max: 100, noNaN: true });
const radius = fc.double({ min: 0.05, max: 10, noNaN: true }).map(metres);

describe("the laws", () => {
  test("give faster water over the same stones when it is deeper", () => {
    fc.assert(
      fc.property(x, fc.double({ min: 1.001, max: 3, noNaN: true }), (a, factor) => {
        for (const law of [limerinosRatio, bathurstRatio, heyRatio, fergusonRatio, rickenmannReckingRatio])
          expect(law(a * factor)).toBeGreaterThan(law(a));
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  // the limits that Ferguson 2007 built his equation from
  test("of Ferguson is a roughness layer in shallow and Manning and Strickler in deep water", () => {
    expect(relative(fergusonRatio(1e-6), 2.5e-6)).toBeLessThan(1e-6);
    expect(relative(fergusonRatio(1e6), 6.5 * 10)).toBeLessThan(1e-6);
  });

  test("of Rickenmann and Recking say nearly the same by depth and by discharge", () => {
    // q** = x^1.5 V/u* and U** = x^0.5 V/u*: two fits to one set of data
    fc.assert(
      fc.property(fc.double({ min: 0.6, max: 50, noNaN: true }), (depth) => {
        const ratio = rickenmannReckingRatio(depth);
        expect(relative(rickenmannReckingSpeed(depth ** 1.5 * ratio), depth ** 0.5 * ratio)).toBeLessThan(
          0.12,
        );
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  test("of Limerinos, Hey and Bathurst are silent below their logarithm's zero", () => {
    // Limerinos: log10 x = −0.58; Hey: x = 3.5/11.75; Bathurst: log10 x = −4/5.62
    expect(limerinosRatio(10 ** -0.58)).toBeCloseTo(0, 12);
    expect(heyRatio(3.5 / 11.75)).toBeCloseTo(0, 12);
    expect(bathurstRatio(10 ** (-4 / 5.62))).toBeCloseTo(0, 12);
  });

  test("of Jarrett rise with slope and fall with depth by their powers", () => {
    expect(relative(jarrettRoughness(0.02, 1) / jarrettRoughness(0.01, 1), 2 ** 0.38)).toBeLessThan(1e-12);
    expect(relative(jarrettRoughness(0.01, 2) / jarrettRoughness(0.01, 1), 2 ** -0.16)).toBeLessThan(1e-12);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("name a submergence of %d", (bad) => {
    expect(() => limerinosRatio(bad)).toThrow("hydraulic radius over D84");
    expect(() => bathurstRatio(bad)).toThrow("depth over D84");
  });
});

test("n and V/u* are two forms of one resistance", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.3, noNaN: true }), radius, (n, r: Metres) => {
      expect(relative(manningOf(velocityRatioOf(n, r), r), n)).toBeLessThan(1e-12);
    }),
    { seed: 3, numRuns: 200 },
  );
});

describe("all that apply", () => {
  const bed = {
    hydraulicRadius: metres(0.6),
    slope: 0.012,
    d50: metres(0.06),
    d84: metres(0.15),
    d90: metres(0.18),
    roughness: metres(0.5),
    chow: "mountain stream, gravels, cobbles, few boulders",
    cowan: {
      material: "coarse gravel",
      irregularity: "minor",
      variation: "gradual",
      obstructions: "minor",
      vegetation: "low",
      meandering: "minor",
    },
  } as const;

  test("are every law where everything is known, in order of n, inside the spread", () => {
    const all = resistanceOf(bed);
    if (all.kind !== "estimated") throw new TypeError(all.kind);
    expect(all.estimates).toHaveLength(resistanceLaws.length);
    const ns = all.estimates.map((e) => e.n);
    expect(ns).toEqual([...ns].sort((a, b) => a - b));
    for (const e of all.estimates) {
      expect(e.nRange.min).toBeGreaterThanOrEqual(all.n.min);
      expect(e.nRange.max).toBeLessThanOrEqual(all.n.max);
      expect(relative(e.frictionFactor, 8 / e.velocityRatio ** 2)).toBeLessThan(1e-12);
      expect(relative(velocityRatioOf(e.n, bed.hydraulicRadius), e.velocityRatio)).toBeLessThan(1e-12);
    }
    expect(all.n.median).toBeGreaterThan(all.n.min);
    expect(all.n.median).toBeLessThan(all.n.max);
  });

  test("are fewer where less is known", () => {
    const laws = (known: Parameters<typeof resistanceOf>[0]): readonly string[] => {
      const all = resistanceOf(known);
      return all.kind === "estimated" ? all.estimates.map((e) => e.law) : [];
    };
    const hydraulicRadius = metres(0.6);
    expect(laws({ hydraulicRadius, slope: 0.01 })).toEqual(["Jarrett"]);
    expect(laws({ hydraulicRadius, d50: metres(0.05) }).toSorted()).toEqual(["Griffiths", "Strickler"]);
    expect(() => resistanceOf({ hydraulicRadius })).toThrow("stone size");
  });

  test("carry a caveat for each range they leave", () => {
    const steep = resistanceOf({ hydraulicRadius: metres(3), slope: 0.2 });
    if (steep.kind !== "estimated") throw new TypeError(steep.kind);
    expect(steep.estimates[0]?.caveats).toEqual([
      { relation: "Jarrett1984", quantity: "slope", min: 0.002, max: 0.04, received: 0.2 },
      { relation: "Jarrett1984", quantity: "hydraulic radius, m", min: 0.15, max: 2.1, received: 3 },
    ]);
  });

  test("leave out the laws that have nothing to say among boulders", () => {
    const shallow = resistanceOf({ hydraulicRadius: metres(0.1), d84: metres(1) });
    if (shallow.kind !== "estimated") throw new TypeError(shallow.kind);
    expect(shallow.silent.toSorted()).toEqual(["Bathurst", "Hey", "Leopold and Wolman", "Limerinos"]);
    expect(resistanceOf({ hydraulicRadius: metres(0.01), roughness: metres(1) })).toEqual({
      kind: "none",
      silent: ["Keulegan"],
    });
  });

  test.each([
    ["hydraulic radius", { hydraulicRadius: metres(0), slope: 0.01 }],
    ["slope", { hydraulicRadius: metres(1), slope: 0 }],
    ["D84", { hydraulicRadius: metres(1), d84: metres(-1) }],
    ["D50", { hydraulicRadius: metres(1), d50: metres(0) }],
  ])("name an impossible %s", (name, known) => {
    expect(() => resistanceOf(known)).toThrow(name);
  });
});

describe("the tables", () => {
  test.each(Object.entries(chowTable))(
    "of Chow rise from least to greatest: %s",
    (_, { min, normal, max }) => {
      expect(min).toBeLessThan(normal);
      expect(normal).toBeLessThan(max);
    },
  );

  test.each(Object.entries(cowanTable))(
    "of Cowan rise from least to greatest in every row of %s",
    (_, rows) => {
      for (const { min, normal, max } of Object.values<RoughnessRange>(rows)) {
        expect(min).toBeLessThanOrEqual(normal);
        expect(normal).toBeLessThanOrEqual(max);
      }
    },
  );

  test("of Cowan refuse a word that is not there", () => {
    const choice = {
      material: "earth",
      irregularity: "smooth",
      variation: "gradual",
      obstructions: "negligible",
      vegetation: "low",
      meandering: "minor",
    } as const;
    const wrong: unknown = JSON.parse('{"material":"toString"}');
    expect(() => cowanRoughness(Object.assign({}, choice, wrong))).toThrow("material must be one of earth");
  });
});
