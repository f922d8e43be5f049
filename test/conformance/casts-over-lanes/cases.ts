import type { SourceCases } from "../case.js";

const across = { distance: 10, upstream: 0, slack: 0.5 };
const up = { distance: 8, upstream: 90, slack: 0 };
const down = { distance: 8, upstream: -90, slack: 0 };
const upAndAcross = { distance: 10, upstream: 30, slack: 0 };

/** Of a subtraction of two numbers near 1. */
const rounding = { absolute: 1e-12, because: "nought, to the rounding of the terms that cancel" } as const;

export const castsOverLanes: SourceCases = {
  source: "Plane geometry and the mean of a straight line",
  locator: "a straight cast over lanes whose speed grows evenly",
  kind: "analytic",
  seen: "derived",
  cases: [
    {
      id: "cast.across.nymph",
      evaluates: "landing of the nymph across, m",
      inputs: across,
      printed: "0.30000000",
    },
    { id: "cast.across.gradient", evaluates: "lane gradient, 1/s", inputs: across, printed: "0.10000000" },
    {
      id: "cast.across.difference",
      evaluates: "lane difference, m/s",
      inputs: across,
      printed: "-0.50000000",
    },
    { id: "cast.across.gain", evaluates: "gain of the nymph, m/s", inputs: across, printed: "0.03000000" },
    { id: "cast.across.drag-free", evaluates: "time without drag, s", inputs: across, printed: "1.00000000" },
    { id: "cast.across.reach", evaluates: "reach of the drift, m", inputs: across, printed: "3.20156212" },
    { id: "cast.up.reach", evaluates: "reach of the drift, m", inputs: up, printed: "16.00000000" },
    {
      id: "cast.down.reach",
      evaluates: "reach of the drift, m",
      inputs: down,
      printed: "0",
      tolerance: rounding,
    },
    {
      id: "cast.up-and-across.dry",
      evaluates: "landing of the dry downstream, m",
      inputs: upAndAcross,
      printed: "-5.00000000",
    },
    {
      id: "cast.up-and-across.reach",
      evaluates: "reach of the drift, m",
      inputs: upAndAcross,
      printed: "10.00000000",
    },
  ],
};
