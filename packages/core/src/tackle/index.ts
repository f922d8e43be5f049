/** tackle: from hook, bead, dressing and tippet to bodies and lines. Common-practice tables, each value overridable. */
export * from "./bead.js";
export * from "./box.js";
export type { Built } from "./built.js";
export * from "./dry.js";
export * from "./hook.js";
export * from "./nymph.js";
export * from "./shot.js";
export * from "./tippet.js";
