import type { SourceCases } from "../case.js";

const success: SourceCases = {
  source: "Rosenfeld, J. S.; Taylor, J., Fish. Manag. Ecol. 16:202 (2009)",
  locator: "chance of capture, formula as quoted in public code, value computed from it",
  kind: "analytic",
  seen: "quoted",
  cases: [
    {
      id: "F-04",
      evaluates: "capture success",
      inputs: { fishCentimetres: 20, speed: 0.3, share: 0.5 },
      printed: "0.98166",
    },
  ],
};

const murk: SourceCases = {
  source: "Gregory, R. S.; Northcote, T. G., Can. J. Fish. Aquat. Sci. 50:233 (1993)",
  locator: "multiplier of the reaction distance, as evaluated by Hayes et al. 2016",
  kind: "analytic",
  seen: "quoted",
  cases: [{ id: "F-05", evaluates: "turbidity factor", inputs: { turbidity: 0.47036 }, printed: "1.0000" }],
};

const juveniles: SourceCases = {
  source: "Piccolo, J. J.; Hughes, N. F.; Bryant, M. D., Can. J. Fish. Aquat. Sci. 65:266 (2008)",
  locator:
    "abstract, as quoted in public code: juvenile coho and steelhead, 65 % at 0.29 m/s, 10 % at 0.61 m/s",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "F-06.slow", speed: 0.29, printed: "0.65" },
    { id: "F-06.quick", speed: 0.61, printed: "0.10" },
  ].map(({ id, speed, printed }) => ({
    id,
    evaluates: "capture by juveniles",
    inputs: { speed },
    printed,
    tolerance: { absolute: 1e-9, because: "the curve goes through the printed points" },
  })),
};

export const feedingSources: readonly SourceCases[] = [success, juveniles, murk];
