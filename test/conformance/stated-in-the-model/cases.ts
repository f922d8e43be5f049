import type { SourceCases } from "../case.js";

const tight = { relative: 1e-6, because: "a stated number, not a rounded one" };

export const statedInTheModel: SourceCases = {
  source: "The model's own defaults and assumptions",
  locator: "model sections 2 to 7",
  kind: "practice",
  seen: "derived",
  cases: [
    { id: "stated.exponent", evaluates: "exponent by default", inputs: {}, printed: "6", tolerance: tight },
    {
      id: "stated.wake",
      evaluates: "wake strength by default",
      inputs: {},
      printed: "0.2",
      tolerance: tight,
    },
    {
      id: "stated.temperature",
      evaluates: "water temperature by default, °C",
      inputs: {},
      printed: "12",
      tolerance: tight,
    },
    { id: "stated.ks", evaluates: "30 z0 over ks, rough bed", inputs: {}, printed: "1", tolerance: tight },
    {
      id: "stated.D84",
      evaluates: "ks over D84",
      inputs: {},
      printed: "3.5",
      tolerance: { relative: 1e-3, because: "the viscous layer adds a trace to z0" },
    },
    {
      id: "stated.smooth",
      evaluates: "z0 u*/ν, smooth bed",
      inputs: {},
      printed: "0.1111111111",
      tolerance: tight,
    },
    {
      id: "stated.shear",
      evaluates: "shear velocity over mean speed, unknown",
      inputs: {},
      printed: "0.1",
      tolerance: tight,
    },
    {
      id: "stated.friction",
      evaluates: "friction over reaction on the bed",
      inputs: {},
      printed: "0.5",
      tolerance: tight,
    },
    {
      id: "stated.float-drag",
      evaluates: "drag coefficient of a float by default",
      inputs: {},
      printed: "1.1",
      tolerance: tight,
    },
    {
      id: "stated.windage",
      evaluates: "windage on a dry float, N",
      inputs: { wind: 5 },
      // ½ 1.225 × 1.1 × 0.04 × (2/π) × 0.02 × 5²
      printed: "0.008578451",
    },
    {
      id: "stated.settled",
      evaluates: "distance left when settled, over the settled depth",
      inputs: {},
      printed: "0.05",
      tolerance: { relative: 1e-3, because: "the path is kept at instants, and straight between them" },
    },
    {
      id: "stated.holding",
      evaluates: "holding height over depth, shallow",
      inputs: { depth: 0.6 },
      printed: "0.3333333333",
    },
    {
      id: "f from V/u*",
      evaluates: "f (V/u*)² of an estimate",
      inputs: { d84: 0.1 },
      printed: "8",
      tolerance: tight,
      kind: "analytic",
      locator: "definition of Darcy and Weisbach's f",
    },
    {
      id: "middle of a strip",
      evaluates: "middle of the first strip over its width",
      inputs: {},
      printed: "0.5",
      tolerance: tight,
      kind: "analytic",
      locator: "geometry",
    },
  ],
};
