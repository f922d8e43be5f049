/** rig: a float, then any number of line and sinker sections below it. */
export * from "./rig.js";
