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
export * from "./direct-step.js";
export * from "./discharge.js";
export * from "./discharge-uncertainty.js";
export * from "./energy.js";
export type { DepthsFor } from "./every-root.js";
export { type CompositeMethod, type Friction, type ManningUnits, manningFactor } from "./friction.js";
export type { Control, ReachFlow } from "./gradual.js";
export * from "./hydraulic-geometry.js";
export * from "./jump.js";
export * from "./lateral.js";
export * from "./point-methods.js";
export { type CurveName, type ProfileClass, profileClass, type SlopeClass } from "./profile-class.js";
export * from "./rating.js";
export * from "./resistance.js";
export * from "./resistance-chow.js";
export * from "./resistance-cowan.js";
export * from "./resistance-forms.js";
export * from "./resistance-laws.js";
export { type Bed, type ResistanceLaw, type ResistanceLimit, resistanceLaws } from "./resistance-range.js";
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
export type { Jump } from "./surface-jump.js";
export type { SurfacePoint } from "./surface-points.js";
export { type Reach, type River, type SurfaceProfile, surfaceProfile } from "./surface-profile.js";
export {
  type IneffectiveEnd,
  type RoughnessZone,
  type Survey,
  type SurveyedSection,
  type SurveyPoint,
  surveyedSection,
} from "./survey.js";
export * from "./uniform.js";
export { type Strip, stripsAcross } from "./verticals.js";
