import type { CaseRow, SourceCases } from "../case.js";

const exact = { relative: 1e-9, because: "a closed form" };

/** The other depth of y1 with the same energy, discharge 3 m³/s in a width of 2 m. */
function alternateOf(depth: number): { readonly energy: number; readonly other: number } {
  const k = 1.5 ** 2 / (2 * 9.80665);
  return {
    energy: depth + k / (depth * depth),
    other: (k + Math.sqrt(k * k + 4 * k * depth ** 3)) / (2 * depth * depth),
  };
}

const alternates = [1.2, 2, 3].flatMap((depth): CaseRow[] => {
  const { energy, other } = alternateOf(depth);
  return [other, depth].map((y, which) => ({
    id: `alternate depth ${which}, from ${depth}`,
    evaluates: "alternate depth, m",
    inputs: { discharge: 3, energy, which },
    printed: String(y),
    tolerance: exact,
  }));
});

const growth = (
  id: string,
  what: "top width" | "wetted perimeter" | "hydraulic depth",
  inputs: { readonly shape: string; readonly depth: number },
  printed: string,
): CaseRow => ({ id: `growth, ${id}`, evaluates: `growth of the ${what} with depth`, inputs, printed });

const pipe = { shape: "circular", depth: 0.5 };
const parabola = { shape: "parabolic", depth: 0.25 };

const strip = (shape: string, depth: number, k: number, printed: string): CaseRow => ({
  id: `strip ${k}, ${shape}`,
  evaluates: "depth of a strip, m",
  inputs: { shape, depth, strip: k },
  printed,
});

/** A step from 2.4 m to 1.2 m: the rectangle of 10 m, Chezy 40, slope 0.001, 20 m³/s, g 9.81. */
function stepBy(middle: (a: number, b: number) => number): number {
  const energy = (y: number) => y + (20 / (10 * y)) ** 2 / (2 * 9.81);
  const conveyance = (y: number) => 40 * 10 * y * Math.sqrt((10 * y) / (10 + 2 * y));
  return (energy(1.2) - energy(2.4)) / (0.001 - middle(conveyance(2.4), conveyance(1.2)));
}

/** Friction slopes are (Q/K)², Q = 20. */
const sf = (k: number): number => (20 / k) ** 2;
const steps = {
  arithmetic: stepBy((a, b) => sf(a) / 2 + sf(b) / 2),
  geometric: stepBy((a, b) => 400 / (a * b)),
  harmonic: stepBy((a, b) => 800 / (a * a + b * b)),
  conveyance: stepBy((a, b) => sf((a + b) / 2)),
} as const;

/** Distance upstream from y1 to y2 in a wide channel, normal depth 1, Chezy 50, slope 0.001, g 9.81: yc³ = C² S0/g. */
function bresse(from: number, to: number): number {
  const integral = (y: number) =>
    Math.log((y - 1) ** 2 / (y * y + y + 1)) / 6 - Math.atan((2 * y + 1) / Math.sqrt(3)) / Math.sqrt(3);
  const cubed = (50 * 50 * 0.001) / 9.81;
  return (from - to + (1 - cubed) * (integral(from) - integral(to))) / 0.001;
}

const justAbove = 1.005;
const middles = { relative: 1e-12, because: "exact" };

export const flowIdentities: SourceCases = {
  source: "Identities of sections, energy and water surfaces",
  locator: "README.md",
  kind: "analytic",
  seen: "derived",
  cases: [
    ...alternates,
    growth("pipe", "top width", pipe, "1.1547005"),
    growth("pipe's wall", "wetted perimeter", pipe, "2.3094011"),
    growth("parabola", "top width", parabola, "4.0000000"),
    growth("parabola's bed", "wetted perimeter", parabola, "4.4721360"),
    growth("V", "hydraulic depth", { shape: "triangular", depth: 0.7 }, "0.50000000"),
    strip("circular", 0.5, 0, "0.2006939"),
    strip("circular", 0.5, 1, "0.4506939"),
    strip("parabolic", 1, 0, "0.37500000"),
    strip("parabolic", 1, 1, "0.87500000"),
    strip("parabolic", 1, 3, "0.37500000"),
    strip("triangular", 1, 2, "0.75000000"),
    ...[2, 3].map(
      (times): CaseRow => ({
        id: `slope of ${times} times the discharge`,
        evaluates: "slope of a multiple of the uniform discharge over that of the bed",
        inputs: { times },
        printed: String(times * times),
        tolerance: exact,
      }),
    ),
    ...Object.entries(steps).map(
      ([average, distance]): CaseRow => ({
        id: `direct step, ${average}`,
        evaluates: "direct step of one rectangle, m",
        inputs: { average },
        printed: String(distance),
        tolerance: exact,
      }),
    ),
    ...[1.5, 1.2].map(
      (upper): CaseRow => ({
        id: `Bresse, ${upper}`,
        evaluates: "depth upstream in a wide channel, m",
        inputs: { depth: 2, length: bresse(2, upper) },
        printed: String(upper),
        tolerance: { relative: 1e-5, because: "a width of 1e6 m stands for a wide one" },
      }),
    ),
    {
      id: "jump of a profile",
      evaluates: "depth after the jump of a profile over its conjugate",
      inputs: {},
      printed: "1",
      tolerance: { relative: 1e-5, because: "each surface is integrated and read between its points" },
    },
    {
      id: "jump just above F = 1",
      evaluates: "depth after over before a jump",
      inputs: { units: "m", width: 1, depth: 1, discharge: justAbove * Math.sqrt(9.80665) },
      printed: String((Math.sqrt(1 + 8 * justAbove ** 2) - 1) / 2),
      tolerance: exact,
    },
    {
      id: "middle of the laws",
      evaluates: "middle n over the middle of the list",
      inputs: {},
      printed: "1",
      tolerance: middles,
    },
    {
      id: "middle of more laws",
      evaluates: "middle n over the middle of the list",
      inputs: { d50: 0.05 },
      printed: "1",
      tolerance: middles,
    },
    {
      id: "z0 of V/u*",
      evaluates: "z0 over depth of a given V/u*",
      inputs: { ratio: (Math.log(100) - 0.99) / 0.41 },
      printed: "0.01",
      tolerance: exact,
    },
    ...[
      { id: "boulder, far behind", downstream: 25, across: 0, printed: "0.8047977" },
      { id: "boulder, so near that nothing runs", downstream: 0.94316, across: 0, printed: "0.0000000" },
      { id: "boulder, beside its wake", downstream: 4, across: 1.1441, printed: "1.0000000" },
    ].map(
      ({ id, printed, ...inputs }): CaseRow => ({
        id,
        evaluates: "speed behind a boulder",
        inputs,
        printed,
      }),
    ),
    {
      id: "boulder, still",
      evaluates: "still behind a boulder, 1 yes",
      inputs: { downstream: 0.94316, across: 0 },
      printed: "1",
    },
  ],
};
