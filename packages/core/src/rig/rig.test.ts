import { expect, test } from "vitest";
import { float, line, sinker } from "../forces/index.js";
import { cubicMillimetres, grams, kilogramsPerCubicMetre, metres, millimetres } from "../units/index.js";
import { lineLength, maxSections, rig } from "./index.js";

const dry = float({
  length: millimetres(20),
  width: millimetres(5),
  height: millimetres(4),
  mass: grams(0.1),
});
const section = {
  line: line({ length: metres(0.4), diameter: millimetres(0.15), density: kilogramsPerCubicMetre(1780) }),
  sinker: sinker({ mass: grams(0.2), volume: cubicMillimetres(20), bead: millimetres(2.8) }),
};

test("a rig keeps its sections from the float down", () => {
  const second = { ...section, sinker: { ...section.sinker, dressing: 2 } };
  expect(rig(dry, section, second)).toEqual({ float: dry, sections: [section, second] });
  expect(lineLength([section, second])).toBe(0.8);
});

test("a rig has one section at least and ten at most", () => {
  expect(() => rig(dry)).toThrow("sections of the rig must be from 1 to 10, got 0");
  const full = Array.from({ length: maxSections }, () => section);
  expect(rig(dry, ...full).sections).toHaveLength(10);
  expect(() => rig(dry, ...full, section)).toThrow("got 11");
});

test("no line at all has no length to give", () => {
  expect(() => lineLength([])).toThrow("length of all lines must be above 0 m, got 0");
});
