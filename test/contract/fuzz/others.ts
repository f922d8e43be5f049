/** What else the document lists: lists and lines of many computations, and what can be looked up. */

import { operations } from "@plumbdrift/contract";
import fc from "fast-check";
import { type Body, document, verdict } from "../api.js";
import { hostileValue } from "../arbitrary.js";
import type { Kind, Sent } from "./kinds.js";

const lines = "application/x-ndjson";

/** Batches of what the operations are asked alone; `alone` are their kinds by operation. */
export function batchesOf(alone: ReadonlyMap<string, readonly Kind[]>): readonly Kind[] {
  const texts = [...alone].map(([id, kinds]) =>
    fc
      .oneof(...kinds.filter(({ name }) => name !== "too large").map(({ requests }) => requests))
      .map(({ init }) => ({ id, text: typeof init.body === "string" ? init.body : "{}" })),
  );
  const one = fc.oneof(...texts);
  const wrong = fc
    .oneof(hostileValue, fc.record({ operation: hostileValue, body: hostileValue, id: hostileValue }))
    .map((said) => JSON.stringify(said));
  const line = fc.oneof(
    { arbitrary: one.map(({ id, text }) => `{"id":"${id}","operation":"${id}","body":${text}}`), weight: 5 },
    { arbitrary: wrong, weight: 1 },
  );
  const list = fc.array(line.filter(isJson), { maxLength: 6 }).map((items) => `{"items":[${items.join()}]}`);
  const blank = fc.constantFrom("", "  ", "{", "\u0000", "null");
  const stream = fc.array(fc.oneof({ arbitrary: line, weight: 6 }, { arbitrary: blank, weight: 1 }), {
    maxLength: 6,
  });
  const sent = (type: string, body: string): Sent => ({
    path: "/v1/batch",
    init: { method: "POST", headers: { "content-type": type }, body },
  });
  return [
    {
      name: "lists",
      share: 10,
      never: [],
      requests: fc
        .oneof({ arbitrary: list, weight: 9 }, { arbitrary: wrong, weight: 1 })
        .map((text) => sent("application/json", text)),
    },
    {
      name: "lines",
      share: 10,
      never: [400, 422],
      requests: stream.map((texts) => sent(lines, texts.join("\n"))),
    },
  ];
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

const responseOf = new Map(
  operations.map(({ id, path }) => [
    id,
    document.paths[path].post.responses["200"].content["application/json"].schema as Body,
  ]),
);

/** Holds every result of a list or of lines against the document: its own shape, and that of the operation that it answers. */
export function checkResults(results: readonly Body[], asked: readonly unknown[]): void {
  for (const result of results) {
    hold({ $ref: "#/components/schemas/BatchResult" }, result);
    if ((result.result === undefined) === (result.problem === undefined))
      throw new Error("a result or a problem");
    if (result.status >= 500) throw new Error(`an item answers ${result.status}`);
    if (result.status === 200) hold(responseOf.get(operationIn(asked[result.index])), result.result);
  }
}

function hold(schema: Body, value: unknown): void {
  const { valid, why } = verdict(schema, value);
  if (!valid) throw new Error(`a result does not fit the document: ${why}`);
}

function operationIn(item: unknown): string {
  return String((item as { readonly operation?: unknown } | undefined)?.operation);
}

/** What can be looked up without a body: each path of the document by its keys, and by what is no key. */
export function lookUps(): readonly Kind[] {
  const paths = Object.entries<Body>(document.paths).filter(
    ([path, { get }]) => get && /^\/v1|^\/healthz/.test(path),
  );
  const known = fc.constantFrom(
    ...paths.map(([path, { get }]) =>
      path.replace(/\{\w+\}/, String(get.parameters?.[0]?.example ?? get.parameters?.[0]?.schema.example)),
    ),
  );
  const keys = fc.oneof(
    fc.constantFrom(
      "__proto__",
      "constructor",
      "%00",
      "%ff",
      "%2e%2e%2f",
      "..;",
      "a%2Fb",
      "🎣",
      "x".repeat(2000),
      "hook",
    ),
    fc.string({ minLength: 1, maxLength: 12, unit: "grapheme" }).map(encodeURIComponent),
  );
  const templates = paths.map(([path]) => path).filter((path) => path.includes("{"));
  const unknown = fc
    .tuple(fc.constantFrom(...templates), keys)
    .map(([path, key]) => path.replace(/\{\w+\}/, () => key));
  const query = fc.constantFrom("", "", "", "?x=1", "?explain=steps", "?__proto__", "?%");
  const method = fc.constantFrom("GET", "GET", "GET", "GET", "POST", "DELETE");
  const named = fc.constantFrom("", "", "*", '"x"');
  const requests = (to: fc.Arbitrary<string>): fc.Arbitrary<Sent> =>
    fc.tuple(to, query, method, named).map(([path, asked, how, etag]) => ({
      path: `${path}${asked}`,
      init: { method: how, headers: etag === "" ? {} : { "if-none-match": etag } },
    }));
  return [
    { name: "known keys", share: 20, never: [404], requests: requests(known) },
    { name: "unknown keys", share: 20, never: [200, 304], requests: requests(unknown) },
  ];
}
