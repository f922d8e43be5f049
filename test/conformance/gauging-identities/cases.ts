import type { CaseRow, SourceCases } from "../case.js";

const whole = ["calibration", "verticals"];
const panel = ["width", "depth", "points"];
const point = ["meter", "exposure"];
const exact = { relative: 1e-9, because: "a closed form" };

const component = (components: string, printed: number): CaseRow => ({
  id: `uncertainty, ${components}`,
  evaluates: "relative uncertainty of a discharge",
  inputs: { components },
  printed: String(printed),
  tolerance: exact,
});

const discharges = [1, 2, 8];
const widths = [5, 7, 8];

/** t s √(1 + 1/3 + (x − x̄)²/Sxx) of a straight line through three logarithms, t of one degree of freedom at 0.975. */
function interval(discharge: number): number {
  const x = discharges.map(Math.log);
  const y = widths.map(Math.log);
  const mean = (v: readonly number[]) => v.reduce((a, b) => a + b, 0) / 3;
  const [mx, my] = [mean(x), mean(y)];
  const sxx = x.reduce((sum, v) => sum + (v - mx) * (v - mx), 0);
  const slope = x.reduce((sum, v, k) => sum + (v - mx) * ((y[k] ?? Number.NaN) - my), 0) / sxx;
  const rest = x.reduce((sum, v, k) => sum + ((y[k] ?? Number.NaN) - my - slope * (v - mx)) ** 2, 0);
  const off = Math.log(discharge) - mx;
  return Math.tan(0.475 * Math.PI) * Math.sqrt(rest * (4 / 3 + (off * off) / sxx));
}

export const gaugingIdentities: SourceCases = {
  source: "Identities of gaugings",
  locator: "README.md",
  kind: "analytic",
  seen: "derived",
  cases: [
    ...whole.map((name) => component(name, 0.03)),
    ...panel.map((name) => component(name, (0.03 * 5) / 7)),
    ...point.map((name) => component(name, (0.03 * 5) / 14)),
    component("calibration verticals", 0.03 * Math.SQRT2),
    {
      id: "uncertainty, expanded",
      evaluates: "expanded uncertainty of a discharge, m³/s",
      inputs: { components: "calibration" },
      printed: "0.42",
      tolerance: exact,
    },
    {
      id: "uncertainty, share",
      evaluates: "share of the calibration in the variance",
      inputs: { components: "calibration verticals" },
      printed: "0.5",
      tolerance: exact,
    },
    ...[1, 4, 6.5].map(
      (station, pair): CaseRow => ({
        id: `mean-section, station ${pair}`,
        evaluates: "station of a pair of verticals, m",
        inputs: { pair },
        printed: String(station),
        tolerance: exact,
      }),
    ),
    ...[0.3, 6.4, 0.75].map(
      (discharge, pair): CaseRow => ({
        id: `mean-section, discharge ${pair}`,
        evaluates: "discharge of a pair of verticals, m³/s",
        inputs: { pair },
        printed: String(discharge),
        tolerance: exact,
      }),
    ),
    {
      id: "floats, mean",
      evaluates: "speed of timed floats, m/s",
      inputs: { speeds: [1, 2, 3] },
      printed: "2.0000000",
    },
    {
      id: "floats, uncertainty",
      evaluates: "standard uncertainty of timed floats, m/s",
      inputs: { speeds: [1, 2, 3] },
      printed: "0.5773503",
    },
    ...[2, 30].map(
      (discharge): CaseRow => ({
        id: `interval of a width at ${discharge} m³/s`,
        evaluates: "logarithm of the interval of a width",
        inputs: { discharges, widths, discharge },
        printed: String(interval(discharge)),
        tolerance: exact,
      }),
    ),
  ],
};
