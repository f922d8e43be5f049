/** Random requests, valid and spoilt, over every operation: no 5xx, nothing undeclared, nothing that is not finite. */

import { operations } from "@plumbdrift/contract";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Body, document, examplesOf, post, type Reply } from "./api.js";
import { fits, spoilt } from "./arbitrary.js";

/** Tells how an answer must not be; `post` has already held it against the document. */
function acceptable({ status, body }: Reply): boolean {
  if (status === 200) return body.meta.request.length === 32;
  return status < 500 && body.errors.every((error: Body) => error.path === "" || error.path.startsWith("/"));
}

describe.each(operations.map(({ id, path }) => [id, path] as const))("%s", (_id, path) => {
  const published = document.paths[path].post.requestBody.content["application/json"].schema;
  const examples = fc.constantFrom<Body[]>(...Object.values(examplesOf(path)).map(({ value }) => value));
  const kinds = [
    ["that fit the schema", fits(published), 60],
    ["that fit the schema and the ranges", fits(published, true), 150],
    ["spoilt from the schema", spoilt(fits(published)), 60],
    // small bodies have no place that can be spoilt and still fit: some stay whole
    ["spoilt from the examples", fc.oneof({ arbitrary: spoilt(examples), weight: 9 }, examples), 130],
  ] as const;

  test.each(kinds)("bodies %s", async (name, bodies, numRuns) => {
    const statuses = new Set<number>();
    await fc.assert(
      fc.asyncProperty(bodies, async (body) => {
        const reply = await post(path, body);
        statuses.add(reply.status);
        if (!acceptable(reply)) throw new Error(JSON.stringify(reply.body).slice(0, 500));
      }),
      { seed: 5, numRuns },
    );
    if (name === "that fit the schema and the ranges") expect([...statuses]).not.toContain(400);
    else expect(statuses).toContain(400);
    if (name === "spoilt from the examples") expect(statuses).toContain(200);
  });

  test("bytes that are no JSON at all", async () => {
    const bytes = fc.uint8Array({ maxLength: 200 });
    await fc.assert(
      fc.asyncProperty(bytes, async (body) => {
        const text = new TextDecoder().decode(body);
        return (await post(path, text)).status === 400;
      }),
      { seed: 7, numRuns: 50 },
    );
  });
});
