/** Intervals that are said to hold nine cases in ten hold nine in ten, on truths drawn by the stated law. */
import { expect, test } from "vitest";
import { generator } from "../drift/unsteady.fixture.js";
import { metres, metresPerSecond, cubicMetresPerSecond as q, type StopPair, shiftFlow } from "../index.js";

/** Uniform and normal numbers of a seed. */
function drawsOf(seed: number): { readonly uniform: () => number; readonly normal: () => number } {
  const between = generator(seed);
  const uniform = (): number => between(Number.EPSILON, 1);
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}

const CASES = 4000;
/** Three points, as promised; the draw itself is good to half a point. */
const near = (share: number, nominal: number) => expect(Math.abs(share - nominal)).toBeLessThan(0.03);

test.each([0.8, 0.9, 0.95])("pairs: a new measurement lies in the interval of %s", (confidence) => {
  const { uniform, normal } = drawsOf(41);
  let held = 0;
  for (let i = 0; i < CASES; i++) {
    const [f, m, scatter] = [0.2 + 0.4 * uniform(), 0.2 + 0.3 * uniform(), 0.02 + 0.15 * uniform()];
    const note = (): StopPair => {
      const discharge = Math.exp(Math.log(10) + 1.2 * (uniform() - 0.5));
      return {
        discharge: q(discharge),
        depth: metres(0.8 * (discharge / 10) ** f * Math.exp(scatter * normal())),
        surfaceSpeed: metresPerSecond(0.9 * (discharge / 10) ** m * Math.exp(scatter * normal())),
      };
    };
    const [stop, next] = [note(), note()];
    const pairs = Array.from({ length: 2 + Math.floor(6 * uniform()) }, note);
    const { depth, surfaceSpeed } = { surfaceSpeed: metresPerSecond(0.9), ...stop };
    const shifted = shiftFlow({
      observation: { depth, surfaceSpeed },
      measuredAt: stop.discharge,
      now: next.discharge,
      method: { by: "pairs", pairs },
      confidence,
    });
    if (shifted.kind !== "shifted" || shifted.depth.interval === null)
      throw new Error("expected an interval");
    const { min, max } = shifted.depth.interval;
    if (next.depth >= min && next.depth <= max) held++;
  }
  near(held / CASES, confidence);
});

test("published exponents: streams that scatter about them as assumed lie in the interval", () => {
  const { uniform, normal } = drawsOf(7);
  let held = 0;
  for (let i = 0; i < CASES; i++) {
    const now = 10 * Math.exp(3 * (uniform() - 0.5));
    const truth = 0.8 * (now / 10) ** (0.4 + 0.1 * normal());
    const shifted = shiftFlow({
      observation: { depth: metres(0.8), surfaceSpeed: metresPerSecond(0.9) },
      measuredAt: q(10),
      now: q(now),
      method: { by: "published-exponents" },
    });
    if (shifted.kind !== "shifted" || shifted.depth.interval === null)
      throw new Error("expected an interval");
    const { min, max } = shifted.depth.interval;
    if (truth >= min && truth <= max) held++;
  }
  near(held / CASES, 0.9);
});
