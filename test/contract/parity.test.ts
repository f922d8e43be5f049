/** The document does not lie: zod and Ajv 2020 give every value the same verdict. */

import {
  BatchRequestSchema,
  BatchResponseSchema,
  EXPLAIN,
  HealthSchema,
  operations,
  ProblemSchema,
  parameterErrors,
  ReadySchema,
  references,
  renderings,
} from "@plumbdrift/contract";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ask, type Body, document, verdict } from "./api.js";
import { fits, spoilt } from "./arbitrary.js";

const json = "application/json";
const { responses: problems } = document.components;

/** What the code reads and writes by, under the id of the operation. */
const read: Body = {
  ...Object.fromEntries(operations.map(({ id, request }) => [id, request])),
  computeBatch: BatchRequestSchema,
};
const written: Body = {
  ...Object.fromEntries([
    ...operations.map(({ id, response }) => [id, response]),
    ...references.map(({ id, schema }) => [id, schema]),
  ]),
  computeBatch: BatchResponseSchema,
  readHealth: HealthSchema,
  readReadiness: ReadySchema,
};

/** Every JSON body of the document but the documents themselves, which are objects of any keys. */
const renderingIds: readonly string[] = Object.values(renderings).map(({ id }) => id);
const schemas = [
  ...Object.values<Body>(document.paths)
    .flatMap((methods) => Object.values<Body>(methods))
    .filter(({ operationId }) => !renderingIds.includes(operationId))
    .flatMap(({ operationId, requestBody, responses }) => [
      {
        name: `${operationId} response`,
        zod: written[operationId],
        published: responses["200"].content[json].schema,
      },
      ...(requestBody === undefined
        ? []
        : [
            {
              name: `${operationId} request`,
              zod: read[operationId],
              published: requestBody.content[json].schema,
            },
          ]),
    ]),
  {
    name: "problem",
    zod: ProblemSchema,
    published: problems.Problem400.content["application/problem+json"].schema,
  },
];

describe.each(schemas)("$name", ({ zod, published }) => {
  const agree = (value: Body): boolean => {
    // what arrives over HTTP went through JSON: no undefined, no -0 apart
    const sent = JSON.parse(JSON.stringify(value));
    const accepted = zod.safeParse(sent).success;
    const { valid, why } = verdict(published, sent);
    if (accepted !== valid) throw new Error(`zod says ${accepted}, the document says ${valid}: ${why}`);
    return accepted;
  };

  test("values that fit are accepted by both", () => {
    fc.assert(
      fc.property(fits(published), (value) => agree(value)),
      { seed: 2, numRuns: 100 },
    );
  });

  test("spoilt values get one verdict, and most are refused", () => {
    let refused = 0;
    fc.assert(
      fc.property(spoilt(fits(published)), (value) => void (agree(value) || refused++)),
      { seed: 3, numRuns: 300 },
    );
    expect(refused).toBeGreaterThan(100);
  });
});

test("every problem is of one schema", () => {
  const bodies = Object.values<Body>(problems).flatMap(({ content }) => Object.entries<Body>(content ?? {}));
  expect(bodies.length).toBeGreaterThan(10);
  for (const body of bodies) expect(body).toEqual(Object.entries(problems.Problem400.content)[0]);
});

describe("parameters", () => {
  const parameters = Object.entries<Body>(document.paths).flatMap(([path, methods]) =>
    Object.values<Body>(methods).flatMap(({ operationId, parameters = [] }) =>
      parameters.map((parameter: Body) => ({ ...parameter, path, operationId })),
    ),
  );
  const queries = parameters.filter((one) => one.in === "query");
  const keys = parameters.filter((one) => one.in === "path");

  test("are of a query or a path, and there are some of each", () => {
    expect([queries.length > 5, keys.length > 2, queries.length + keys.length]).toEqual([
      true,
      true,
      parameters.length,
    ]);
  });

  const words = fc.oneof(
    fc.constantFrom("steps", "", "step", "Steps", "steps "),
    fc.string({ unit: "grapheme" }),
  );

  test.each(queries)("$operationId ?$name: one verdict on every word", ({ name, schema, required }) => {
    expect(required).not.toBe(true);
    fc.assert(
      fc.property(words, (word) => {
        expect(parameterErrors([[name, word]], EXPLAIN).length === 0).toBe(verdict(schema, word).valid);
      }),
      { seed: 4, numRuns: 200 },
    );
    expect(verdict(schema, "steps").valid).toBe(true);
  });

  test.each(keys)(
    "$operationId {$name}: any word, found or not",
    async ({ name, schema, path, example, operationId }) => {
      const known = references.find(({ id }) => id === operationId)?.keyed?.keys ?? [];
      const asked = (word: string) => ask(path.replace(`{${name}}`, encodeURIComponent(word)));
      const unknown = fc.sample(fc.stringMatching(/^[a-zA-Z0-9]{1,12}$/), { seed: 5, numRuns: 20 });
      for (const word of [...known, ...unknown, `${example}x`]) {
        expect(verdict({ ...schema, example: undefined }, word).valid).toBe(true);
        expect((await asked(word)).status).toBe(known.includes(word) ? 200 : 404);
      }
    },
  );
});
