/** What is sent to every host: the examples of the document, and each way a request fails before it is computed. */

import { MAX_BODY_BYTES, operations, settleRig } from "@plumbdrift/contract";

export interface Request {
  readonly name: string;
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array<ArrayBuffer>;
}

export interface Reply {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | undefined>>;
  /** Those of the host too. */
  readonly all: Headers;
  readonly body: string;
}

/** The headers that are part of the contract; the others are the host's own. */
const compared = ["content-type", "etag", "cache-control", "allow", "accept-query"];

/** A reply from whatever a host gives. */
export function replyOf(status: number, headers: Headers, body: string): Reply {
  const kept = compared.map((name) => [name, headers.get(name) ?? undefined] as const);
  return { status, headers: Object.fromEntries(kept), all: headers, body };
}

const json = { "content-type": "application/json" };
const { path } = settleRig;
const example = JSON.stringify(Object.values(settleRig.examples)[0]?.value);
const contradicting = example.replace('"water":{', '"water":{"d84":{"value":1,"unit":"mm"},');

const sent = (
  name: string,
  body: string | Uint8Array<ArrayBuffer>,
  more: Partial<Request> = {},
): Request => ({
  name,
  method: "POST",
  path,
  headers: json,
  body,
  ...more,
});

const got = (name: string, at: string, method = "GET"): Request => ({ name, method, path: at, headers: {} });

const computed = operations.flatMap(({ id, path, examples }) =>
  Object.entries(examples).map(([name, { value }]) =>
    sent(`${id}: ${name}`, JSON.stringify(value), { path }),
  ),
);

/** The example with a byte in its last string that no UTF-8 has. */
function spoilt(): Uint8Array<ArrayBuffer> {
  const bytes = new TextEncoder().encode(example);
  bytes[bytes.lastIndexOf(0x22) - 1] = 0xff;
  return bytes;
}

const failures = [
  sent("a body that is not UTF-8", spoilt()),
  sent("malformed JSON", '{"water": {"depth": }'),
  sent("a body that ends too soon", example.slice(0, -1)),
  sent("an empty body", ""),
  sent("a body that is no object", "[]"),
  sent("an unknown key", example.replace('"water"', '"watre"')),
  sent("a unit of another dimension", example.replace(/"unit":"(ft|m)"/, '"unit":"s"')),
  sent("values that cannot hold together", contradicting),
  sent("a body too large", example.padEnd(MAX_BODY_BYTES + 1)),
  sent("another content type", example, { headers: { "content-type": "text/plain" } }),
  got("a wrong method", path),
  got("another wrong method", path, "DELETE"),
  got("an unknown path", "/v1/drifts/setled"),
  got("an unknown relation", "/v1/relations/Chow1958"),
];

export const requests: readonly Request[] = [
  ...computed,
  sent("a byte order mark", `\ufeff${example}`),
  sent("QUERY", example, { method: "QUERY" }),
  sent("an answer that is known", example, { headers: { ...json, "if-none-match": "*" } }),
  got("health", "/healthz"),
  got("the document", "/openapi.json"),
  got("the relations", "/v1/relations"),
  got("a relation", "/v1/relations/Chow1959"),
  ...failures,
];
