/** The document does not lie: zod and Ajv 2020 give every value the same verdict. */

import { operations } from "@plumbdrift/contract";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Body, document, verdict } from "./api.js";
import { fits, spoilt } from "./arbitrary.js";

const json = "application/json";
const schemas = operations.flatMap(({ id, path, request, response }) => {
  const { requestBody, responses } = document.paths[path].post;
  return [
    { name: `${id} request`, zod: request, published: requestBody.content[json].schema },
    { name: `${id} response`, zod: response, published: responses["200"].content[json].schema },
  ];
});

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
