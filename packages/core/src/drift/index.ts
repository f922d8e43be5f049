/** drift: where it all goes: settled, unsteady, held back. */

export * from "./bed-friction.js";
export * from "./held.js";
export * from "./settled.js";
export * from "./state.js";
export * from "./unsteady.js";
