import { expect, test } from "vitest";
import { answersIn } from "./answers.js";

const answer = (text: string) => ({ etag: '"a"', text, work: 1000 });

test("an answer is given again until others need its room, the one asked for longest ago first", () => {
  const kept = answersIn(20_000); // some eight answers of this size
  const asked = [..."abcdefgh"];
  for (const one of asked) kept.set(one, answer("x".repeat(950)));
  expect(kept.get("a")).toEqual(answer("x".repeat(950)));
  for (const one of ["i", "j"]) kept.set(one, answer("y".repeat(950)));
  expect(kept.get("a")).toBeDefined();
  expect(kept.get("b")).toBeUndefined();
});

test("what is too large for its share is not kept, and no room keeps nothing", () => {
  const kept = answersIn(20_000);
  kept.set("large", answer("x".repeat(1500)));
  expect(kept.get("large")).toBeUndefined();
  const none = answersIn(0);
  none.set("a", answer("x"));
  expect(none.get("a")).toBeUndefined();
});
