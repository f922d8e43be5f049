/** sources: who says so. One record per paper, standard or assumption; equations cite its key. */
export * from "./grounds.js";
export * from "./records.js";
