/** Both versions of the document keep the schema of their version, and say the same. */

import { openApiDocument, openApiDocument30 } from "@plumbdrift/contract";
import { Validator } from "@seriousme/openapi-schema-validator";
import { expect, test } from "vitest";

const validated = (document: object) => new Validator().validate({ ...structuredClone(document) });

test.each([
  ["3.1", openApiDocument()],
  ["3.0", openApiDocument30()],
])(
  "OpenAPI %s is valid by its schema",
  async (version, document) => {
    expect(document.openapi.startsWith(version)).toBe(true);
    expect(await validated(document)).toEqual({ valid: true });
    const { paths: _, ...without } = document;
    expect((await validated({ ...without, servers: "nowhere" })).valid).toBe(false);
  },
  60_000,
);

test("3.0 says word for word what 3.1 says, but for what 3.0 has no word for", () => {
  const { openapi, info, webhooks, ...rest } = openApiDocument();
  const { openapi: openapi30, info: info30, ...rest30 } = openApiDocument30();
  expect([openapi, openapi30, webhooks]).toEqual(["3.1.0", "3.0.3", {}]);
  // any value at all is {} in one, and nullable in the other
  const any = JSON.stringify(rest30).replaceAll('{"nullable":true}', "{}");
  expect(JSON.parse(any)).toEqual(JSON.parse(JSON.stringify(rest)));
  expect({ ...info30, license: info30.license?.name }).toEqual({ ...info, license: info.license?.name });
}, 60_000);
