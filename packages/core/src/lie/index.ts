/** lie: the fish's window. */
export * from "./window.js";
