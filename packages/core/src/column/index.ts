/** column: how fast the water runs at each height over one spot. */
export * from "./across.js";
export * from "./bed.js";
export * from "./column.js";
export type { Observation, TimedFloat } from "./observation.js";
export * from "./profile.js";
export * from "./slack.js";
export * from "./turbulence.js";
