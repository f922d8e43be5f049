/** Answers kept in memory, the one asked for longest ago forgotten first. */

import { LRUCache } from "lru-cache";
import { type Kept, nothingKept } from "../kept.js";

/** Room for so many bytes, requests and answers together. No answer takes more than an eighth of it. */
export function answersIn(bytes: number): Kept {
  if (bytes === 0) return nothingKept;
  const cache = new LRUCache<string, Parameters<Kept["set"]>[1]>({
    maxSize: bytes,
    maxEntrySize: Math.ceil(bytes / 8),
    // two bytes a character at most, and what else an entry takes
    sizeCalculation: ({ text }, asked) => 2 * (asked.length + text.length) + 500,
  });
  return { get: (asked) => cache.get(asked), set: (asked, answer) => void cache.set(asked, answer) };
}
