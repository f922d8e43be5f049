/** Random rigs at random stops, faulty more often than not, and rules that fit them or not. Invented. */

import fc from "fast-check";
import { waterColumn } from "../column/index.js";
import type { Pieces } from "../setup/index.js";
import {
  beadMillimetres,
  greatestBead,
  hookSizes,
  type Nymph,
  nymphName,
  tippetDiameter,
} from "../tackle/index.js";
import {
  celsius,
  kilograms,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
  perSecond,
} from "../units/index.js";
import type { CheckStop } from "./index.js";
import type { Rules } from "./rules.js";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const nymph: fc.Arbitrary<Nymph> = fc
  .record({
    size: fc.constantFrom(...hookSizes),
    mm: fc.option(fc.constantFrom(...beadMillimetres)),
    material: fc.constantFrom("tungsten", "brass", "glass"),
    knot: fc.constantFrom("loop", "tight"),
    lead: fc.boolean(),
  })
  .map(({ size, mm, material, knot, lead }) => {
    const fits = mm !== null && millimetres(mm) <= greatestBead(size);
    const bead = fits ? { bead: { diameter: millimetres(mm), material } } : {};
    const wire = { diameter: millimetres(0.3), turns: 8, material: "lead" } as const;
    return { size, ...bead, knot, name: nymphName({ size, ...bead }), ...(lead ? { underbody: wire } : {}) };
  });

export const anyPieces: fc.Arbitrary<Pieces> = fc
  .record({
    size: fc.constantFrom(...hookSizes),
    style: fc.constantFrom("foam", "yarn", "hair", "hackle", "low-profile"),
    nymph,
    material: fc.constantFrom("nylon", "fluorocarbon"),
    x: fc.integer({ min: 0, max: 8 }),
    dropper: fc.integer({ min: 15, max: 150 }),
  })
  .map(({ size, style, nymph, material, x, dropper }) => ({
    dry: { name: `${style} dry ${size}`, size, style },
    nymph,
    tippet: { material, diameter: tippetDiameter(x) },
    dropper: metres(dropper / 100),
  }));

export const anyStop: fc.Arbitrary<CheckStop> = fc
  .record({
    depth: between(0.3, 2),
    speed: between(0.1, 1.5),
    bed: fc.constantFrom("sand", "pebble", "cobble", "boulder"),
    temperature: between(4, 22),
    surface: fc.constantFrom("glassy", "rippled", "broken"),
    run: between(2, 12),
    leader: between(8, 40),
    across: fc.integer({ min: -10, max: 10 }),
    gradient: fc.integer({ min: -4, max: 4 }),
    slack: between(0, 2),
    lane: between(-0.4, 0.4),
  })
  .map((given) => ({
    column: waterColumn({
      depth: metres(given.depth),
      surfaceSpeed: metresPerSecond(given.speed),
      bed: given.bed,
      temperature: celsius(given.temperature),
    }),
    surface: given.surface,
    runLength: metres(given.run),
    lie: { holdingHeight: metres(given.depth / 4) },
    leader: { breakingForce: newtons(given.leader) },
    cast: {
      sinkerDownstream: metres(given.across / 100),
      sinkerAcross: metres(given.across / 100),
      laneGradient: perSecond(given.gradient / 10),
    },
    slack: metres(0.05 + given.slack),
    laneDifference: metresPerSecond(given.lane),
  }));

/** Rules of an invented water that a rig may break: at most so much weight, and lead or not. */
export const anyRules: fc.Arbitrary<Rules> = fc
  .record({
    most: fc.constantFrom(0, 1e-4, 3e-4, 1e-2),
    lead: fc.boolean(),
    flies: fc.constantFrom(1, 2),
    barbless: fc.boolean(),
  })
  .map(({ most, lead, flies, barbless }) => ({
    version: 1,
    place: "Larkspur Bend, invented",
    statedBy: "the demo",
    clauses: [
      { topic: "added-weight", id: "w", most: kilograms(most) },
      { topic: "lead", id: "l", allowed: lead },
      { topic: "flies", id: "f", most: flies },
      { topic: "barbless", id: "b", required: barbless },
    ],
  }));
