/** Channels over HTTP against values from outside: what is sent and said keeps its units on the way. */

import { describe, expect, test } from "vitest";
import { type Body, exampleOf, examplesOf, post } from "./api.js";

const m = (value: number) => ({ value, unit: "m" });
const answer = async (path: string, body: Body): Promise<Body> =>
  (await post(`/v1/channels/${path}`, body)).body;

/** Half the last printed digit. */
const within = (value: number, printed: string): void => {
  const half = 0.5 * 10 ** -(printed.split(".")[1] ?? "").length;
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(half * (1 + 1e-9));
};

describe("answers", () => {
  // geometry of a trapezoid by hand: (3 + 1.5 y) y, 3 + 2 y √3.25, 3 + 3 y
  test("carryFlow fills a trapezoid", async () => {
    const { geometry } = await answer("flows", exampleOf("/v1/channels/flows"));
    within(geometry.area.value, "7.875");
    within(geometry.topWidth.value, "7.5");
    within(geometry.wettedPerimeter.value, (3 + 3 * Math.sqrt(3.25)).toFixed(9));
  });

  // Manning with K_u of feet by its definition 0.3048^(−1/3): 5 ft wide, 2 ft deep, n 0.02, slope 0.01, by hand
  test("carryFlow in feet is Manning's formula in feet", async () => {
    const ft = (value: number) => ({ value, unit: "ft" });
    const { discharge } = await answer("flows", {
      section: { shape: "rectangular", width: ft(5) },
      friction: { law: "manning", n: 0.02 },
      slope: 0.01,
      depth: ft(2),
      units: "us",
    });
    expect(discharge.unit).toBe("ft3/s");
    within(discharge.value, ((0.3048 ** (-1 / 3) / 0.02) * 10 * (10 / 9) ** (2 / 3) * 0.1).toFixed(7));
  });

  // Belanger's equation of a rectangular channel, and head loss (y2 − y1)³/(4 y1 y2)
  test("jumpFlow keeps Belanger's equation, and its power is ρ g Q times the loss", async () => {
    const { jump } = await answer("jumps", exampleOf("/v1/channels/jumps"));
    const froude = 1 / Math.sqrt(9.80665 * 0.3 ** 3);
    const after = 0.15 * (Math.sqrt(1 + 8 * froude ** 2) - 1);
    within(jump.after.value, after.toFixed(9));
    within(jump.headLoss.value, ((after - 0.3) ** 3 / (1.2 * after)).toFixed(9));
    // 999.5 kg/m³ at 12 °C, as tables print it, from memory
    within(jump.power.value / (9.80665 * 10 * jump.headLoss.value), "999.5");
  });

  // y_c = (q²/g)^(1/3) and E = 1.5 y_c, both of a rectangular channel
  test("readEnergy has its least at critical depth", async () => {
    const { least, alternates, specificEnergy } = await answer(
      "energies",
      exampleOf("/v1/channels/energies"),
    );
    const critical = Math.cbrt(1 / 9.80665);
    within(least.depth.value, critical.toFixed(9));
    within(least.energy.value, (1.5 * critical).toFixed(9));
    for (const { value: y } of alternates.depths) {
      within(y + 1 / (2 * 9.80665 * y * y), specificEnergy.value.toFixed(9));
    }
  });

  // the sums of the example by hand: 0.22 × 0.31 + 0.38 × 0.52 + 0.81 × 0.68 + 0.6 × 0.66 + 0.35 × 0.4, all 1 m wide
  test("measureDischarge adds its panels", async () => {
    const { discharge, area } = await answer("discharges", exampleOf("/v1/channels/discharges"));
    within(discharge.value, "1.3526");
    within(area.value, "2.36");
  });

  // doubled discharge: 2^0.26, 2^0.4, 2^0.34 [LeopoldMaddock1953]
  test("scaleStream goes by the published exponents", async () => {
    const { states } = await answer("geometries", exampleOf("/v1/channels/geometries"));
    within(states[0].width.value.value, (30 * 2 ** 0.26).toFixed(7));
    within(states[0].meanDepth.value.value, (1.1 * 2 ** 0.4).toFixed(7));
    within(states[0].meanSpeed.value.value, ((60 / 33) * 2 ** 0.34).toFixed(7));
  });

  // gaugings of Q = 3 (h − 0.2)² lie on their own curve
  test("fitRating finds the curve that its gaugings lie on", async () => {
    const gaugings = [0.5, 0.9, 1.4, 2].map((stage) => ({
      stage: m(stage),
      discharge: { value: 3 * (stage - 0.2) ** 2, unit: "m3/s" },
    }));
    const zeroFlow = { kind: "known", stage: m(0.2) };
    const { rating, readings } = await answer("ratings", { gaugings, zeroFlow, stages: [m(1.2), m(0.2)] });
    within(rating.exponent, "2.000000000");
    within(rating.atOneMetre.value, "3.000000000");
    within(readings[0].discharge.value, "3.000000000");
    expect(readings[1].kind).toBe("no-flow");
  });

  // lanes add up to the discharge, and to the width of a trapezoid at its depth
  test("spreadFlow carries the discharge that was asked for", async () => {
    const { across } = await answer("lanes", { ...exampleOf("/v1/channels/lanes"), units: "si" });
    const sum = across.lanes.reduce((total: number, lane: Body) => total + lane.discharge.value, 0);
    within(sum / (180 * 0.3048 ** 3), "1.000000000");
  });

  // V = √(8 g R S/f), and f = 8 g n²/R^(1/3): the forms of one resistance
  test("estimateResistance gives n, f and speed that agree", async () => {
    const { resistance } = await answer("resistances", exampleOf("/v1/channels/resistances"));
    expect(resistance.estimates.length).toBeGreaterThan(5);
    for (const { n, frictionFactor, speed } of resistance.estimates) {
      within(frictionFactor, ((8 * 9.80665 * n ** 2) / Math.cbrt(0.6)).toFixed(9));
      within(speed.value, Math.sqrt((8 * 9.80665 * 0.6 * 0.008) / frictionFactor).toFixed(9));
    }
    expect(resistance.n.min).toBeLessThan(resistance.n.median);
  });

  // across a jump of a level bed: Belanger again, between the depths on its sides
  test("traceSurface jumps between conjugate depths, once", async () => {
    const { surface } = await answer("surfaces", exampleOf("/v1/channels/surfaces"));
    expect(surface.jumps).toHaveLength(1);
    const [{ before, after, distance }] = surface.jumps;
    const froude = 2 / Math.sqrt(9.80665 * before.value ** 3);
    within(after.value, ((before.value / 2) * (Math.sqrt(1 + 8 * froude ** 2) - 1)).toFixed(7));
    const at = surface.points.filter((point: Body) => point.distance.value === distance.value);
    expect(at.map((point: Body) => point.depth)).toEqual([before, after]);
    expect(surface.unused).toEqual([]);
  });
});

test("traceSurface begins at 0 and ends where its reaches do", async () => {
  const { riffleToPool } = examplesOf("/v1/channels/surfaces");
  const { points } = (await answer("surfaces", riffleToPool?.value)).surface;
  expect(points[0].distance).toEqual({ value: 0, unit: "ft" });
  // 600 + 120 + 400 ft
  within(points.at(-1).distance.value, "1120.000000");
});

describe("what cannot be is an answer", () => {
  const pipe = { section: { shape: "circular", diameter: m(1) }, friction: { law: "manning", n: 0.013 } };
  const cumecs = (value: number) => ({ value, unit: "m3/s" });

  // a pipe carries most at 0.938 of its diameter [Chow1959], from memory
  test("more than a pipe carries", async () => {
    const { normal } = await answer("depths", { ...pipe, slope: 0.001, discharge: cumecs(2) });
    expect(normal.kind).toBe("over-capacity");
    within(normal.atDepth.value, "0.938");
  });

  test("uniform flow on a level or rising bed", async () => {
    for (const slope of [0, -0.01]) {
      const { normal, critical } = await answer("depths", { ...pipe, slope, discharge: cumecs(0.3) });
      expect([normal.kind, critical.kind]).toEqual(["no-slope", "found"]);
      const { across } = await answer("lanes", { ...pipe, slope, discharge: cumecs(0.3) });
      expect(across.kind).toBe("no-slope");
    }
  });

  test("a jump of tranquil water, or above the pipe", async () => {
    const jump = async (before: number, discharge: number) =>
      (await answer("jumps", { section: pipe.section, before: m(before), discharge: cumecs(discharge) })).jump
        .kind;
    expect(await jump(0.8, 0.1)).toBe("not-supercritical");
    expect(await jump(0.5, 5)).toBe("over-capacity");
    const { conjugates } = await answer("energies", {
      section: pipe.section,
      depth: m(0.5),
      discharge: cumecs(5),
    });
    expect(conjugates.kind).toBe("over-capacity");
  });

  test("a law that has nothing to say among boulders", async () => {
    const { resistance } = await answer("resistances", {
      hydraulicRadius: m(0.1),
      d90: m(5),
      d84: m(4),
      d50: m(3),
    });
    expect(resistance.silent).toContain("Limerinos");
  });
});
