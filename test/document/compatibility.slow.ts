/** The gate: the document breaks nothing that the released one promised, unless its version says so. `pnpm run release` keeps the document. */

import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openApiDocument30 } from "@plumbdrift/contract";
import type { OpenAPIObject } from "openapi3-ts/oas30";
import { describe, expect, test } from "vitest";
import { losses, mayBreak } from "./compatibility.js";

const file = fileURLToPath(new URL("released/openapi-3.0.json", import.meta.url));
const current: OpenAPIObject = JSON.parse(JSON.stringify(openApiDocument30()));

if (process.env.WRITE !== undefined) writeFileSync(file, `${JSON.stringify(current, null, 1)}\n`);
const released: OpenAPIObject = JSON.parse(readFileSync(file, "utf8"));

test("nothing that was released is lost, unless the version says so", async () => {
  const lost = await losses(released, current);
  expect(mayBreak(released.info.version, current.info.version) ? [] : lost).toEqual([]);
});

// biome-ignore lint/suspicious/noExplicitAny: the changes reach into JSON
type Json = any;

test("whatever is taken from the whole document is named, in one minute", async () => {
  const after: Json = structuredClone(current);
  const { paths, components } = after;
  const { schemas, headers } = components;
  schemas.Tippet.properties.x.maximum = 7;
  schemas.Bead.required.push("colour");
  schemas.Bead.properties.colour = { type: "string" };
  schemas.Settled.required.pop();
  schemas.Law.enum.push("guess");
  delete paths["/v1/takes"].post.responses["304"];
  delete paths["/v1/drifts/settled"].post.parameters;
  headers.ETag.required = false;
  delete paths["/v1/units"];
  const lost = await losses(current, after);
  const named = (what: string) => lost.filter((loss) => loss.includes(what));
  for (const what of [
    "request.body.scope.remove at Tippet, sent",
    "request.body.scope.remove at Bead, sent",
    "response.body.scope.add at Settled, answered",
    '["/v1/columns"]["post"]["responses"]["200"]["content"]',
    "/v1/takes",
    '["/v1/drifts/settled"]["post"]["parameters"]',
    `["responses"]["200"]["headers"]`,
    "remove at /v1/units",
  ]) {
    expect(named(what), what).not.toEqual([]);
  }
  expect(named("/healthz")).toEqual([]);
}, 60_000);

describe("the version", () => {
  test.each([
    ["0.1.0", "0.1.4", false],
    ["0.1.0", "0.2.0", true],
    ["0.9.0", "1.0.0", true],
    ["1.2.0", "1.3.0", false],
    ["1.2.0", "2.0.0", true],
  ])("%s to %s may break what was promised: %s", (before, after, may) => {
    expect(mayBreak(before, after)).toBe(may);
  });
});

/** One path with what it refers to, small enough to be changed many times. */
function small(): Json {
  const object = (properties: Json, required: readonly string[]): Json => {
    return { type: "object", properties, required, additionalProperties: false };
  };
  const body = (name: string): Json => ({
    "application/json": { schema: { $ref: `#/components/schemas/${name}` } },
  });
  const answer = { description: "The answer.", content: body("Answer") };
  return {
    openapi: "3.0.3",
    info: { title: "Small", version: "0.1.0" },
    paths: {
      "/v1/stops": {
        post: {
          operationId: "readStop",
          requestBody: { required: true, content: body("Stop") },
          responses: { "200": answer },
        },
      },
    },
    components: {
      schemas: {
        Stop: object(
          { depth: { type: "number", minimum: 0 }, bed: { type: "string", enum: ["sand", "cobble"] } },
          ["depth"],
        ),
        Answer: object({ speed: { type: "number" }, stop: { $ref: "#/components/schemas/Stop" } }, [
          "speed",
          "stop",
        ]),
      },
    },
  };
}

describe("the gate", () => {
  const changed = (change: (document: Json) => void): Promise<readonly string[]> => {
    const after = small();
    change(after);
    return losses(small(), after);
  };

  test.each<[string, (document: Json) => void]>([
    ["a path that is gone", ({ paths }) => delete paths["/v1/stops"]],
    [
      "a method that is gone",
      ({ paths }) => {
        paths["/v1/stops"] = {};
      },
    ],
    ["a field that must now be sent", ({ components }) => components.schemas.Stop.required.push("bed")],
    ["a field that is no longer known", ({ components }) => delete components.schemas.Stop.properties.bed],
    ["a word that is no longer known", ({ components }) => components.schemas.Stop.properties.bed.enum.pop()],
    [
      "a narrower range",
      ({ components }) => {
        components.schemas.Stop.properties.depth.minimum = 1;
      },
    ],
    [
      "a field that is no longer answered",
      ({ components }) => {
        delete components.schemas.Answer.properties.speed;
        components.schemas.Answer.required.shift();
      },
    ],
    ["a field that is not always answered", ({ components }) => components.schemas.Answer.required.shift()],
    [
      "another type of an answer",
      ({ components }) => {
        components.schemas.Answer.properties.speed.type = "string";
      },
    ],
  ])("shuts at %s", async (_what, change) => {
    expect(await changed(change)).not.toEqual([]);
  });

  test.each<[string, (document: Json) => void]>([
    ["the same document", () => {}],
    [
      "a new path",
      ({ paths }) => {
        paths["/v1/days"] = { post: { ...paths["/v1/stops"].post, operationId: "readDay" } };
      },
    ],
    [
      "a new field that may be sent",
      ({ components }) => {
        components.schemas.Stop.properties.slope = { type: "number" };
      },
    ],
    [
      "a new field that is answered",
      ({ components }) => {
        components.schemas.Answer.properties.froude = { type: "number" };
      },
    ],
    [
      "other words",
      ({ components }) => {
        components.schemas.Stop.description = "Where one stands.";
      },
    ],
  ])("lets %s through", async (_what, change) => {
    expect(await changed(change)).toEqual([]);
  });
});
