/** Identities of sections, energy, jumps, water surfaces and columns, as the cases ask for them. SI. */
import * as core from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

const { cubicMetresPerSecond, metres, metresPerSecond } = core;
const unknown = Number.NaN;

function shapeOf(i: Inputs): core.CrossSection {
  const shape = text(i, "shape");
  if (shape === "circular") return core.circularSection(metres(2));
  if (shape === "parabolic") return core.parabolicSection(metres(4), metres(1));
  if (shape === "triangular") return core.triangularSection(1.5);
  throw new TypeError(`no shape is called ${shape}`);
}

const geometry = (i: Inputs): core.SectionGeometry =>
  core.sectionGeometry(shapeOf(i), metres(number(i, "depth")));

function alternate(i: Inputs): number {
  const flow = {
    section: core.rectangularSection(metres(2)),
    discharge: cubicMetresPerSecond(number(i, "discharge")),
  };
  const found = core.alternateDepths(flow, metres(number(i, "energy")));
  return found.kind === "found" ? (found.depths[number(i, "which")] ?? unknown) : unknown;
}

/** Two flats and a channel, each with its n. */
const compound: core.SurveyedSection = core.surveyedSection({
  points: [
    [0, 3],
    [1, 1],
    [6, 1],
    [7, 0],
    [10, 0],
    [11, 1],
    [16, 1],
    [17, 3],
  ].map(([x, z]) => ({ station: metres(x ?? unknown), elevation: metres(z ?? unknown) })),
  zones: [
    { from: metres(0), manning: 0.06 },
    { from: metres(6), manning: 0.03 },
    { from: metres(11), manning: 0.05 },
  ],
});

function slopeOfMore(i: Inputs): number {
  const channel: core.Channel = {
    section: compound,
    friction: { law: "manning-zones", method: "divided" },
    slope: 0.002,
  };
  const uniform = core.uniformDischarge(channel, metres(1.5));
  const more = cubicMetresPerSecond(number(i, "times") * uniform);
  return core.frictionSlope(channel, metres(1.5), more) / 0.002;
}

function oneStep(i: Inputs): number {
  const average = text(i, "average");
  if (
    average !== "arithmetic" &&
    average !== "geometric" &&
    average !== "harmonic" &&
    average !== "conveyance"
  )
    throw new TypeError(`no average is called ${average}`);
  const flow: core.ReachFlow = {
    section: core.rectangularSection(metres(10)),
    friction: { law: "chezy", c: 40 },
    slope: 0.001,
    discharge: cubicMetresPerSecond(20),
    gravity: 9.81,
  };
  return core.directStep(flow, [metres(2.4), metres(1.2)], average)[1]?.distance ?? unknown;
}

const wide = core.rectangularSection(metres(1e6));

/** Depth at the upper end of a wide channel of a given length, normal depth 1 m, held at a depth at its lower end. */
function wideProfile(i: Inputs): number {
  const slope = 0.001;
  const chezy = 50;
  const profile = core.surfaceProfile({
    section: wide,
    reaches: [{ length: metres(number(i, "length")), slope, friction: { law: "chezy", c: chezy } }],
    discharge: cubicMetresPerSecond(1e6 * chezy * Math.sqrt(slope)),
    gravity: 9.81,
    downstream: { depth: metres(number(i, "depth")) },
  });
  return profile.points[0]?.depth ?? unknown;
}

/** Depth after a jump on a level bed over (y/2)(√(1 + 8 F²) − 1) of the depth before it. */
function jumpOfProfile(): number {
  const [jump] = core.surfaceProfile({
    section: core.rectangularSection(metres(10)),
    reaches: [{ length: metres(100), slope: 0, friction: { law: "chezy", c: 50 } }],
    discharge: cubicMetresPerSecond(50),
    gravity: 9.81,
    upstream: { depth: metres(0.5) },
    downstream: { depth: metres(2.5) },
  }).jumps;
  if (jump === undefined) return unknown;
  const froudeSquared = 5 ** 2 / (9.81 * jump.before ** 3);
  return jump.after / ((jump.before / 2) * (Math.sqrt(1 + 8 * froudeSquared) - 1));
}

const behind = (i: Inputs): core.Slack =>
  core.slackBehind({
    width: metres(1),
    downstream: metres(number(i, "downstream")),
    across: metres(number(i, "across")),
    speed: metresPerSecond(1),
  });

export const identityEvaluations = {
  "alternate depth, m": (i: Inputs): number => alternate(i),
  "growth of the top width with depth": (i: Inputs): number => geometry(i).perDepth.topWidth,
  "growth of the wetted perimeter with depth": (i: Inputs): number => geometry(i).perDepth.wettedPerimeter,
  "growth of the hydraulic depth with depth": (i: Inputs): number => geometry(i).perDepth.hydraulicDepth,
  "slope of a multiple of the uniform discharge over that of the bed": (i: Inputs): number => slopeOfMore(i),
  "depth of a strip, m": (i: Inputs): number =>
    core.stripsAcross(shapeOf(i), metres(number(i, "depth")), 4)[number(i, "strip")]?.depth ?? unknown,
  "direct step of one rectangle, m": (i: Inputs): number => oneStep(i),
  "depth upstream in a wide channel, m": (i: Inputs): number => wideProfile(i),
  "depth after the jump of a profile over its conjugate": (_: Inputs): number => jumpOfProfile(),
  "speed behind a boulder": (i: Inputs): number => behind(i).speed,
  "still behind a boulder, 1 yes": (i: Inputs): number => (behind(i).zone === "still" ? 1 : 0),
  "z0 over depth of a given V/u*": (i: Inputs): number =>
    core.roughnessLengthOf(number(i, "ratio"), metres(2)) / 2,
} as const;
