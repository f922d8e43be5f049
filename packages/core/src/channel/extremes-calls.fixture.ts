/** A call of every exported function of the room with drawn sizes; one without an entry does not compile. */
import { kilogramsPerCubicMetre } from "../units/index.js";
import {
  bed,
  control,
  type Draw,
  day,
  flow,
  friction,
  gaugings,
  geometry,
  m,
  q,
  reach,
  section,
  stream,
  survey,
  v,
  verticals,
  zero,
} from "./extremes.fixture.js";
import * as channel from "./index.js";

/** One call of each function; those that take words of a table have no size to be extreme in. */
export const calls: Readonly<Record<Exclude<keyof typeof channel, Tables>, (d: Draw) => unknown>> = {
  alternateDepths: (d) => channel.alternateDepths(flow(d), m(d)),
  bathurstRatio: (d) => channel.bathurstRatio(d.number()),
  bedShear: (d) => channel.bedShear(stream(d), m(d), kilogramsPerCubicMetre(d.number())),
  brayRatio: (d) => channel.brayRatio(d.number()),
  circularSection: (d) => channel.circularSection(m(d)),
  compositeRoughness: (d) =>
    channel.compositeRoughness(section(d), m(d), d.of("divided", "felkel", "pavlovskii")),
  conjugateDepths: (d) => channel.conjugateDepths(flow(d), m(d)),
  conveyance: (d) => channel.conveyance(stream(d), m(d)),
  criticalDepth: (d) => channel.criticalDepth(flow(d)),
  criticalSlope: (d) => channel.criticalSlope(flow(d), friction(d)),
  directStep: (d) =>
    channel.directStep(
      reach(d),
      d.list(() => m(d)),
      d.of("arithmetic", "geometric", "harmonic", "conveyance"),
    ),
  dischargeUncertainty: (d) =>
    channel.dischargeUncertainty(channel.meanSection(verticals(d)), {
      calibration: d.of(0.01, 0, d.number()),
      verticals: d.of(0.01, 0, d.number()),
      width: 0.01,
      depth: d.of(0.01, 0, d.number()),
      points: 0.05,
      meter: 0,
      exposure: d.of(0.01, 0, d.number()),
      pointsPerVertical: d.of(1, 2, d.number()),
    }),
  fergusonRatio: (d) => channel.fergusonRatio(d.number(), d.of(6.5, d.number()), d.of(2.5, d.number())),
  fitGeometry: (d) => channel.fitGeometry(d.list(() => day(d))),
  flowClass: (d) => channel.flowClass(d.number(), d.of(0.001, d.number())),
  frictionSlope: (d) => channel.frictionSlope(stream(d), m(d), q(d)),
  froudeNumber: (d) => channel.froudeNumber(flow(d), m(d)),
  geometryOf: (d) => channel.geometryOf(day(d), d.of("at a station", "downstream")),
  griffithsRatio: (d) => channel.griffithsRatio(d.number()),
  heyRatio: (d) => channel.heyRatio(d.number(), d.of(11.75, d.number())),
  hydraulicJump: (d) => channel.hydraulicJump(flow(d), m(d), kilogramsPerCubicMetre(d.number())),
  jarrettRoughness: (d) => channel.jarrettRoughness(d.number(), d.number()),
  keuleganRatio: (d) => channel.keuleganRatio(d.number()),
  lateralFlow: (d) => channel.lateralFlow(stream(d), q(d), d.of(5, 5, d.number())),
  leopoldWolmanRatio: (d) => channel.leopoldWolmanRatio(d.number()),
  limerinosRatio: (d) => channel.limerinosRatio(d.number()),
  manningOf: (d) => channel.manningOf(d.number(), m(d)),
  maynordRoughness: (d) => channel.maynordRoughness(d.number()),
  meanSection: (d) => channel.meanSection(verticals(d)),
  midSection: (d) => channel.midSection(verticals(d), d.of("triangle", "half-spacing")),
  minimumEnergy: (d) => channel.minimumEnergy(flow(d)),
  normalDepth: (d) => channel.normalDepth(stream(d), q(d)),
  parabolicSection: (d) => channel.parabolicSection(m(d), m(d)),
  profileClass: (d) => channel.profileClass(reach(d), m(d)),
  rateStage: (d) => channel.rateStage(gaugings(d), zero(d)),
  ratedDischarge: (d) =>
    channel.ratedDischarge(channel.rateStage(gaugings(d), zero(d)), m(d), d.of(0.95, d.number())),
  rectangularSection: (d) => channel.rectangularSection(m(d)),
  resistanceOf: (d) => channel.resistanceOf(bed(d)),
  rickenmannReckingRatio: (d) => channel.rickenmannReckingRatio(d.number()),
  rickenmannReckingSpeed: (d) => channel.rickenmannReckingSpeed(d.number()),
  sectionGeometry: (d) => channel.sectionGeometry(section(d), m(d)),
  shearVelocityOf: (d) => channel.shearVelocityOf(m(d), d.number()),
  specificEnergy: (d) => channel.specificEnergy(flow(d), m(d)),
  specificForce: (d) => channel.specificForce(flow(d), m(d)),
  streamAt: (d) => channel.streamAt(geometry(d), q(d), d.of(0.95, d.number())),
  stricklerRoughness: (d) => channel.stricklerRoughness(d.number()),
  stripsAcross: (d) => channel.stripsAcross(section(d), m(d), d.of(5, 5, d.number())),
  surfaceProfile: (d) => {
    const { section: shape, discharge } = flow(d);
    const [upstream, downstream] = [control(d), control(d)];
    const one = () => ({ length: m(d), slope: d.of(0, 0.01, d.number()), friction: friction(d) });
    return channel.surfaceProfile({
      section: shape,
      discharge,
      reaches: d.of([one()], [one(), one()], []),
      ...d.of({ upstream }, { downstream }, { upstream, downstream }, {}),
      pointsPerReach: d.of(5, 5, d.number()),
    });
  },
  surveyedSection: (d) => channel.surveyedSection(survey(d)),
  trapezoidalSection: (d) => channel.trapezoidalSection(m(d), d.number(), d.number()),
  triangularSection: (d) => channel.triangularSection(d.number(), d.number()),
  uniformDischarge: (d) => channel.uniformDischarge(stream(d), m(d)),
  uniformVelocity: (d) => channel.uniformVelocity(stream(d), m(d)),
  velocityCoefficients: (d) => channel.velocityCoefficients(section(d), m(d)),
  velocityRatioOf: (d) => channel.velocityRatioOf(d.number(), m(d)),
  verticalMean: (d) => channel.verticalMean({ method: "surface", atSurface: v(d), coefficient: d.number() }),
};
type Tables =
  | "chowRoughness"
  | "chowTable"
  | "cowanRoughness"
  | "cowanTable"
  | "geometryExponents"
  | "manningFactor"
  | "resistanceLaws";
