/** lie: the fish's window. */
export * from "./capture-success.js";
export * from "./window.js";
