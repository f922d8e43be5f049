import fc from "fast-check";
import { expect, test } from "vitest";
import { celsius, fahrenheit, type HeatAdvice, heat, heatCriteria } from "../index.js";

const rank: Readonly<Record<HeatAdvice, number>> = { usual: 0, quick: 1, last: 2, leave: 3 };
const temperature = fc.double({ min: -2, max: 40, noNaN: true });

test("warmer never reads milder, and asks for no less care", () => {
  fc.assert(
    fc.property(temperature, temperature, (a, b) => {
      const [cool, warm] = [Math.min(a, b), Math.max(a, b)].map((t) => heat(celsius(t)));
      expect(rank[warm?.advice ?? "usual"]).toBeGreaterThanOrEqual(rank[cool?.advice ?? "leave"]);
      const reached = (one: typeof cool) => one?.criteria.filter((row) => row.reached).length ?? 0;
      expect(reached(warm)).toBeGreaterThanOrEqual(reached(cool));
      if (warm?.advice !== "leave")
        expect(warm?.handling.length).toBeGreaterThanOrEqual(cool?.handling.length ?? 0);
    }),
    { seed: 3, numRuns: 300 },
  );
});

test("a closure goes before practice, and its absence permits nothing", () => {
  expect(heat(celsius(15), celsius(14))).toMatchObject({ advice: "leave", decided: "local-closure" });
  expect(heat(celsius(21), celsius(25))).toMatchObject({ advice: "leave", decided: "practice" });
  expect(heat(celsius(12), celsius(14))).toMatchObject({ advice: "usual", decided: "practice" });
});

test("68 °F is where the rod goes away: common practice, no source", () => {
  expect(heat(fahrenheit(68.1)).advice).toBe("leave");
  expect(heat(fahrenheit(67)).advice).not.toBe("leave");
});

test("criteria rise, and each says what it counts", () => {
  const limits = heatCriteria.map(({ limit }) => Number(limit));
  expect(limits).toEqual([...limits].sort((a, b) => a - b));
  // 70 °F and 78 °F: EPA region 10, as quoted, to half a degree
  const lethal = heatCriteria.filter(({ source, what }) => source === "EPA2003" && what.startsWith("lethal"));
  expect(lethal).toHaveLength(2);
  expect(Math.abs((lethal[0]?.limit ?? 0) - fahrenheit(70))).toBeLessThan(0.5);
  expect(Math.abs((lethal[1]?.limit ?? 0) - fahrenheit(78))).toBeLessThan(0.5);
});

test("cold water gets its warning, and no answer calls anything safe", () => {
  expect(heat(celsius(6)).cautions.join(" ")).toContain("breath");
  for (let t = -2; t < 45; t++) expect(JSON.stringify(heat(celsius(t)))).not.toMatch(/\bsafe\b/i);
});

test("an absurd reading is refused", () => {
  expect(() => heat(celsius(70))).toThrow("water temperature must be from -2 to 45 °C, got 70");
  expect(() => heat(celsius(15), celsius(70))).toThrow("temperature of the closure");
});
