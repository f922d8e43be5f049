/** Ways to spoil a request that only its text can show: what JSON cannot hold, or holds twice. */

import fc from "fast-check";
import type { Body } from "../api.js";
import { placesIn } from "../arbitrary.js";

/** What stands for a piece of text until the value around it is written. */
const MARK = "here\u0001";

/** The text of a value with some JSON in one of its places. */
function withText(value: Body, pick: number, literal: string, only = (_held: unknown) => true): string {
  const copy = structuredClone(value);
  const places = placesIn(copy).filter(({ holder, name }) => only(holder[name]));
  const place = places[pick % Math.max(1, places.length)];
  if (place === undefined) return literal;
  place.holder[place.name] = MARK;
  return JSON.stringify(copy).replace(JSON.stringify(MARK), () => literal);
}

/** Numbers at the ends of what a double can hold, and beyond. */
const literals: readonly string[] = [
  ..."0 -0 -0.0 0e0 -1 1e-400 -1e-400 5e-324 -5e-324 4.9e-324 2.2250738585072014e-308 2.2e-309 1e-300 1e-30".split(
    " ",
  ),
  ..."1e-9 0.1 1.5 1e9 1e21 1e300 1e308 -1e308 1.7976931348623157e308 1e309 -1e309 1e999999".split(" "),
  ..."9007199254740993 123456789012345678901234567890 4294967296 2147483648 -2147483649".split(" "),
  `0.${"3".repeat(5000)}`,
  "9".repeat(400),
];

export function numbers(values: fc.Arbitrary<Body>): fc.Arbitrary<string> {
  return fc
    .tuple(values, fc.nat(), fc.constantFrom(...literals))
    .map(([value, pick, literal]) => withText(value, pick, literal, (held) => typeof held === "number"));
}

export function deep(values: fc.Arbitrary<Body>): fc.Arbitrary<string> {
  const depths = fc.constantFrom(2, 33, 1_000, 20_000);
  return fc.tuple(values, fc.nat(), depths, fc.boolean()).map(([value, pick, depth, array]) => {
    const [open, close] = array ? ["[", "]"] : ['{"value":', "}"];
    return withText(value, pick, `${open.repeat(depth)}0${close.repeat(depth)}`);
  });
}

const strange: readonly string[] = [
  "\\u0000",
  "\\ud800",
  "\\udc00\\ud800",
  "\u202edepth",
  "d\u0435pth", // a Cyrillic letter in it
  "e\u0301\u0301\u0301".repeat(50),
  "\ufeff",
  "\u2028",
  "👩‍👩‍👧‍👦".repeat(30),
  "ﬁ\u00a0x",
  "İ",
  "\\u001b[31m",
  "x".repeat(10_000),
  "{{7*7}}<script>%s%n../../etc/passwd'; --",
];

/** Strings of every alphabet and of none, as values and as keys. */
export function unicode(values: fc.Arbitrary<Body>): fc.Arbitrary<string> {
  return fc
    .tuple(values, fc.nat(), fc.constantFrom(...strange), fc.boolean())
    .map(([value, pick, odd, asKey]) =>
      asKey ? inserted(value, pick, `"${odd}":1`) : withText(value, pick, `"${odd}"`),
    );
}

/** Keys that every object inherits. */
export function prototypeKeys(values: fc.Arbitrary<Body>): fc.Arbitrary<string> {
  const keys = fc.constantFrom(
    ..."__proto__ constructor prototype toString valueOf hasOwnProperty __defineGetter__".split(" "),
  );
  const held = fc.constantFrom('{"polluted":true}', '{"prototype":{"polluted":true}}', "null", "1", "[]");
  return fc
    .tuple(values, fc.nat(), keys, held)
    .map(([value, pick, key, what]) => inserted(value, pick, `"${key}":${what}`));
}

/** A key given twice, the same to the letter or written another way. */
export function twice(values: fc.Arbitrary<Body>): fc.Arbitrary<string> {
  return fc
    .tuple(values, fc.nat(), fc.boolean(), fc.constantFrom("null", "0", "{}"))
    .map(([value, pick, escaped, what]) => {
      const text = JSON.stringify(value);
      const objects = [...text.matchAll(/(?<=\{)"(\w)(\w*)":/g)];
      const { index, 1: first = "", 2: rest = "" } = objects[pick % objects.length]!;
      const letter = escaped ? `\\u00${first.charCodeAt(0).toString(16)}` : first;
      return `${text.slice(0, index)}"${letter}${rest}":${what},${text.slice(index)}`;
    });
}

/** A text with a member put into one of its objects. */
function inserted(value: Body, pick: number, member: string): string {
  const text = JSON.stringify(value);
  const objects = [...text.matchAll(/\{(?=")/g)];
  const { index = 0 } = objects[pick % objects.length] ?? {};
  return `${text.slice(0, index + 1)}${member},${text.slice(index + 1)}`;
}

/** What is no JSON, or by one letter not what was meant. */
export function broken(values: fc.Arbitrary<Body>): fc.Arbitrary<string | Uint8Array<ArrayBuffer>> {
  const cut = fc.tuple(values, fc.nat(), fc.nat({ max: 3 }), fc.string({ minLength: 1, maxLength: 2 }));
  const whole = values.map((value) => JSON.stringify(value));
  return fc.oneof(
    cut.map(([value, pick, how, other]) => {
      const text = JSON.stringify(value);
      const at = pick % text.length;
      if (how === 0) return text.slice(0, at);
      return `${text.slice(0, at)}${how === 1 ? "" : other}${text.slice(how === 3 ? at : at + 1)}`;
    }),
    fc.constantFrom(
      "",
      " ",
      "NaN",
      "Infinity",
      "undefined",
      "'{}'",
      "{,}",
      "\ufeff{}",
      "//\n{}",
      "[1,]",
      "\u0000",
    ),
    whole.map((text) => `\ufeff${text}`),
    whole.map((text) => `${text},`),
    whole.map((text) => text.replaceAll('"', "'")),
    whole.map((text) => text.replace(/\d+(?=[,}\]])/, "NaN")),
    fc.uint8Array({ minLength: 1, maxLength: 200 }).map((bytes) => new Uint8Array(bytes)),
  );
}

/** What is never UTF-8, wherever it stands: no beginning, too long for what it says, half of a pair, beyond Unicode, cut short. */
const noText = ["80", "ff", "c0af", "e08080", "eda080", "f4908080", "e282"].map((hex) =>
  Buffer.from(hex, "hex"),
);

/** The bytes of a text, in one place not UTF-8. */
export function wrongBytes(values: fc.Arbitrary<Body>): fc.Arbitrary<Uint8Array<ArrayBuffer>> {
  return fc.tuple(values, fc.nat(), fc.constantFrom(...noText)).map(([value, pick, wrong]) => {
    const bytes = Buffer.from(JSON.stringify(value));
    const at = pick % (bytes.length + 1);
    return new Uint8Array(Buffer.concat([bytes.subarray(0, at), wrong, bytes.subarray(at)]));
  });
}
