/** channel: how a river carries its flow. */
export {
  compositeRoughness,
  type VelocityCoefficients,
  velocityCoefficients,
} from "./composite.js";
export {
  type CriticalDepth,
  type CriticalSlope,
  criticalDepth,
  criticalSlope,
  type Flow,
  type FlowClass,
  flowClass,
  froudeNumber,
} from "./critical.js";
export type { DepthsFor } from "./every-root.js";
export { type CompositeMethod, type Friction, type ManningUnits, manningFactor } from "./friction.js";
export {
  type CrossSection,
  circularSection,
  type PrismaticSection,
  parabolicSection,
  rectangularSection,
  type SectionGeometry,
  sectionGeometry,
  trapezoidalSection,
  triangularSection,
} from "./section.js";
export {
  type IneffectiveEnd,
  type RoughnessZone,
  type Survey,
  type SurveyedSection,
  type SurveyPoint,
  surveyedSection,
} from "./survey.js";
export * from "./uniform.js";
