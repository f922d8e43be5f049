/** What came in: its type, and JSON as a value or as what is wrong with it. */

import { type Problem, problem, repeatedKeys } from "@plumbdrift/contract";
import type { Context } from "hono";

/** What a body is sent as, by its content type; nothing for any other, and for what is compressed. */
export function sentAs(c: Context): "json" | "lines" | undefined {
  if ((c.req.header("content-encoding") ?? "identity").toLowerCase() !== "identity") return undefined;
  const type = c.req.header("content-type") ?? "";
  const [, name = ""] = /^([a-z/-]+)\s*(;\s*charset="?utf-8"?\s*)?$/i.exec(type) ?? [];
  if (name.toLowerCase() === "application/json") return "json";
  return name.toLowerCase() === LINES ? "lines" : undefined;
}

export const LINES = "application/x-ndjson";

type Read<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

/** The body of a request as text. A wrong byte is refused: what is put in its place elsewhere, nobody has sent. */
export async function sentText(c: Context): Promise<Read<string>> {
  const value = decoded(await c.req.arrayBuffer());
  return value === undefined ? malformed("The body is not UTF-8.") : { ok: true, value };
}

/** The body of a request as JSON. */
export async function sentJson(c: Context): Promise<Read<unknown>> {
  const text = await sentText(c);
  return text.ok ? parsed(text.value) : text;
}

/** A text as JSON in which no key is given twice. */
export function parsed(text: string): Read<unknown> {
  if (text.trim() === "") return malformed("The body is empty; a JSON object was expected.");
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const place = /\bposition \d+/.exec(String(error))?.[0];
    const where = place === undefined ? "" : ` at ${place}`;
    return malformed(`The body cannot be read as JSON${where}. NaN and Infinity are no JSON numbers.`);
  }
  const [first, ...more] = repeatedKeys(text);
  if (first === undefined) return { ok: true, value };
  const errors = [first, ...more];
  return {
    ok: false,
    problem: problem("invalid-request", `${first.path}: expected ${first.expected}.`, { errors }),
  };
}

function malformed(detail: string): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: problem("malformed-json", detail) };
}

/** A line of a stream, or why it cannot be read. */
export type SentLine = { readonly text: string } | { readonly fault: "too-long" | "not-utf-8" };

/** The lines of a stream, read as they are asked for. Holds one line and one chunk at most: of a line beyond `most` bytes nothing is kept. */
export async function* linesOf(
  stream: ReadableStream<Uint8Array>,
  most: number,
): AsyncGenerator<SentLine, void, undefined> {
  const reader = stream.getReader();
  const line = gathering(most);
  try {
    for (let chunk = await reader.read(); !chunk.done; chunk = await reader.read()) {
      let rest = chunk.value;
      for (let end = rest.indexOf(NEWLINE); end >= 0; end = rest.indexOf(NEWLINE)) {
        line.add(rest.subarray(0, end));
        yield line.take();
        rest = rest.subarray(end + 1);
      }
      line.add(rest);
    }
    if (line.any()) yield line.take();
  } finally {
    await reader.cancel();
  }
}

const NEWLINE = 0x0a;

interface Gathering {
  readonly add: (bytes: Uint8Array) => void;
  readonly any: () => boolean;
  /** The line so far; the next begins. */
  readonly take: () => SentLine;
}

function gathering(most: number): Gathering {
  let pieces: Uint8Array[] = [];
  let length = 0;
  return {
    add: (bytes) => {
      length += bytes.length;
      if (length > most) pieces = [];
      else if (bytes.length > 0) pieces.push(bytes);
    },
    any: () => length > 0,
    take: () => {
      const [tooLong, text] = [length > most, decoded(joined(pieces))];
      pieces = [];
      length = 0;
      if (tooLong) return { fault: "too-long" };
      return text === undefined ? { fault: "not-utf-8" } : { text };
    },
  };
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

const utf8 = new TextDecoder("utf-8", { fatal: true });

/** Bytes as text, without a byte order mark that they begin with (RFC 8259, section 8.1, lets a parser pass over it); nothing where they are not UTF-8. */
function decoded(bytes: ArrayBuffer | Uint8Array): string | undefined {
  try {
    return utf8.decode(bytes);
  } catch {
    return undefined;
  }
}
