import { expect, test } from "vitest";
import { turns } from "./turns.js";

test("long computations begin one to a turn of the event loop, in their order; short ones at once", async () => {
  const turn = turns(() => true);
  let loops = 0;
  const counting = (): void => {
    loops++;
    if (loops < 10) setImmediate(counting);
  };
  setImmediate(counting);
  const began: [string, number][] = [];
  const wait = async (name: string, work: number): Promise<void> => {
    await turn(work, {});
    began.push([name, loops]);
  };
  await Promise.all([wait("a", 60_000), wait("b", 60_000), wait("short", 40), wait("c", 60_000)]);
  expect(began.map(([name]) => name)).toEqual(["short", "a", "b", "c"]);
  const turnsOfLong = began.slice(1).map(([, loop]) => loop);
  expect(new Set(turnsOfLong).size).toBe(3);
});

test("who has left when it is their turn is told apart from who waits", async () => {
  const left = new Set<string>();
  const turn = turns((name: string) => !left.has(name));
  const [here, gone] = [turn(60_000, "here"), turn(60_000, "gone")];
  left.add("gone");
  expect([await here, await gone]).toEqual([true, false]);
});
