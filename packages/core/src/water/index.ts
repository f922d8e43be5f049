/** water: what water is at a temperature. */
export * from "./water.js";
