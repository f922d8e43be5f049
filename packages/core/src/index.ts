/** @plumbdrift/core: open-channel hydraulics and the force balance of a nymph hung below a dry fly. Pure, no dependencies. */
export * from "./channel/index.js";
export * from "./check/index.js";
export * from "./column/index.js";
export * from "./drift/index.js";
export * from "./forces/index.js";
export * from "./lie/index.js";
export * from "./numerics/index.js";
export * from "./outing/index.js";
export * from "./rig/index.js";
export * from "./setup/index.js";
export * from "./sources/index.js";
export * from "./tackle/index.js";
export * from "./units/index.js";
export * from "./water/index.js";
