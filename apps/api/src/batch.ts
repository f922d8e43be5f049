/** Many computations in one call, from a list to a list or from lines to lines. */

import { BATCH, type BatchResult, itemsOf, problem, STREAM, WORK_PER_CALL } from "@plumbdrift/contract";
import type { Context, Handler, MiddlewareHandler } from "hono";
import { accepts } from "hono/accepts";
import { type Call, charge } from "./call.js";
import { limitedTo } from "./compute.js";
import { type Reader, readerOf, type Understood } from "./items.js";
import type { Find } from "./operations/index.js";
import { problemFor, refuse, send, strayQuery } from "./refuse.js";
import { LINES, linesOf, sentAs, sentJson } from "./sent.js";

const whole = limitedTo(BATCH.bytes);

/** A list is read as a whole, lines are not. */
export const limitedBatch: MiddlewareHandler = (c, next) => (sentAs(c) === "lines" ? next() : whole(c, next));

export function batch(find: Find): Handler {
  const read = readerOf(find);
  return async (c) => {
    const stray = strayQuery(c, {});
    if (stray) return stray;
    const sent = sentAs(c);
    if (sent === undefined) {
      const types = `application/json or ${LINES}`;
      return refuse(
        c,
        "unsupported-media-type",
        `Send the body with the header Content-Type: ${types}, and not compressed.`,
      );
    }
    const answered = sent === "lines" ? [LINES] : ["application/json", LINES];
    const wanted = accepted(c, answered);
    if (wanted === "") {
      return refuse(c, "not-acceptable", `This is answered as ${answered.join(" or ")}.`);
    }
    if (sent === "lines")
      return streamed(c, ofLines(read, linesOf(c.req.raw.body ?? empty(), STREAM.lineBytes), c.get("call")));
    return ofList(c, read, wanted);
  };
}

/** Reads, understands and counts a whole list before it computes anything. */
async function ofList(c: Context, read: Reader, wanted: string): Promise<Response> {
  const sent = await sentJson(c);
  if (!sent.ok) return send(c, sent.problem);
  const decoding = itemsOf(sent.value);
  if (!decoding.ok) {
    const [first] = decoding.errors;
    return refuse(c, "invalid-request", `${first?.path}: expected ${first?.expected}.`, decoding.errors);
  }
  const items = await Promise.all(decoding.body.map((item, index) => read(item, index)));
  const work = items.reduce((sum, item) => sum + (item.ok ? item.work : 0), 0);
  if (work > BATCH.work) return refuse(c, "over-budget", overBatch(work, BATCH.work), [faultOf(work)]);
  const refused = await charge(c, Math.max(work, WORK_PER_CALL));
  if (refused !== undefined) return send(c, refused);
  const call = c.get("call");
  if (wanted === LINES) return streamed(c, computed(items, call));
  const results: BatchResult[] = [];
  for await (const result of computed(items, call)) results.push(result);
  c.header("Cache-Control", "no-store");
  return c.json({ items: results });
}

function overBatch(work: number, limit: number): string {
  return `The items ask for ${work} units of work; together they may ask for ${limit}.`;
}

function faultOf(work: number): { path: string; expected: string; received: string } {
  return {
    path: "/items",
    expected: `at most ${BATCH.work} units of work`,
    received: `${work} units of work`,
  };
}

/** Work after which others get their turn. */
const WORK_AT_A_STRETCH = 200_000;

async function* computed(
  items: Iterable<Understood>,
  call: Call | undefined,
): AsyncGenerator<BatchResult, void, undefined> {
  let stretch = 0;
  for (const item of items) {
    yield resultOf(item, call);
    stretch += item.ok ? item.work : 0;
    if (stretch < WORK_AT_A_STRETCH) continue;
    stretch = 0;
    await new Promise((resume) => setTimeout(resume));
  }
}

function resultOf(item: Understood, call: Call | undefined): BatchResult {
  if (!item.ok) return { ...item.place, status: item.problem.status, problem: item.problem };
  try {
    return { ...item.place, status: 200, result: item.run() };
  } catch (error) {
    const said = problemFor(error, call);
    return { ...item.place, status: said.status, problem: said };
  }
}

/** Reads a line, computes, answers a line; then only the next. */
async function* ofLines(
  read: Reader,
  lines: ReturnType<typeof linesOf>,
  call: Call | undefined,
): AsyncGenerator<BatchResult, void, undefined> {
  let number = 0;
  let index = 0;
  let work = 0;
  for await (const line of lines) {
    number++;
    if ("text" in line && line.text.trim() === "") continue;
    const item = await read.line(line, index, number);
    work += item.ok ? item.work : 0;
    if (index >= STREAM.lines || work > STREAM.work) {
      const limits = `${STREAM.lines} lines and ${STREAM.work} units of work`;
      const said = problem("over-budget", `A stream may have ${limits}: it ends before line ${number}.`);
      yield { index, status: said.status, problem: said };
      return;
    }
    const refused = await call?.charge(work);
    if (refused !== undefined) {
      yield { index, status: refused.status, problem: refused };
      return;
    }
    yield resultOf(item, call);
    index++;
  }
}

/** A line for each result, made when the client asks for it; nothing more is computed once the client has gone. */
function streamed(c: Context, results: AsyncGenerator<BatchResult, void, undefined>): Response {
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>(
    {
      pull: async (controller) => {
        const next = await results.next();
        if (next.done) controller.close();
        else controller.enqueue(encoder.encode(`${JSON.stringify(next.value)}\n`));
      },
      cancel: async () => void (await results.return()),
    },
    { highWaterMark: 0 },
  );
  // compressed, lines would wait for each other
  return c.body(body, 200, { "content-type": LINES, "cache-control": "no-store, no-transform" });
}

function empty(): ReadableStream<Uint8Array> {
  return new ReadableStream({ start: (controller) => controller.close() });
}

/** The type that the client likes best of those that can be answered; empty where it likes none. */
function accepted(c: Context, types: readonly string[]): string {
  const [first = ""] = types;
  return accepts(c, {
    header: "Accept",
    supports: [...types],
    default: first,
    match: (liked) => {
      const [best] = liked
        .filter(({ q }) => q > 0)
        .sort((a, b) => b.q - a.q)
        .map(({ type }) => (/^(\*|application)\/\*$/.test(type) ? first : types.find((one) => one === type)))
        .filter((type) => type !== undefined);
      return best ?? "";
    },
  });
}
