/** Every computation the API offers, in the order the document lists them. */
import type { Described } from "../operation.js";
import { readColumn } from "./read-column.js";
import { settleRig } from "./settle-rig.js";

export { readColumn, settleRig };

export const operations: readonly Described[] = [readColumn, settleRig];
