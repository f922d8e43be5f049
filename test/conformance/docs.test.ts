/** What docs/column.md says in numbers is what the built core gives. */
import { readFileSync } from "node:fs";
import { type Column, heightAboveBed, metres, metresPerSecond, speedAt, waterColumn } from "@plumbdrift/core";
import { expect, test } from "vitest";
import { bestLogLaw, layerRatio } from "./evaluations-column.js";
import { fractions, printed, speeds } from "./usgs-vertical-curve/cases.js";

// tables are padded: compare with single spaces
const page = readFileSync(new URL("../../docs/column.md", import.meta.url), "utf8").replace(/ +/g, " ");

function row(...cells: readonly (string | number)[]): string {
  return `| ${cells.join(" | ")} |`;
}

function signed(value: number): string {
  return `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(3)}`;
}

const nearest: Column = bestLogLaw(fractions, speeds);
const power = waterColumn({ depth: metres(1), surfaceSpeed: metresPerSecond(1), exponent: 6 });
const deviations = (column: Column) =>
  fractions.map(
    (f, n) => speedAt(column, heightAboveBed(1 - f)) / column.meanSpeed - (speeds[n] ?? Number.NaN),
  );

test("the page compares the standard curve with the nearest log law and the power law", () => {
  const ofLog = deviations(nearest);
  const ofPower = deviations(power);
  fractions.forEach((fraction, n) => {
    expect(page).toContain(row(fraction, printed[n] ?? "", signed(ofLog[n] ?? 0), signed(ofPower[n] ?? 0)));
  });
  const { profile } = nearest;
  expect(profile.law === "log" && Math.round(1 / profile.roughnessLength / 10) * 10).toBe(600);
  expect(page).toContain("h/z0 = 600");
});

test.each(["granule", "pebble", "cobble", "boulder"] as const)("the page gives the ratio over %s", (bed) => {
  const column = waterColumn({ depth: metres(0.9), surfaceSpeed: metresPerSecond(1), bed });
  const submergence = Number(column.relativeSubmergence?.toPrecision(2));
  expect(page).toContain(row(bed, submergence, column.profile.law, column.surfaceRatio.toFixed(2)));
});

test.each([0.256, 0.362, 0.512])("the page gives the layers over boulders of %d m", (d84) => {
  const column = waterColumn({
    depth: metres(0.9),
    surfaceSpeed: metresPerSecond(1),
    bed: { d84: metres(d84) },
  });
  const layer = (from: number, to: number) => layerRatio(column, from, to).toFixed(2);
  expect(page).toContain(row(d84, layer(0.6, 0.9), layer(0, 0.45)));
});
