/** check: findings on a rig that someone has on, rules, wading and heat. */
export * from "./heat.js";
export * from "./wading.js";
export * from "./wading-limits.js";
