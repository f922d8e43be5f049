/** The bytes of a body before they are JSON: one text or none, and never a text that nobody sent. */

import { app } from "@plumbdrift/api";
import { describe, expect, test } from "vitest";
import { ask, type Body, exampleOf } from "./api.js";

const path = "/v1/columns";
const example = exampleOf(path);
const alone = await ask(path, sent(JSON.stringify(example)));
const item = JSON.stringify({ id: "1 May", operation: "readColumn", body: example });

function sent(body: string | Uint8Array<ArrayBuffer>, type = "application/json"): RequestInit {
  return { method: "POST", headers: { "content-type": type }, body: bytesOf(body) };
}

function bytesOf(body: string | Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  return typeof body === "string" ? new TextEncoder().encode(body) : body;
}

const linesOf = async (body: string | Uint8Array<ArrayBuffer>): Promise<Body[]> => {
  const response = await app.request("/v1/batch", sent(body, "application/x-ndjson"));
  return (await response.text())
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line));
};

// RFC 8259, section 8.1: nobody may send one, a parser may pass over it
describe("a byte order mark", () => {
  test("at the beginning of a body, of a list or of a line is passed over", async () => {
    const reply = await ask(path, sent(`\ufeff${JSON.stringify(example)}`));
    expect(reply.headers.get("etag")).toBe(alone.headers.get("etag"));
    expect(reply.body).toEqual(alone.body);
    const { body } = await ask("/v1/batch", sent(`\ufeff{"items":[${item}]}`));
    expect(body.items[0].result).toEqual(alone.body);
    const lines = await linesOf(`\ufeff${item}\n\ufeff${item}\n`);
    expect(lines.map(({ result }) => result)).toEqual([alone.body, alone.body]);
  });

  test.each([
    ["twice", `\ufeff\ufeff${JSON.stringify(example)}`],
    ["after white space", ` \ufeff${JSON.stringify(example)}`],
    ["at the end", `${JSON.stringify(example)}\ufeff`],
    ["alone", "\ufeff"],
  ])("%s is no JSON", async (_name, text) => {
    expect(await ask(path, sent(text))).toMatchObject({ status: 400, body: { code: "malformed-json" } });
  });

  test("of UTF-16 begins no UTF-8", async () => {
    const utf16 = new Uint8Array(Buffer.from(`\ufeff${JSON.stringify(example)}`, "utf16le"));
    expect((await ask(path, sent(utf16))).body).toMatchObject({
      code: "malformed-json",
      detail: "The body is not UTF-8.",
    });
  });
});

test("what stands for an unreadable character is a character like others, where somebody sends it", async () => {
  const [line] = await linesOf(item.replace("1 May", "1 \ufffd"));
  expect(line).toMatchObject({ id: "1 \ufffd", status: 200 });
});

test("a wrong byte is not read as another: neither in a list nor in a line", async () => {
  const wrong = bytesOf(item);
  wrong[wrong.indexOf("M".charCodeAt(0))] = 0xff;
  const list = new Uint8Array([...bytesOf('{"items":['), ...wrong, ...bytesOf("]}")]);
  expect(await ask("/v1/batch", sent(list))).toMatchObject({ status: 400, body: { code: "malformed-json" } });
  const [first, second] = await linesOf(new Uint8Array([...wrong, 0x0a, ...bytesOf(item)]));
  expect(first).toMatchObject({ status: 400, problem: { code: "malformed-json" } });
  expect(second).toMatchObject({ status: 200 });
});
