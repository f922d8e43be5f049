import { existsSync, readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Case } from "./case.js";
import { cases, rows } from "./cases.js";
import { halfLastDigit, isVerified, measure } from "./measure.js";
import { notApplicable } from "./not-applicable.js";

const row = (id: string) => id.split(".")[0] ?? id;
const name = (one: Case) => ({ ...one, title: `${one.id}: ${one.evaluates}, ${one.kind}, ${one.seen}` });

describe("the built core", () => {
  test.each(cases.filter((one) => one.disagrees === undefined).map(name))("agrees with $title", (one) => {
    const measured = measure(one);
    expect(measured, `${one.source}, ${one.locator}`).toMatchObject({ pass: true });
  });

  test.each(cases.filter((one) => one.disagrees !== undefined).map(name))(
    "disagrees, as stated, with $title",
    (one) => {
      const measured = measure(one);
      expect(measured.value).toSatisfy(Number.isFinite);
      expect(measured, one.disagrees).toMatchObject({ pass: false });
    },
  );
});

describe("the cases", () => {
  test("are as many as they were", () => {
    expect(cases).toHaveLength(969);
    expect(cases.filter(isVerified)).toHaveLength(759);
  });

  test("have one id each", () => {
    expect(new Set(cases.map((one) => one.id)).size).toBe(cases.length);
  });

  test.each(rows)("%s has a case, or a reason why not", (id) => {
    const used = cases.some((one) => row(one.id) === id);
    expect(used).toBe(notApplicable[id] === undefined);
  });

  test("no reason is given for a row that is not in the list", () => {
    expect(Object.keys(notApplicable).filter((id) => !rows.includes(id))).toEqual([]);
  });

  test("each source has a folder with its cases and a README", () => {
    const here = new URL(".", import.meta.url);
    const folders = readdirSync(here, { withFileTypes: true })
      .filter(
        (entry) => entry.isDirectory() && !/^(node_modules|perturb|report|sweep|\..*)$/.test(entry.name),
      )
      .map((entry) => entry.name);
    const complete = (folder: string) =>
      ["README.md", "cases.ts"].every((file) => existsSync(new URL(`${folder}/${file}`, here)));
    expect(folders.filter((folder) => !complete(folder))).toEqual([]);
    expect(folders).toHaveLength(73);
  });

  test("a practice or a memory is never counted as verified", () => {
    const verified = cases.filter(isVerified);
    expect(verified.filter((one) => one.seen === "from-memory" || one.kind === "practice")).toEqual([]);
  });
});

describe("the measure", () => {
  test.each([
    ["1.160", 0.0005],
    ["244", 0.5],
    ["6.3701e-5", 5e-10],
    ["1e5", 5e4],
    ["-0.50", 0.005],
  ])("half of the last digit of %s is %d", (printed, half) => {
    expect(halfLastDigit(printed) / half).toBeCloseTo(1, 12);
  });

  test.each(["", "about 3", "1,5", "NaN"])("%o is no printed number", (printed) => {
    expect(() => halfLastDigit(printed)).toThrow(RangeError);
  });

  test("a case one digit off does not pass", () => {
    const wrong = cases.find((one) => one.id === "W-07");
    expect(wrong && measure({ ...wrong, printed: "997.047014" })).toMatchObject({ pass: false });
  });
});
