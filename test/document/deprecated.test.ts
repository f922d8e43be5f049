import { openApiDocument, readColumn } from "@plumbdrift/contract";
import { expect, test } from "vitest";

const deprecated = { since: "2026-11-26T00:00:00Z", link: "https://example.org/columns" };

test("the document marks the operation and no other", () => {
  const { paths = {} } = openApiDocument([{ ...readColumn, deprecated }]);
  const { deprecated: marked, responses } = paths[readColumn.path]?.post ?? {};
  expect(marked).toBe(true);
  expect(Object.keys(responses?.["200"].headers)).toEqual(
    expect.arrayContaining(["Deprecation", "Sunset", "Link"]),
  );
  const usual = openApiDocument([readColumn]).paths?.[readColumn.path]?.post;
  expect(usual).not.toHaveProperty("deprecated");
  expect(usual?.responses?.["200"].headers).not.toHaveProperty("Deprecation");
});
