import type { SourceCases } from "../case.js";

const aboutHalf = { absolute: 0.1, because: "about half: 0.4 to 0.6" } as const;
const aboutThree = { absolute: 0.05, because: "about three to one; takes are whole numbers" } as const;

const within = { absolute: 0.3, because: "within 0.3 m" } as const;
const nearly = { absolute: 0.1, because: "nearly: nine tenths at least" } as const;
const slant = {
  absolute: 15,
  because: "cos 60° is a half; a line that bends slants less at its chord",
} as const;

/** A change of the rig, what it moves, and which way. */
type Moved = readonly [id: string, from: string, to: string, quantity: string, way: "1" | "-1"];
const moves: readonly Moved[] = [
  ["bead.deeper", "as described", "a larger bead", "depth", "1"],
  ["bead.sooner", "as described", "a larger bead", "time", "-1"],
  ["tungsten.deeper", "brass", "tungsten for brass", "depth", "1"],
  ["tungsten.sooner", "brass", "tungsten for brass", "time", "-1"],
  ["loop.sooner", "as described", "a loop knot", "time", "-1"],
  ["finer.upright.4", "4X nylon", "5X nylon", "lean", "-1"],
  ["finer.upright.3", "3X nylon", "4X nylon", "lean", "-1"],
  ["fluorocarbon.5", "5X nylon", "5X fluorocarbon", "lean", "-1"],
  ["fluorocarbon.4", "4X nylon", "5X fluorocarbon", "lean", "-1"],
  ["fluorocarbon.3", "3X nylon", "5X fluorocarbon", "lean", "-1"],
  ["far-too-big.slant", "a nymph 18", "a nymph 18 under a dry 6", "lean", "1"],
];
const beds = ["cobbles", "boulders"] as const;

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
      id: "practice.pair.12-under-8",
      evaluates: "severity, 0 none to 4 stop",
      inputs: { code: "dry-overloaded", style: "foam", dry: 8, nymph: 12, bead: 3.3 },
      printed: "0",
    },
    ...["hair", "yarn"].map((style) => ({
      id: `practice.floats.${style}`,
      evaluates: "severity, 0 none to 4 stop" as const,
      inputs: { code: "dry-", style, dry: 10, nymph: 16, bead: 2.3 },
      printed: "0",
    })),
    ...beds.flatMap((bed) =>
      moves.map(([id, from, to, quantity, printed]) => ({
        id: `practice.${id}.${bed}`,
        evaluates: "which way it moves, 1 up or -1 down" as const,
        inputs: { from, to, quantity, bed },
        printed,
      })),
    ),
    ...beds.flatMap((bed) => [
      {
        id: `practice.near-the-fish.${bed}`,
        evaluates: "nymph from the fish, m" as const,
        inputs: { holding: 0.3, bed },
        printed: "0.0",
        tolerance: within,
      },
      {
        id: `practice.lane.quicker.${bed}`,
        evaluates: "which way the time down moves in a quicker lane" as const,
        inputs: { share: 0.3, bed },
        printed: "-1",
      },
      {
        id: `practice.lane.slower.${bed}`,
        evaluates: "which way the time down moves in a quicker lane" as const,
        inputs: { share: -0.3, bed },
        printed: "1",
      },
    ]),
    ...beds.flatMap((bed) =>
      ["room", "landing"].map((quantity) => ({
        id: `practice.shorter.${quantity}.${bed}`,
        evaluates: "which way the shorter of two rigs of one depth moves" as const,
        inputs: { quantity, bed },
        printed: "-1",
      })),
    ),
    {
      id: "practice.plumb.length",
      evaluates: "depth fished over the dropper",
      inputs: { bed: "cobbles" },
      printed: "1.0",
      tolerance: nearly,
    },
    {
      id: "practice.towed.twice",
      evaluates: "lean where half the dropper is fished, degrees",
      inputs: { dropper: 0.46, bed: "boulders" },
      printed: "60",
      tolerance: slant,
    },
    {
      id: "practice.hold.half.boulders",
      evaluates: "drift held in step over the surface speed",
      inputs: { bed: "boulders" },
      printed: "0.5",
      tolerance: aboutHalf,
      disagrees: "0.69: a held nymph no longer hangs plumb and rises into quicker water (docs/practice.md)",
    },
    {
      id: "practice.splash.glassy",
      evaluates: "severity of a splash, 0 none to 4 stop",
      inputs: { bead: 2.8, surface: "glassy" },
      printed: "2",
    },
    {
      id: "practice.splash.broken",
      evaluates: "severity of a splash, 0 none to 4 stop",
      inputs: { bead: 2.8, surface: "broken" },
      printed: "0",
    },
    {
      id: "practice.up-and-across",
      evaluates: "severity of a cast, 0 none to 4 stop",
      inputs: { code: "nymph-in-slower-lane", downstream: -0.15, across: 0.1, gradient: 0.1, held: 0 },
      printed: "0",
    },
    {
      id: "practice.slower-lane",
      evaluates: "severity of a cast, 0 none to 4 stop",
      inputs: { code: "nymph-in-slower-lane", downstream: -0.15, across: 0.1, gradient: -0.1, held: 0 },
      printed: "2",
    },
    {
      id: "practice.down-and-across.slack",
      evaluates: "severity of a cast, 0 none to 4 stop",
      inputs: { code: "nymph-lands-below", downstream: 0.15, across: 0.1, gradient: 0.1, held: 0 },
      printed: "2",
    },
    {
      id: "practice.down-and-across.held",
      evaluates: "severity of a cast, 0 none to 4 stop",
      inputs: { code: "nymph-lands-below", downstream: 0.15, across: 0.1, gradient: 0.1, held: 0.0005 },
      printed: "0",
    },
    {
      id: "practice.two-flies",
      evaluates: "rules that allow so many flies, none stated",
      inputs: { flies: 2 },
      printed: "0",
    },
  ],
};
