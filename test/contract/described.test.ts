/** Our own rules over the document: what has a name has a meaning, and what has a dimension has a datum and a range. */

import { describe, expect, test } from "vitest";
import { type Body, document } from "./api.js";

const schemas: Readonly<Record<string, Body>> = document.components.schemas;
const named = (reference: string): string => reference.split("/").at(-1) ?? "";
const isQuantity = (name: string): boolean =>
  "value" in (schemas[name]?.properties ?? {}) && "unit" in schemas[name].properties;

interface Field {
  /** Component and path inside it. */
  readonly at: string;
  readonly name: string;
  readonly schema: Body;
  /** What the field itself says; what its component says when that is no mere quantity. */
  readonly says: string;
  readonly quantity: boolean;
}

/** Every field of every object at or below a schema, references followed once. */
function fieldsOf(schema: Body, at: string, seen = new Set<string>()): Field[] {
  const below = [
    ...(schema.allOf ?? []),
    ...(schema.oneOf ?? []),
    ...(schema.anyOf ?? []),
    ...(schema.items ? [schema.items] : []),
  ];
  const own = Object.entries<Body>(schema.properties ?? {}).flatMap(([name, value]) => [
    fieldOf(name, value, `${at}.${name}`),
    ...fieldsOf(value, `${at}.${name}`, seen),
  ]);
  const deeper = below.flatMap((part) => fieldsOf(part, at, seen));
  const target = schema.$ref === undefined ? undefined : named(schema.$ref);
  if (target === undefined || seen.has(target)) return [...own, ...deeper];
  seen.add(target);
  return [...own, ...deeper, ...fieldsOf(schemas[target], target, seen)];
}

function fieldOf(name: string, schema: Body, at: string): Field {
  const parts: Body[] = [
    schema,
    ...(schema.allOf ?? []),
    ...(schema.items ? [schema.items, ...(schema.items.allOf ?? [])] : []),
  ];
  const targets = parts.flatMap((part) => (part.$ref ? [named(part.$ref)] : []));
  const own = parts.map((part) => part.description ?? "").join(" ");
  const lent = targets
    .filter((target) => !isQuantity(target))
    .map((target) => schemas[target]?.description ?? "");
  return { at, name, schema, says: [own, ...lent].join(" ").trim(), quantity: targets.some(isQuantity) };
}

const operations = Object.entries<Body>(document.paths).flatMap(([path, methods]) =>
  Object.entries<Body>(methods).map(([method, operation]) => ({ name: `${method} ${path}`, ...operation })),
);
const bodies = (content: Body): Body[] => Object.values<Body>(content ?? {}).map(({ schema }) => schema);
const asked = operations
  .flatMap(({ requestBody }) => bodies(requestBody?.content))
  .flatMap((s) => fieldsOf(s, "request"));
const answered = operations
  .flatMap(({ responses }) => Object.values<Body>(responses))
  .map((response) => (response.$ref ? document.components.responses[named(response.$ref)] : response))
  .flatMap(({ content }) => bodies(content))
  .flatMap((schema) => fieldsOf(schema, "answer"));

/** What a name promises, and the words by which its description says from where it counts. */
const data: Readonly<Record<string, RegExp>> = {
  heightAboveBed: /above the bed/i,
  holdingHeight: /above the bed/i,
  depthBelowSurface: /below the surface/i,
  downstreamOfFloat: /from the float/i,
  elevation: /above|reaches this elevation/i,
  station: /from|along the tape|beyond this station|at which the zone begins/i,
  stage: /gauge|stage/i,
  low: /above the bed/i,
  high: /above the bed/i,
  lean: /from the vertical/i,
  distance: /from|drifted|travelled/i,
  slope: /over its length|over length|on which/i,
};

describe("every field", () => {
  test("is described, or is of a component that is", () => {
    expect(asked.length).toBeGreaterThan(150);
    expect(answered.length).toBeGreaterThan(250);
    expect([...asked, ...answered].filter(({ says }) => says === "").map(({ at }) => at)).toEqual([]);
  });

  test("says it in a sentence", () => {
    const loose = [...asked, ...answered].filter(({ says }) => !/^[^a-z].*[.:)]$/s.test(says));
    expect(loose.map(({ at, says }) => `${at}: ${says}`)).toEqual([]);
  });

  test("whose name promises a datum says from where it counts", () => {
    const missing = [...asked, ...answered].filter(({ name, says, quantity }) => {
      const words = quantity || name === "slope" ? data[name] : undefined;
      return words !== undefined && !words.test(says);
    });
    expect(missing.map(({ at, says }) => `${at}: ${says}`)).toEqual([]);
  });
});

describe("every field of a request", () => {
  test("that has a dimension says its range with a unit", () => {
    const quantities = asked.filter(({ quantity }) => quantity);
    expect(quantities.length).toBeGreaterThan(50);
    const open = quantities.filter(({ says }) => !/From \S+ to \S+ \S+\.( |$)/.test(says));
    expect(open.map(({ at }) => at)).toEqual([]);
  });

  test("that is a number has two ends", () => {
    const numbers = asked.filter(({ schema }) => schema.type === "number" || schema.type === "integer");
    expect(numbers.length).toBeGreaterThan(30);
    expect(
      numbers.filter(({ schema }) => !("minimum" in schema && "maximum" in schema)).map(({ at }) => at),
    ).toEqual([]);
  });

  test("that is a list has an end", () => {
    const lists = asked.filter(({ schema }) => schema.type === "array");
    expect(lists.length).toBeGreaterThan(10);
    expect(lists.filter(({ schema }) => !("maxItems" in schema)).map(({ at }) => at)).toEqual([]);
  });
});

describe("every operation", () => {
  test("has an id of its own that is a verb", () => {
    const ids = operations.map(({ operationId }) => operationId);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z]+([A-Z][a-z]+)*$/.test(id))).toEqual([]);
  });

  test("has a summary, a description and one of the tags that are explained", () => {
    const tags = document.tags.map(({ name, description }: Body) => description && name);
    for (const { name, summary, description, tags: own } of operations) {
      expect({
        name,
        said: Boolean(summary && description),
        tag: tags.includes(own?.[0]),
        many: own?.length,
      }).toEqual({
        name,
        said: true,
        tag: true,
        many: 1,
      });
    }
  });

  test("shows named examples of its request that say what they are", () => {
    const shown = operations
      .filter(({ requestBody }) => requestBody)
      .map(({ name, requestBody }) => ({
        name,
        examples: Object.values<Body>(requestBody.content["application/json"].examples ?? {}),
      }));
    expect(
      shown.filter(({ examples }) => examples.length === 0 || examples.some(({ summary }) => !summary)),
    ).toEqual([]);
  });

  test("describes its parameters, answers and headers", () => {
    const mute: string[] = [];
    for (const { name, parameters = [], responses } of operations) {
      for (const one of parameters)
        if (!(one.description ?? one.schema?.description)) mute.push(`${name} ${one.name}`);
      for (const [status, response] of Object.entries<Body>(responses)) {
        const { description, headers } = response.$ref
          ? document.components.responses[named(response.$ref)]
          : response;
        if (!description) mute.push(`${name} ${status}`);
        for (const [header, one] of Object.entries<Body>(headers ?? {})) {
          const said = one.$ref ? document.components.headers[named(one.$ref)] : one;
          if (!said?.description) mute.push(`${name} ${status} ${header}`);
        }
      }
    }
    expect(mute).toEqual([]);
  });
});

test("the rules would see a field without a word, a bare quantity and an open range", () => {
  const bare = fieldsOf(
    { properties: { mute: { type: "number" }, stage: { $ref: "#/components/schemas/Length" } } },
    "x",
  );
  expect(
    bare.filter(({ at }) => at.startsWith("x.")).map(({ at, says, quantity }) => [at, says, quantity]),
  ).toEqual([
    ["x.mute", "", false],
    ["x.stage", "", true],
  ]);
});
