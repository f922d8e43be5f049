/** The README says what happens: its program runs and prints what it shows. */

import { expect, test } from "vitest";
import { printedBy, programsOf } from "./programs.js";

const programs = programsOf("README.md");

test("there is a program in the README", () => {
  expect(programs).toHaveLength(1);
});

test.each(programs)("its program prints what it shows", (program) => {
  expect(printedBy(program)).toBe(program.output);
});
