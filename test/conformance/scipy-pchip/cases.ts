import type { SourceCases } from "../case.js";
import vectors from "./vectors.json" with { type: "json" };

export const scipyPchip: SourceCases = {
  source: "scipy.interpolate.PchipInterpolator, scipy 1.10.1",
  locator: "scipy-pchip/vectors.py",
  kind: "independent",
  seen: "derived",
  cases: vectors.flatMap(({ x, y, at, integral }, curve) => [
    ...at.map((point, n) => ({
      id: `pchip.${curve}.${n}`,
      evaluates: "monotone cubic at x" as const,
      inputs: { x, y, at: point.x },
      printed: point.value,
    })),
    {
      id: `pchip.${curve}.integral`,
      evaluates: "monotone cubic, integral" as const,
      inputs: { x, y },
      printed: integral,
    },
  ]),
};
