/** elementary: functions that give the same number on every engine. */
export * from "./circular.js";
export * from "./logarithms.js";
