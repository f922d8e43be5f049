import { describe, expect, test } from "vitest";
import { line, sinker, terminalSpeed } from "../forces/index.js";
import { lineLength, type Rig, rig } from "../rig/index.js";
import {
  cubicMetres,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  metresPerSecond,
  newtons,
  seconds,
  standardGravity,
} from "../units/index.js";
import { settle } from "./settled.js";
import {
  bigFloat,
  boulderWater,
  generator,
  hangingRig,
  hung,
  logWater,
  nymph,
  powerWater,
  someSinker,
  stillWater,
  water,
} from "./unsteady.fixture.js";
import { type Drift, type DriftOptions, drift, land } from "./unsteady.js";
import { buildChain, mechanicalEnergy } from "./unsteady-chain.js";
import { linkStiffness } from "./unsteady-links.js";
import { planOf } from "./unsteady-plan.js";
import { compileStepper } from "./unsteady-step.js";

const forever: DriftOptions = {
  runLength: metres(1e4),
  duration: seconds(1000),
  timeStep: seconds(0.04),
  instants: 60,
};

/** Speed of the float and height of the lowest sinker at the end. */
function ending(given: Drift): { readonly speed: number; readonly height: number } {
  const last = given.path.at(-1);
  const before = given.path.at(-2);
  if (last === undefined || before === undefined) throw new Error("no path");
  const speed = (last.float.downstream - before.float.downstream) / (last.time - before.time);
  return { speed, height: last.sinkers.at(-1)?.heightAboveBed ?? Number.NaN };
}

describe("the long run is the settled drift", () => {
  test("200 seeded hanging rigs: depth and speed to 0.5 %, lengths to 0.1 %", () => {
    let count = 0;
    for (let seed = 1; count < 200; seed++) {
      const { rig: given, column } = hangingRig(seed);
      const settled = settle(given, column);
      const late = drift(given, column, { ...forever, settled, segments: 16 });
      const { speed, height } = ending(late);
      const depth = settled.sinkers.at(-1)?.depthBelowSurface ?? Number.NaN;
      expect(settled.regime, `seed ${seed}`).toBe("hanging");
      expect(Math.abs((column.depth - height) / depth - 1), `depth, seed ${seed}`).toBeLessThan(0.005);
      expect(Math.abs(speed / settled.driftSpeed - 1), `speed, seed ${seed}`).toBeLessThan(0.005);
      expect(late.lengthError).toBeLessThan(1e-3);
      expect(late.settling.settles).toBe(true);
      count++;
    }
    expect(count).toBe(200);
  });

  // check values K-20 to K-23: two independent integrations of the settled rig, outside this project's code
  test.each([
    ["K-20", logWater, 0, 0.862118, 0.458387],
    ["K-21", boulderWater, 0, 0.771822, 0.499018],
    ["K-22", powerWater, 0, 1.143265, 0.458735],
    ["K-23", boulderWater, 0.5e-3, 0.743186, 0.48555],
  ] as const)("row %s to 1e-4", (_, column, held, speed, height) => {
    const late = ending(drift(hung(nymph), column, { ...forever, held: newtons(held), segments: 64 }));
    expect(Math.abs(late.speed / speed - 1)).toBeLessThan(1e-4);
    expect(Math.abs(late.height / height - 1)).toBeLessThan(1e-4);
  });
});

/** How far the sinker trails after 0.3 s when a plumb rig is let go among boulders. */
function leanAfterPlumb(step: number): number {
  const given = hung(nymph);
  const plan = planOf(given, boulderWater, {});
  const chain = buildChain(given, water, 8);
  for (let i = 0; i < chain.nodes; i++) {
    chain.position.set([0, 0, boulderWater.depth - (0.4572 * i) / 8], 3 * i);
    chain.velocity.set([0.9144, 0, 0], 3 * i);
  }
  const stepper = compileStepper(chain, plan.stream);
  for (let k = 0; k < Math.round(0.3 / step); k++) stepper.advance(step, 1.5e-3);
  return (chain.position[0] ?? 0) - (chain.position.at(-3) ?? 0);
}

describe("the stated orders", () => {
  const differences = (values: readonly number[]): readonly number[] =>
    values.slice(1).map((value, i) => value - (values[i] ?? Number.NaN));

  // let go hanging plumb, and after a whole cast
  test("halving the time step halves the error: first order", () => {
    const leans = [0.02, 0.01, 0.005, 0.0025].map(leanAfterPlumb);
    const heights = [0.02, 0.01, 0.005, 0.0025].map(
      (step) =>
        ending(drift(hung(nymph), logWater, { duration: seconds(2), timeStep: seconds(step) })).height,
    );
    for (const values of [leans, heights]) {
      const [a = 0, b = 0, c = 0] = differences(values);
      for (const ratio of [a / b, b / c]) {
        expect(ratio).toBeGreaterThan(1.7);
        expect(ratio).toBeLessThan(2.3);
      }
    }
  });

  test("halving the segments quarters the error: second order", () => {
    const stationary = metresPerSecond(1e-8);
    const speeds = [4, 8, 16, 32].map(
      (segments) => ending(drift(hung(nymph), logWater, { ...forever, segments, stationary })).speed,
    );
    const [a = 0, b = 0, c = 0] = differences(speeds);
    for (const ratio of [a / b, b / c]) {
      expect(ratio).toBeGreaterThan(3.2);
      expect(ratio).toBeLessThan(5);
    }
  });
});

/** A rig whose line neither weighs nor resists, thrown in a heap: until it comes taut the sinker falls freely. */
function freeFall(body: Parameters<typeof sinker>[0], step: number, time: number): Drift {
  const ghost = line({
    length: metres(30),
    diameter: metres(1e-6),
    density: water.density,
    normalDrag: { coefficient: 1e-12 },
    tangentialDrag: 0,
  });
  const given: Rig = rig(bigFloat, { line: ghost, sinker: sinker(body) });
  const cast = { sinkerDownstream: metres(0), entrySpeed: metresPerSecond(0) };
  return drift(given, stillWater(40), {
    cast,
    duration: seconds(time),
    timeStep: seconds(step),
    segments: 64,
    stationary: metresPerSecond(0),
    instants: 10_000,
  });
}

describe("a free sinker", () => {
  const sphere = { mass: kilograms(0.14e-3), volume: cubicMetres(11.5e-9), bead: metres(2.8e-3) };

  test.each([
    ["a sphere", sphere],
    ["across, on a tight knot", { ...sphere, body: { length: metres(6e-3), diameter: metres(1.8e-3) } }],
    [
      "head first, on a loop",
      { ...sphere, body: { length: metres(6e-3), diameter: metres(1.8e-3) }, knot: "loop" as const },
    ],
  ])("falls at its terminal speed to 0.1 %%: %s", (...[, body]) => {
    const [before, last] = freeFall(body, 0.01, 5).path.slice(-2);
    if (before === undefined || last === undefined) throw new Error("no path");
    const fallen = (before.sinkers[0]?.heightAboveBed ?? 0) - (last.sinkers[0]?.heightAboveBed ?? 0);
    const speed = fallen / (last.time - before.time);
    expect(Math.abs(speed / terminalSpeed(sinker(body), water) - 1)).toBeLessThan(1e-3);
  });

  // closed form of M dw/dt = W − k w²: w = w∞ tanh(t/τ), fallen w∞ τ ln cosh(t/τ), w∞ = √(2W/(ρ A Cd)), τ = M w∞/W
  test("with constant coefficient follows the closed form from rest, first order in the step", () => {
    const W = (sphere.mass - water.density * sphere.volume) * standardGravity;
    const area = (Math.PI * sphere.bead ** 2) / 4;
    const terminal = Math.sqrt((2 * W) / (water.density * area * 0.44));
    const M = sphere.mass + (0.5 * water.density * Math.PI * sphere.bead ** 3) / 6;
    const tau = (M * terminal) / W;
    const fallen = terminal * tau * Math.log(Math.cosh(0.4 / tau));
    const errors = [0.002, 0.001, 0.0005].map((step) => {
      const path = freeFall({ ...sphere, beadDrag: { coefficient: 0.44 } }, step, 0.4).path;
      return (40 - (path.at(-1)?.sinkers[0]?.heightAboveBed ?? 0)) / fallen - 1;
    });
    expect(Math.abs(errors[2] ?? 1)).toBeLessThan(2e-3);
    expect((errors[0] ?? 0) / (errors[1] ?? 1)).toBeGreaterThan(1.8);
    expect((errors[1] ?? 0) / (errors[2] ?? 1)).toBeLessThan(2.2);
  });
});

// docs/unsteady.md proves it for every step; a taut pendulum, a heap, a landing on the bed
test("still water takes mechanical energy at every step", () => {
  for (let seed = 1; seed <= 60; seed++) {
    const uniform = generator(seed);
    const column = stillWater(uniform(0.3, 2));
    const section = () => ({
      line: line({
        length: metres(uniform(0.2, 1)),
        diameter: metres(0.15e-3),
        density: kilogramsPerCubicMetre(1780),
      }),
      sinker: someSinker(uniform, uniform(0.02e-3, 1e-3)),
    });
    const given = uniform(0, 1) < 0.5 ? rig(bigFloat, section()) : rig(bigFloat, section(), section());
    const chord = lineLength(given.sections) * (seed % 3 === 0 ? 1 : uniform(0, 1));
    const angle = uniform(0, 2 * Math.PI);
    const cast = {
      sinkerDownstream: metres(chord * Math.cos(angle)),
      sinkerAcross: metres(chord * Math.sin(angle)),
    };
    const plan = planOf(given, column, { cast });
    const chain = buildChain(given, water, 8);
    land(chain, plan);
    const stepper = compileStepper(chain, plan.stream);
    const first = mechanicalEnergy(chain, linkStiffness);
    let energy = first;
    for (let k = 0; k < 300; k++) {
      stepper.advance(0.01, 0);
      const next = mechanicalEnergy(chain, linkStiffness);
      expect(next - energy, `seed ${seed}, step ${k}`).toBeLessThanOrEqual(1e-12 * first);
      energy = next;
    }
    expect(energy).toBeLessThan(0.9 * first);
    expect(stepper.work().unfinished).toBe(0);
  }
});
