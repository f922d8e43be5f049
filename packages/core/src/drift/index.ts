/** drift: where it all goes: settled, unsteady, held back. */
export * from "./state.js";
