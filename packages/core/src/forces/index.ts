/** forces: what a stream does to a sphere, a cylinder, a line, a float. */
export * from "./cylinder-drag.js";
export * from "./drag-law.js";
export * from "./float-forces.js";
export * from "./line-drag.js";
export * from "./sinker-drag.js";
export * from "./sphere-drag.js";
