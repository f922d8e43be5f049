/** The pages that walk through the relations say what happens: each of their programs compiles, runs alone and prints what it shows. */

import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { sources } from "@plumbdrift/core";
import { describe, expect, test } from "vitest";
import { here, printedBy, programsOf, textOf } from "./programs.js";

const pages = [
  { page: "docs/model.md", sections: 8, cites: 5 },
  { page: "docs/hydraulics.md", sections: 10, cites: 5 },
  { page: "docs/walkthrough-morning.md", sections: 5, cites: 3 },
  { page: "docs/walkthrough-river-rises.md", sections: 3, cites: 0 },
  { page: "docs/walkthrough-warm-afternoon.md", sections: 2, cites: 3 },
];

describe.each(pages)("$page", ({ page, sections, cites }) => {
  const programs = programsOf(page);

  test("has a program for each of its sections", () => {
    expect(programs.length).toBeGreaterThanOrEqual(sections);
  });

  test("cites only sources that are on record", () => {
    const cited = textOf(page).match(/\b[A-Z][A-Za-z]{2,}\d{3,4}\b/g) ?? [];
    expect(cited.length).toBeGreaterThanOrEqual(cites);
    expect(cited.filter((key) => !(key in sources))).toEqual([]);
  });

  test.each(programs.map((program, i) => ({ number: i + 1, program })))(
    "program $number prints what it shows",
    ({ program }) => {
      expect(printedBy(program)).toBe(program.output);
    },
  );
});

test("a user's compiler takes every program", { timeout: 60_000 }, () => {
  const folder = `${here}.reports/programs`;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const sources = ["README.md", ...pages.map(({ page }) => page)].flatMap(programsOf);
  sources.forEach(({ source }, i) => {
    writeFileSync(`${folder}/program-${i + 1}.mts`, source);
  });
  const compilerOptions = { types: ["node"] };
  writeFileSync(
    `${folder}/tsconfig.json`,
    JSON.stringify({ extends: "../../../../.tsconfig.json", compilerOptions, include: ["*.mts"] }),
  );
  const compile = () =>
    execFileSync(`${here}node_modules/.bin/tsc`, ["-p", folder, "--noEmit"], { cwd: here });
  expect(compile).not.toThrow();
});
