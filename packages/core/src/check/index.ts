/** check: findings on a rig that someone has on, rules, wading and heat. */
export * from "./check.js";
export * from "./finding.js";
export * from "./flood-classes.js";
export * from "./heat.js";
export * from "./messages.js";
export { mostTrialDrifts, mostTrialRigs } from "./remedy.js";
export * from "./rules.js";
export type { WadingThere } from "./there.js";
export * from "./wading.js";
export * from "./wading-limits.js";
