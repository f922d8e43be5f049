import { PassThrough } from "node:stream";
import { setImmediate as turn } from "node:timers/promises";
import { expect, test } from "vitest";
import { linesTo } from "./lines.js";

test("lines of one turn are written together, in their order, and those of the next turn after them", async () => {
  const stream = new PassThrough({ encoding: "utf8" });
  const written: string[] = [];
  stream.on("data", (text: string) => written.push(text));
  const say = linesTo(stream);
  say("one");
  say("two");
  expect(written).toEqual([]);
  await turn();
  say("three");
  await turn();
  expect(written).toEqual(["one\ntwo\n", "three\n"]);
});
