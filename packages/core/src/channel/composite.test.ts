import { expect, test } from "vitest";
import { metres } from "../units/index.js";
import { compositeRoughness, velocityCoefficients } from "./composite.js";
import { rectangularSection } from "./section.js";
import { overbanks, surveyOf } from "./sections.fixture.js";

const walled = (left: number, right: number) =>
  surveyOf(
    [
      [0, 3],
      [0, 0],
      [4, 0],
      [4, 1],
      [10, 1],
      [10, 3],
    ],
    {
      zones: [
        { from: metres(0), manning: left },
        { from: metres(4), manning: right },
      ],
    },
  );

// At 2 m by hand: left A = 8, P = 2 + 4 + 1 = 7 (the step is wet from its lower side); right A = 6, P = 6 + 1 = 7.
test("each method is its formula, by hand", () => {
  const section = walled(0.03, 0.06);
  const at = (method: Parameters<typeof compositeRoughness>[2]): number =>
    compositeRoughness(section, metres(2), method);
  const [p, n1, n2] = [7, 0.03, 0.06];
  const expected = {
    "horton-einstein": ((p * n1 ** 1.5 + p * n2 ** 1.5) / 14) ** (2 / 3),
    pavlovskii: Math.sqrt((p * n1 ** 2 + p * n2 ** 2) / 14),
    felkel: 14 / (p / n1 + p / n2),
    // Lotter: P R^(5/3) / Σ(P R^(5/3)/n)
    divided: (14 * 1 ** (5 / 3)) / ((p * (8 / 7) ** (5 / 3)) / n1 + (p * (6 / 7) ** (5 / 3)) / n2),
  };
  for (const method of ["horton-einstein", "pavlovskii", "felkel", "divided"] as const) {
    expect(Math.abs(at(method) / expected[method] - 1)).toBeLessThan(1e-14);
  }
});

test("α and β by hand", () => {
  const { energy, momentum } = velocityCoefficients(walled(0.03, 0.06), metres(2));
  const [k1, k2] = [(8 * (8 / 7) ** (2 / 3)) / 0.03, (6 * (6 / 7) ** (2 / 3)) / 0.06];
  expect(Math.abs(energy / (((k1 ** 3 / 64 + k2 ** 3 / 36) * 14 ** 2) / (k1 + k2) ** 3) - 1)).toBeLessThan(
    1e-14,
  );
  expect(Math.abs(momentum / (((k1 ** 2 / 8 + k2 ** 2 / 6) * 14) / (k1 + k2) ** 2) - 1)).toBeLessThan(1e-14);
});

test("one roughness everywhere is its own mean", () => {
  for (const method of ["horton-einstein", "pavlovskii", "felkel"] as const) {
    expect(Math.abs(compositeRoughness(walled(0.04, 0.04), metres(1.7), method) / 0.04 - 1)).toBeLessThan(
      1e-14,
    );
  }
});

test("water inside one zone has its roughness and runs evenly", () => {
  for (const method of ["horton-einstein", "pavlovskii", "felkel", "divided"] as const) {
    expect(Math.abs(compositeRoughness(overbanks, metres(1), method) / 0.03 - 1)).toBeLessThan(1e-14);
  }
  const { energy, momentum } = velocityCoefficients(overbanks, metres(1));
  expect(Math.abs(energy - 1)).toBeLessThan(1e-14);
  expect(Math.abs(momentum - 1)).toBeLessThan(1e-14);
});

test("uneven water has α above β above 1", () => {
  for (const depth of [2.1, 2.5, 3, 4.9]) {
    const { energy, momentum } = velocityCoefficients(overbanks, metres(depth));
    expect(energy).toBeGreaterThan(momentum);
    expect(momentum).toBeGreaterThan(1);
    // Chow 1959 § 2-7: α − 1 is about three times β − 1 where unevenness is small
    if (energy < 1.1) expect(Math.abs((energy - 1) / (momentum - 1) / 3 - 1)).toBeLessThan(0.2);
  }
});

test("a section without zones is told so", () => {
  expect(() => velocityCoefficients(rectangularSection(metres(1)), metres(1))).toThrow(
    "section must be surveyed, with zones of roughness, got rectangular",
  );
  expect(() => compositeRoughness(overbanks, metres(0), "divided")).toThrow("depth must be above 0 m, got 0");
});
