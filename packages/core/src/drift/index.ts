/** drift: where it all goes: settled, unsteady, held back. */

export * from "./bed-friction.js";
export { type Hang, hangFrom } from "./hang.js";
export * from "./held.js";
export * from "./presentation.js";
export * from "./settled.js";
export * from "./state.js";
export * from "./unsteady.js";
