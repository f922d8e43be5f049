/** The kinds of requests that a computation is asked with, each with its share and with what it must never be answered. */

import { MAX_BODY_BYTES, type operations } from "@plumbdrift/contract";
import fc from "fast-check";
import { type Body, document, examplesOf, fewestOf } from "../api.js";
import { fits, hostileValue, placesIn, spoilt } from "../arbitrary.js";
import { estimateOf } from "../work.js";
import { broken, deep, numbers, prototypeKeys, twice, unicode, wrongBytes } from "./texts.js";

type Operation = (typeof operations)[number];

/** A request ready to be sent. */
export interface Sent {
  readonly path: string;
  readonly init: RequestInit;
}

export interface Kind {
  readonly name: string;
  /** Requests of about 50 in a round. */
  readonly share: number;
  readonly never: readonly number[];
  readonly requests: fc.Arbitrary<Sent>;
}

/** Units of work above which a request is sent the less often the more it asks for: time goes to many kinds, not to a few drifts. */
const LIGHT = 5_000;

/** Every kind, for one operation. Never more than a few hundred requests are made at once, and none is kept. */
export function kindsOf({ id, path }: Operation): readonly Kind[] {
  const published = document.paths[path].post.requestBody.content["application/json"].schema;
  const examples = fc.constantFrom<Body[]>(...Object.values(examplesOf(path)).map(({ value }) => value));
  const near = nudged(examples, fewestOf(path));
  const inRange = fits(published, true);
  const good = fc.oneof(near, inRange);
  const [first] = fc.sample(near, { seed: 1, numRuns: 1 });
  const often = Math.min(1, LIGHT / estimateOf(id, first));
  const sent = (bodies: fc.Arbitrary<Body>): fc.Arbitrary<Sent> =>
    sparing(id, bodies.map(textOf)).map((body) => ({ path, init: posted(body) }));
  const kind = (name: string, share: number, requests: fc.Arbitrary<Sent>, never: number[] = []): Kind => ({
    name,
    share,
    requests,
    never,
  });
  return [
    kind("near an example", 5 * often, sent(near)),
    kind("in range", 4, sent(inRange), [400]),
    kind("of the schema", 4, sent(fits(published))),
    kind("spoilt", 16 - 9 * often, sent(spoilt(fc.oneof(examples, inRange, fits(published))))),
    kind("numbers", 6, sent(numbers(good))),
    kind("wrong types", 5, sent(retyped(good))),
    kind("prototype keys", 3, sent(prototypeKeys(good)), [200, 304, 422]),
    kind("keys twice", 3, sent(twice(good)), [200, 304, 422]),
    kind("deep nesting", 2, sent(deep(good)), [200, 304]),
    kind("unicode", 3, sent(unicode(good))),
    kind("broken text", 3, sent(broken(good))),
    kind("wrong bytes", 1, sent(wrongBytes(good)), [200, 304, 422]),
    kind("headers and queries", 4 * often, dressed(path, sparing(id, near.map(textOf)))),
    kind("too large", 1, sent(near.map(oversized)), [200, 304, 400, 422]),
  ];
}

type Text = string | Uint8Array<ArrayBuffer>;

function textOf(body: Body): Text {
  return typeof body === "string" || body instanceof Uint8Array ? (body as Text) : JSON.stringify(body);
}

function posted(body: Text): RequestInit {
  return { method: "POST", headers: { "content-type": "application/json" }, body };
}

function oversized(body: Body): string {
  return JSON.stringify(body).padEnd(MAX_BODY_BYTES + 1);
}

/** Leaves out heavy requests in proportion to what they ask for. */
function sparing<T extends Text>(id: string, texts: fc.Arbitrary<T>): fc.Arbitrary<T> {
  const lots = fc.noBias(fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }));
  return fc
    .tuple(texts, lots)
    .filter(([text, lot]) => lot < LIGHT / workOf(id, text))
    .map(([text]) => text);
}

/** Units of work, or next to none for what is refused. */
function workOf(id: string, text: Text): number {
  if (typeof text !== "string") return 1;
  try {
    return estimateOf(id, JSON.parse(text));
  } catch {
    return 1;
  }
}

/** Each number of a body moved a little, the samples of a reasoning brought down to the least. */
function nudged(bodies: fc.Arbitrary<Body>, fewest: object): fc.Arbitrary<Body> {
  const factors = fc.array(fc.double({ min: 0.8, max: 1.25, noNaN: true }), { minLength: 1, maxLength: 6 });
  return fc.tuple(bodies, factors).map(([body, by]) => {
    const copy = { ...structuredClone(body), ...fewest };
    for (const [i, { holder, name }] of placesIn(copy).entries()) {
      const held = holder[name];
      if (name === "value" && typeof held === "number") holder[name] = held * by[i % by.length]!;
    }
    return copy;
  });
}

function retyped(bodies: fc.Arbitrary<Body>): fc.Arbitrary<Body> {
  return fc.tuple(bodies, fc.nat(), hostileValue).map(([body, pick, hostile]) => {
    const copy = structuredClone(body);
    const places = placesIn(copy);
    const { holder, name } = places[pick % places.length]!;
    holder[name] = hostile;
    return copy;
  });
}

const types = [
  "application/json",
  "application/json; charset=utf-8",
  'APPLICATION/JSON;charset="UTF-8"',
  "application/json; charset=latin1",
  "application/x-ndjson",
  "application/jsonx",
  "text/plain",
  "multipart/form-data; boundary=x",
  "",
];
const queries =
  "|?explain=steps|?explain=all|?explain|?explain=steps&explain=steps|?x=1|?__proto__=1|?%00=%ff".split("|");
const methods = ["POST", "QUERY", "GET", "PUT", "PATCH", "DELETE", "PROPFIND"];

/** Whole bodies under methods, types, conditions and queries of every sort. */
function dressed(path: string, texts: fc.Arbitrary<Text>): fc.Arbitrary<Sent> {
  const mostly = <T>(first: T, rest: readonly T[]) =>
    fc.oneof(
      { arbitrary: fc.constant(first), weight: 3 },
      { arbitrary: fc.constantFrom(...rest), weight: 2 },
    );
  return fc
    .record({
      body: texts,
      method: mostly("POST", methods),
      type: mostly("application/json", types),
      coding: mostly("", ["gzip", "identity", "GZIP", "br, gzip", "x"]),
      query: mostly("", queries),
      known: mostly("", ["*", '"x"', 'W/"0", *', '"'.repeat(9), "\u00ff"]),
      accept: mostly("*/*", [
        "application/json",
        "text/html",
        "application/json;q=0",
        ";;;",
        "a/b,".repeat(500),
      ]),
      id: mostly("", ["01890a5d-ac96-774b-bcce-b302099a8057", "../..", "1".repeat(5000)]),
    })
    .map(({ body, method, type, coding, query, known, accept, id }) => {
      const headers = Object.entries({
        "content-type": type,
        "content-encoding": coding,
        "if-none-match": known,
        accept,
        "x-request-id": id,
      }).filter(([, value]) => value !== "");
      return {
        path: `${path}${query}`,
        init: {
          method,
          headers,
          ...(method === "GET" ? {} : { body: new TextEncoder().encode(String(body)) }),
        },
      };
    });
}
