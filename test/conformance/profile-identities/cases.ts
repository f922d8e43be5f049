import type { SourceCases } from "../case.js";

export const profileIdentities: SourceCases = {
  source: "Exact identities of the log and power laws",
  locator: "closed forms",
  kind: "analytic",
  seen: "derived",
  cases: [
    {
      id: "V-15",
      evaluates: "depth of the mean over depth",
      inputs: { depthOverZ0: 1e9 },
      printed: "0.632",
      seen: "read",
      locator: "expertsmind.com, velocity distribution and flow formulae",
    },
    {
      id: "V-30.two-point",
      evaluates: "two-point mean less six-tenths speed",
      inputs: { depthOverZ0: 1e9 },
      printed: "0.000000000",
    },
    {
      id: "V-30.excess",
      evaluates: "excess of the six-tenths speed over the mean, u*/κ",
      inputs: { depthOverZ0: 1e9 },
      printed: "0.0837",
    },
    // (ln(h/z0) − 1)/κ with κ = 0.41
    {
      id: "log-law.resistance",
      evaluates: "log law, mean over u*",
      inputs: { depthOverZ0: 1e9 },
      printed: "48.10553",
    },
    { id: "V-32.5", evaluates: "mean over surface", inputs: { exponent: 5 }, printed: "0.8333" },
    { id: "V-32.6", evaluates: "mean over surface", inputs: { exponent: 6 }, printed: "0.8571" },
    { id: "V-32.7", evaluates: "mean over surface", inputs: { exponent: 7 }, printed: "0.8750" },
    { id: "V-32.10", evaluates: "mean over surface", inputs: { exponent: 10 }, printed: "0.9091" },
    {
      id: "V-32.height6",
      evaluates: "height of the mean over depth",
      inputs: { exponent: 6 },
      printed: "0.3966",
    },
    {
      id: "V-32.height7",
      evaluates: "height of the mean over depth",
      inputs: { exponent: 7 },
      printed: "0.3927",
    },
    {
      id: "V-33.6at0.2",
      evaluates: "speed over mean at a fraction of the depth",
      inputs: { exponent: 6, fraction: 0.2 },
      printed: "1.1241",
    },
    {
      id: "V-33.6at0.6",
      evaluates: "speed over mean at a fraction of the depth",
      inputs: { exponent: 6, fraction: 0.6 },
      printed: "1.0014",
    },
    {
      id: "V-33.6at0.8",
      evaluates: "speed over mean at a fraction of the depth",
      inputs: { exponent: 6, fraction: 0.8 },
      printed: "0.8922",
    },
    {
      id: "V-33.7at0.2",
      evaluates: "speed over mean at a fraction of the depth",
      inputs: { exponent: 7, fraction: 0.2 },
      printed: "1.1070",
    },
    {
      id: "V-33.7at0.6",
      evaluates: "speed over mean at a fraction of the depth",
      inputs: { exponent: 7, fraction: 0.6 },
      printed: "1.0026",
    },
    {
      id: "V-33.7at0.8",
      evaluates: "speed over mean at a fraction of the depth",
      inputs: { exponent: 7, fraction: 0.8 },
      printed: "0.9081",
    },
  ],
};
