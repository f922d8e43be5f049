/** Channels that cannot be read or cannot be. */

import type { Body } from "../api.js";
import { measured } from "./measured.js";
import { type Hostile, row } from "./row.js";

const m = (value: number) => ({ value, unit: "m" });
const point = (station: number, elevation: number) => ({ station: m(station), elevation: m(elevation) });
const surveyed = (...points: Body[]) => ({ shape: "surveyed", points });

const ofSections: readonly Hostile[] = [
  row(
    "a misspelt shape",
    (b) => (b.section = { shape: "rectangle" }),
    400,
    "/section/shape",
    "one of rectangular",
  ),
  row("no shape", (b) => (b.section = {}), 400, "/section/shape", "one of rectangular"),
  row(
    "a pipe with a width",
    (b) => (b.section = { shape: "circular", diameter: m(1), width: m(1) }),
    400,
    "/section/width",
    "a known key: shape, diameter",
  ),
  row(
    "a width of nothing",
    (b) => (b.section = { shape: "rectangular", width: m(0) }),
    400,
    "/section/width",
    "from 0.001 to 10000 m",
  ),
  row(
    "more points than a survey may have",
    (b) => (b.section = surveyed(...Array.from({ length: 301 }, (_, i) => point(i, Math.abs(i - 150))))),
    400,
    "/section/points",
    "at most 300 items",
  ),
  row(
    "stations that go back",
    (b) => (b.section = surveyed(point(0, 2), point(4, 0), point(3, 1), point(6, 2))),
    422,
    "/section/points/2/station",
    "at least 4 m, that of the point before",
  ),
  row(
    "a survey without banks",
    (b) => (b.section = surveyed(point(0, 0), point(4, 1))),
    422,
    "/section/points/0/elevation",
    "above 0 m, the lowest",
  ),
];

const ofChannels: readonly Hostile[] = [
  row("a misspelt law", (b) => (b.friction = { law: "maning", n: 0.03 }), 400, "/friction/law", "manning"),
  row("a slope of a cliff", (b) => (b.slope = 2), 400, "/slope", "at most 0.5"),
  row("a slope with a unit", (b) => (b.slope = { value: 1, unit: "m" }), 400, "/slope", "a number"),
  row(
    "zones where there are none",
    (b) => {
      b.section = { shape: "rectangular", width: m(3) };
      b.friction = { law: "manning-zones", method: "divided" };
    },
    422,
    "/section",
    "surveyed, with zones of roughness",
  ),
];

const ofDischarges: readonly Hostile[] = [
  row(
    "a discharge in gallons",
    (b) => (b.discharge = { value: 3, unit: "gal" }),
    400,
    "/discharge/unit",
    "m3/s, L/s, ft3/s",
  ),
  row(
    "a discharge by its everyday name",
    (b) => (b.discharge = { value: 3, unit: "cfs" }),
    400,
    "/discharge/unit",
    "m3/s, L/s, ft3/s",
    'did you mean "ft3/s"?',
  ),
  row(
    "a discharge of nothing",
    (b) => (b.discharge = { value: 0, unit: "m3/s" }),
    400,
    "/discharge",
    "from 0.000001 to 1000000 m3/s",
  ),
];

const own: Readonly<Record<string, readonly Hostile[]>> = {
  carryFlow: [
    ...ofSections,
    ...ofChannels,
    row(
      "deeper than the pipe",
      (b) => {
        b.section = { shape: "circular", diameter: m(1) };
        b.depth = m(1.5);
      },
      422,
      "/depth",
      "at most 1 m, the diameter",
    ),
    row("uniform flow on a level bed", (b) => (b.slope = 0), 422, "/slope", "above 0"),
    row(
      "a bed rougher than the water is deep",
      (b) => {
        b.friction = { law: "rough", roughness: m(10) };
        b.depth = m(0.01);
      },
      422,
      "/friction",
      "above 0 m/s",
    ),
  ],
  findDepth: [...ofSections, ...ofChannels, ...ofDischarges],
  spreadFlow: [...ofSections, ...ofChannels, ...ofDischarges],
  readEnergy: [...ofSections, ...ofDischarges],
  jumpFlow: [
    ...ofSections,
    ...ofDischarges,
    row(
      "water above the survey",
      (b) => {
        b.section = surveyed(point(0, 1), point(2, 0), point(4, 1));
        b.before = m(1.5);
      },
      422,
      "/before",
      "the lower end of the survey",
    ),
  ],
  traceSurface: [
    ...ofSections,
    ...ofDischarges,
    row("no reach", (b) => (b.reaches = []), 400, "/reaches", "at least 1 items"),
    row(
      "too many reaches",
      (b) => (b.reaches = Array(21).fill(b.reaches[0])),
      400,
      "/reaches",
      "at most 20 items",
    ),
    row(
      "more points than one call may ask for",
      (b) => {
        b.reaches = Array(20).fill(b.reaches[0]);
        b.pointsPerReach = 130;
      },
      422,
      "/pointsPerReach",
      "at most 1000000 units of work",
    ),
    row(
      "a misspelt control",
      (b) => (b.upstream = { at: "normel" }),
      400,
      "/upstream/at",
      "one of depth",
      'did you mean "normal"?',
    ),
    row(
      "a gate above critical depth",
      (b) => (b.upstream.depth = m(1)),
      422,
      "/upstream",
      "at most critical",
    ),
    row(
      "a weir below critical depth",
      (b) => (b.downstream.depth = m(0.5)),
      422,
      "/downstream",
      "at least critical",
    ),
    row(
      "no control at all",
      (b) => delete b.upstream && delete b.downstream,
      422,
      "/upstream",
      "nothing holds the water",
    ),
    row(
      "uniform water on a level bed",
      (b) => {
        b.reaches[0].slope = 0;
        b.downstream = { at: "normal" };
      },
      422,
      "/downstream",
      "there is no normal depth",
    ),
  ],
};

export function inChannel(id: string): readonly Hostile[] {
  const rows = own[id] ?? measured[id];
  if (rows === undefined) throw new Error(`no hostile input for ${id}`);
  return rows;
}
