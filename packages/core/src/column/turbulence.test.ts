import { expect, test } from "vitest";
import { metresPerSecond } from "../units/index.js";
import { turbulenceIntensity } from "./index.js";

const shear = metresPerSecond(0.08);

test("the water shakes most along, least upright, and less towards the surface", () => {
  const low = turbulenceIntensity(shear, 0.2);
  const high = turbulenceIntensity(shear, 0.8);
  for (const { along, across, upright } of [low, high]) {
    expect(along).toBeGreaterThan(across);
    expect(across).toBeGreaterThan(upright);
  }
  for (const part of ["along", "across", "upright"] as const) {
    expect(Math.abs(low[part] / high[part] / Math.exp(0.6) - 1)).toBeLessThan(1e-12);
  }
});

test("without shear nothing shakes, and it grows in proportion", () => {
  expect(turbulenceIntensity(metresPerSecond(0), 0.5)).toMatchObject({ along: 0, across: 0, upright: 0 });
  const twice = turbulenceIntensity(metresPerSecond(0.16), 0.5).along / turbulenceIntensity(shear, 0.5).along;
  expect(Math.abs(twice - 2)).toBeLessThan(1e-12);
});

test.each([
  [0.1, 0],
  [0.9, 0],
  [0.05, 1],
  [1, 1],
])("at z/h = %d it carries %d caveats", (relativeHeight, count) => {
  expect(turbulenceIntensity(shear, relativeHeight).caveats).toHaveLength(count);
});
