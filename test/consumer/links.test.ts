/** Every page can be found from the README, and no link leads nowhere. */

import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { here, textOf } from "./programs.js";

const root = join(here, "../..");

/** The files that a page links to, from the top of the tree. */
function linksOf(page: string): readonly string[] {
  const targets = [...textOf(page).matchAll(/\]\(([^)#\s]+)(#[^)\s]*)?\)/g)].map(([, target = ""]) => target);
  return targets.filter((target) => !/^\w+:/.test(target)).map((target) => join(dirname(page), target));
}

function reachable(page: string, found = new Set<string>()): ReadonlySet<string> {
  if (found.has(page)) return found;
  found.add(page);
  const links = linksOf(page).filter((link) => link.endsWith(".md") && existsSync(join(root, link)));
  for (const link of links) reachable(link, found);
  return found;
}

const pages = readdirSync(join(root, "docs"), { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".md"))
  .map((name) => join("docs", name));

test("every page of docs is reached from the README", () => {
  expect(pages.length).toBeGreaterThan(20);
  const found = reachable("README.md");
  expect(pages.filter((page) => !found.has(page))).toEqual([]);
});

test("the README or the API page links every page that is no decision", () => {
  const linked = [...linksOf("README.md"), ...linksOf("docs/api.md")];
  const own = pages.filter((page) => !page.startsWith("docs/decisions/"));
  expect(own.filter((page) => !linked.includes(page))).toEqual([]);
});

test("every link of a page leads to a file", () => {
  const dead = ["README.md", "DEVELOPERS.md", ...pages].flatMap((page) =>
    linksOf(page)
      .filter((link) => !existsSync(join(root, link)))
      .map((link) => `${page}: ${link}`),
  );
  expect(dead).toEqual([]);
});
