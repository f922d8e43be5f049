/** Random values from the schemas of the document, and ways to spoil them. */

import fc from "fast-check";
import { type Body, document } from "./api.js";

/** A value that a schema of the document allows; `ranged` keeps quantities in the range that their description states.
 *  Covers what the contract uses and fails on anything else. */
export function fits(schema: Body, ranged = false): fc.Arbitrary<Body> {
  if (schema.$ref) return component(schema.$ref, ranged);
  if (schema.allOf) {
    const says = schema.allOf.map((part: Body) => part.description ?? "").join(" ");
    const [, min, max, unit] = /From (\S+) to (\S+) (\S+)\.$/.exec(says) ?? [];
    if (ranged && unit !== undefined) return quantityWithin(Number(min), Number(max), unit);
    return fits(
      schema.allOf.find((part: Body) => "$ref" in part),
      ranged,
    );
  }
  const options = schema.oneOf ?? schema.anyOf;
  if (options) return fc.oneof(...options.map((option: Body) => fits(option, ranged)));
  if (schema.enum) return fc.constantFrom(...schema.enum);
  switch (schema.type) {
    case "object":
      return record(schema, ranged);
    case "array":
      return fc.array(fits(schema.items, ranged), {
        minLength: schema.minItems ?? 0,
        maxLength: Math.min(schema.maxItems ?? 3, (schema.minItems ?? 0) + 2),
      });
    case "integer":
      return fc.integer({ min: schema.minimum, max: schema.maximum });
    case "number":
      return fc.double({ min: schema.minimum ?? -1e9, max: schema.maximum ?? 1e9, noNaN: true });
    case "boolean":
      return fc.boolean();
    case "string":
      return fc
        .string({ minLength: 1, maxLength: 20, unit: "grapheme" })
        .filter((text) => !/\p{Cc}/u.test(text));
  }
  throw new Error(`no values for ${JSON.stringify(schema)}`);
}

/** The largest values that a schema allows, in what can be counted of them: each list and each number at its end, every field there; one for
 *  each way to choose among variants, the same way throughout. Fails where a list has no end. */
export function largest(schema: Body): readonly Body[] {
  return Array.from({ length: 12 }, (_, choice) => largestOf(schema, choice));
}

function largestOf(schema: Body, choice: number): Body {
  if (schema.$ref) return largestOf(document.components.schemas[schema.$ref.split("/").at(-1)!], choice);
  if (schema.allOf)
    return largestOf(
      schema.allOf.find((part: Body) => "$ref" in part),
      choice,
    );
  const options = schema.oneOf ?? schema.anyOf ?? schema.enum;
  if (schema.enum) return options[choice % options.length];
  if (options) return largestOf(options[choice % options.length], choice);
  if (schema.type === "array") {
    if (schema.maxItems === undefined) throw new Error(`a list without an end: ${JSON.stringify(schema)}`);
    return Array(schema.maxItems).fill(largestOf(schema.items, choice));
  }
  if (schema.type === "object") {
    const fields = Object.entries(schema.properties).map(([key, value]) => [key, largestOf(value, choice)]);
    return Object.fromEntries(fields);
  }
  return { integer: schema.maximum, number: schema.maximum, boolean: true, string: "" }[
    schema.type as "number"
  ];
}

/** A component is made once: some stand in dozens of places. */
function component($ref: string, ranged: boolean): fc.Arbitrary<Body> {
  const name = `${$ref} ${ranged}`;
  const made = components.get(name) ?? fits(document.components.schemas[$ref.split("/").at(-1)!], ranged);
  components.set(name, made);
  return made;
}

const components = new Map<string, fc.Arbitrary<Body>>();

/** Ends, anything between, and every order of magnitude alike. */
function quantityWithin(min: number, max: number, unit: string): fc.Arbitrary<Body> {
  const shares = fc.double({ min: 0, max: 1, noNaN: true });
  const least = Math.max(min, 1e-6 * max);
  const value = fc.oneof(
    fc.constantFrom(min, max),
    shares.map((share) => min + share * (max - min)),
    shares.map((share) => Math.min(max, Math.max(min, least * (max / least) ** share))),
  );
  return value.map((inside) => ({ value: inside, unit }));
}

function record(schema: Body, ranged: boolean): fc.Arbitrary<Body> {
  const fields = Object.entries(schema.properties ?? {}).map(([key, value]) => [key, fits(value, ranged)]);
  return fc.record(Object.fromEntries(fields), { requiredKeys: schema.required ?? [] });
}

/** Values that break things. */
export const hostileValue: fc.Arbitrary<Body> = fc.oneof(
  fc.constantFrom<Body[]>(
    null,
    true,
    "",
    "1",
    "m",
    0,
    -0,
    -1,
    5e-324,
    1e308,
    -1e308,
    1e9,
    1.5,
    2 ** 53,
    [],
    {},
    [[]],
    { value: 1 },
    { value: 1, unit: "m" },
    { value: 1, unit: "s" },
    { value: -1, unit: "ft" },
    { value: null, unit: "m" },
    "\u0000",
    "\ud800",
    "🎣".repeat(80),
    "x".repeat(1000),
    "__proto__",
  ),
  fc.jsonValue({ maxDepth: 2 }),
);

/** A value with one place changed: replaced, removed, renamed, doubled or joined by an unknown key. */
export function spoilt(valid: fc.Arbitrary<Body>): fc.Arbitrary<Body> {
  return fc
    .tuple(
      valid,
      fc.nat(),
      fc.nat({ max: 4 }),
      hostileValue,
      fc.constantFrom("depht", "__proto__", "toString", ""),
    )
    .map(([value, pick, how, hostile, key]) => {
      const copy = JSON.parse(JSON.stringify(value)); // as it will be sent
      const places = placesIn(copy);
      const place = places[pick % Math.max(1, places.length)];
      if (place === undefined) return hostile;
      const { holder, name } = place;
      if (how === 0) holder[name] = hostile;
      else if (how === 1 && !Array.isArray(holder)) delete holder[name];
      else if (how === 2 && !Array.isArray(holder)) put(holder, key, hostile);
      else if (how === 3 && typeof holder[name] === "number") holder[name] *= -10;
      else if (how === 4 && Array.isArray(holder[name])) holder[name].push(hostile);
      else holder[name] = hostile;
      return copy;
    });
}

/** As JSON.parse does: `__proto__` becomes a key of its own. */
function put(holder: Body, key: string, value: Body): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

export interface Place {
  readonly holder: Body;
  readonly name: string | number;
}

/** Every place in a value that holds another. */
export function placesIn(value: Body, found: Place[] = []): Place[] {
  if (typeof value !== "object" || value === null) return found;
  for (const name of Object.keys(value)) {
    found.push({ holder: value, name });
    placesIn(value[name], found);
  }
  return found;
}
