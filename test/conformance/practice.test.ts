/** docs/practice.md: what the trade says (common practice, no source) beside what the built core gives for one invented stop. */
import { readFileSync } from "node:fs";
import {
  type BeadMaterial,
  buildDry,
  buildNymph,
  type Column,
  drift,
  heightAboveBed,
  hold,
  type Knot,
  line,
  metres,
  metresPerSecond,
  millimetres,
  perSecond,
  type Rig,
  rig,
  seconds,
  settle,
  speedAt,
  type TippetMaterial,
  tippetDensity,
  tippetDiameter,
  waterColumn,
} from "@plumbdrift/core";
import { expect, test } from "vitest";

// tables are padded: compare with single spaces
const page = readFileSync(new URL("../../docs/practice.md", import.meta.url), "utf8").replace(/ +/g, " ");
const row = (...cells: readonly string[]): string => `| ${cells.join(" | ")} |`;

const over = (d84: number): Column =>
  waterColumn({ depth: metres(0.9), surfaceSpeed: metresPerSecond(0.9), bed: { d84: metres(d84) } });
const cobbles = over(0.05);
const boulders = over(0.45);

interface Tied {
  readonly dry?: number;
  readonly size?: number;
  readonly bead?: number;
  readonly metal?: BeadMaterial;
  readonly knot?: Knot;
  readonly x?: number;
  readonly of?: TippetMaterial;
  readonly length?: number;
}

/** A nymph 16 with 2.3 mm of tungsten on 0.46 m of 5X fluorocarbon under a foam dry 12, or what is said instead. */
function tied(given: Tied = {}): Rig {
  const { dry = 12, size = 16, bead = 2.3, metal = "tungsten", knot = "tight", x = 5 } = given;
  const { of = "fluorocarbon", length = 0.46 } = given;
  const nymph = buildNymph({ name: "n", size, knot, bead: { diameter: millimetres(bead), material: metal } });
  const tippet = line({ length: metres(length), diameter: tippetDiameter(x), density: tippetDensity[of] });
  return rig(buildDry({ name: "d", size: dry, style: "foam" }).body, { line: tippet, sinker: nymph.body });
}

const degrees = (angle: number): string => ((angle * 180) / Math.PI).toFixed(1);
const lowest = (made: Rig, column: Column) => {
  const settled = settle(made, column);
  const sinker = settled.sinkers[0];
  if (sinker === undefined || settled.regime !== "hanging") throw new Error(settled.regime);
  return { ...sinker, lean: settled.lean };
};
const toDepth = (made: Rig, column: Column, cast = {}) =>
  drift(made, column, {
    cast,
    window: { low: heightAboveBed(0), high: heightAboveBed(0.9 - 0.35) },
    segments: 16,
    timeStep: seconds(0.005),
  });
const timeTo = (made: Rig, column: Column, cast = {}): number =>
  toDepth(made, column, cast).firstInWindow ?? Number.NaN;

const changes: readonly (readonly [string, Tied])[] = [
  ["as described", {}],
  ["a bead of 2.8 mm", { bead: 2.8 }],
  ["brass, 2.3 mm", { metal: "brass" }],
  ["5X nylon", { of: "nylon" }],
  ["4X nylon", { of: "nylon", x: 4 }],
  ["3X nylon", { of: "nylon", x: 3 }],
  ["loop knot", { knot: "loop" }],
];

test.each(changes)("depth, lean and time: %s", (name, change) => {
  const cells = [cobbles, boulders].flatMap((column) => {
    const { depthBelowSurface, lean } = lowest(tied(change), column);
    return [depthBelowSurface.toFixed(3), degrees(lean), timeTo(tied(change), column).toFixed(2)];
  });
  expect(page).toContain(row(name, ...cells));
});

test.each([14, 10, 6])("a nymph 18 under a foam dry %d", (dry) => {
  const cells = [cobbles, boulders].map((column) =>
    degrees(lowest(tied({ dry, size: 18, bead: 2 }), column).lean),
  );
  expect(page).toContain(row(`${dry}`, ...cells));
});

test.each([0.3, 0.46, 0.6])("held in step on a dropper of %d m", (length) => {
  const cells = [cobbles, boulders].flatMap((column) => {
    const { inStep } = hold(tied({ length }), column, { points: 2 });
    if (inStep.reach !== "held") return [inStep.reach === "unreachable" ? inStep.reason : inStep.reach, "—"];
    const { slip, force } = inStep.point;
    return [`${((-100 * slip) / column.surfaceSpeed).toFixed(0)} %`, (force * 1000).toFixed(1)];
  });
  expect(page).toContain(row(`${length}`, ...cells));
});

test.each([
  ["cobbles", cobbles],
  ["boulders", boulders],
] as const)("the shorter of two rigs of one depth, over %s", (bed, column) => {
  const deep = lowest(tied(), column).depthBelowSurface;
  let longer = 0.46;
  while (lowest(tied({ metal: "brass", length: longer }), column).depthBelowSurface < deep) longer += 0.001;
  const cells = [["tungsten", 0.46] as const, ["brass", longer] as const].flatMap(([metal, length]) => {
    const { settling } = toDepth(tied({ metal, length }), column);
    if (!settling.settles) throw new Error("never settled");
    return [length.toFixed(2), (0.6 * length).toFixed(2), settling.distance.toFixed(1)];
  });
  expect(page).toContain(row(bed, ...cells));
});

test("a dropper of 0.46 m passes within 0.3 m of a fish 0.3 m off the bed", () => {
  for (const column of [cobbles, boulders]) {
    expect(Math.abs(lowest(tied(), column).heightAboveBed - 0.3)).toBeLessThan(0.3);
  }
});

test("the water that the page describes", () => {
  for (const [name, column] of [
    ["cobbles", cobbles],
    ["boulders", boulders],
  ] as const) {
    const share = (z: number): string =>
      (speedAt(column, heightAboveBed(z)) / column.surfaceSpeed).toFixed(2);
    expect(page).toContain(row(name, share(0.15), share(0.3), share(0.45), share(0.6), share(0.75)));
  }
});

test.each([-0.3, 0, 0.3])("a lane that gains %d of the surface speed per metre", (share) => {
  const cells = [cobbles, boulders].map((column) => {
    const cast = { sinkerAcross: metres(0.15), laneGradient: perSecond(share * column.surfaceSpeed) };
    return timeTo(tied(), column, cast).toFixed(2);
  });
  expect(page).toContain(row(share.toFixed(1).replace("-", "−"), ...cells));
});
