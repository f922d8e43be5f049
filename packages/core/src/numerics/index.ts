/** numerics: how to find a number. Knows no water. */
export * from "./extrapolation.js";
export * from "./interpolation.js";
export * from "./root.js";
