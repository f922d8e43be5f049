/** units: what a number means. The only room that casts. */
export * from "./constructors.js";
export * from "./errors.js";
export * from "./quantity.js";
