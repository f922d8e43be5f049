/** numerics: how to find a number. Knows no water. */
export * from "./beta.js";
export * from "./chebyshev.js";
export * from "./dormand-prince.js";
export * from "./fixed-power.js";
export * from "./gauss.js";
export * from "./importance.js";
export * from "./integration.js";
export * from "./interpolation.js";
export * from "./least.js";
export * from "./least-squares.js";
export * from "./normal-points.js";
export * from "./root.js";
export * from "./student.js";
