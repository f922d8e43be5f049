import type { SourceCases } from "../case.js";

const aboutHalf = { absolute: 0.1, because: "about half: 0.4 to 0.6" } as const;
const aboutThree = { absolute: 0.05, because: "about three to one; takes are whole numbers" } as const;

export const commonPractice: SourceCases = {
  source: "Common practice, no source",
  locator: "-",
  kind: "practice",
  seen: "derived",
  cases: [
    {
      id: "practice.lower-half.256mm",
      evaluates: "lower half over surface, D84",
      inputs: { depth: 0.9, d84: 0.256 },
      printed: "0.5",
      tolerance: aboutHalf,
    },
    {
      id: "practice.lower-half.boulder",
      evaluates: "lower half over surface, bed",
      inputs: { depth: 0.9, bed: "boulder" },
      printed: "0.5",
      tolerance: aboutHalf,
      disagrees: "the mixing layer gives 0.35 over stones of 362 mm, the geometric middle of boulder",
    },
    {
      id: "practice.takes.rule",
      evaluates: "ratio at which the bare rule cuts",
      inputs: { nymph: 100 },
      printed: "3",
      tolerance: aboutThree,
    },
    {
      id: "practice.takes.many",
      evaluates: "ratio at which cutting is as likely right as wrong",
      inputs: { nymph: 100 },
      printed: "3",
      tolerance: aboutThree,
    },
    {
      id: "practice.pair.16-under-12",
      evaluates: "severity, 0 none to 4 stop",
      inputs: { code: "dry-", style: "foam", dry: 12, nymph: 16, bead: 2.3 },
      printed: "0",
    },
    {
      id: "practice.pair.16-under-10",
      evaluates: "severity, 0 none to 4 stop",
      inputs: { code: "dry-", style: "foam", dry: 10, nymph: 16, bead: 2.3 },
      printed: "0",
    },
    {
      id: "practice.pair.12-under-12",
      evaluates: "severity, 0 none to 4 stop",
      inputs: { code: "dry-overloaded", style: "foam", dry: 12, nymph: 12, bead: 3.3 },
      printed: "3",
    },
    {
      id: "practice.low-profile",
      evaluates: "severity, 0 none to 4 stop",
      inputs: { code: "dry-floats-by-film", style: "low-profile", dry: 12, nymph: 16, bead: 2.3 },
      printed: "3",
    },
    {
      id: "practice.two-flies",
      evaluates: "rules that allow so many flies, none stated",
      inputs: { flies: 2 },
      printed: "0",
    },
  ],
};
