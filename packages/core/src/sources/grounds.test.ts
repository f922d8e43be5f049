import { describe, expect, test } from "vitest";
import { caveatFor, type Grounds, joinGrounds, sources } from "./index.js";

const validity = { relation: "Katul2002", quantity: "depth / D84", min: 0.2, max: 7 } as const;

describe("a caveat", () => {
  test.each([0.2, 3, 7])("is not made at %d: the ends are inside", (received) => {
    expect(caveatFor(validity, received)).toEqual([]);
  });

  test.each([0.19, 7.01, Number.NaN, Number.POSITIVE_INFINITY])("is made at %d", (received) => {
    expect(caveatFor(validity, received)).toEqual([{ ...validity, received }]);
  });
});

test("grounds are joined with each thing named once, in order", () => {
  const first: Grounds = {
    relations: ["Katul2002", "ISO748"],
    assumptions: [{ name: "temperature", value: "12 °C", basis: "default" }],
    caveats: caveatFor(validity, 9),
  };
  const second: Grounds = {
    relations: ["ISO748", "Coles1956"],
    assumptions: [
      { name: "temperature", value: "12 °C", basis: "default" },
      { name: "temperature", value: "9 °C", basis: "default" },
    ],
    caveats: [...caveatFor(validity, 9), ...caveatFor(validity, 8)],
  };
  const joined = joinGrounds(first, second);
  expect(joined.relations).toEqual(["Katul2002", "ISO748", "Coles1956"]);
  expect(joined.assumptions.map((a) => a.value)).toEqual(["12 °C", "9 °C"]);
  expect(joined.caveats.map((c) => c.received)).toEqual([9, 8]);
  expect(joinGrounds(joined)).toEqual(joined);
  expect(joinGrounds()).toEqual({ relations: [], assumptions: [], caveats: [] });
});

test("every source says who, what and how it was seen", () => {
  const seen = ["read", "second-hand", "from-memory", "common-practice", "assumption"];
  for (const { authors, year, title, access } of Object.values(sources)) {
    expect(authors).not.toBe("");
    expect(title.length).toBeGreaterThan(10);
    expect(seen).toContain(access);
    // a habit and an assumption have no year, a publication has unless it says so
    const undated = access === "common-practice" || access === "assumption" || title.endsWith("(undated)");
    expect(year === null).toBe(undated);
  }
});
