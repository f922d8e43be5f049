/** The client against the app in this process. */
import { app } from "@plumbdrift/api";
import { operations } from "@plumbdrift/contract";
import { describe, expect, expectTypeOf, test } from "vitest";
import type { Item, Outcome } from "./batch.js";
import { type Plumbdrift, plumbdrift } from "./client.js";
import { ForeignAnswerError, type Problem, ProblemError } from "./problem.js";
import { cubicFeetPerSecond, feet, feetPerSecond, inches } from "./quantities.js";
import type { AnswerOf, OperationId, RequestOf, Schemas } from "./types.js";

const baseUrl = "http://api.example.org";
const api = plumbdrift({ baseUrl, fetch: async (request) => app.request(request) });
const water = { depth: feet(3), surfaceSpeed: feetPerSecond(3), bed: "cobble" } as const;

const answering = (body: string, status: number, type = "application/json"): Plumbdrift =>
  plumbdrift({
    baseUrl,
    fetch: async () => new Response(body, { status, headers: { "content-type": type } }),
  });

const thrownBy = (call: Promise<unknown>): Promise<unknown> =>
  call.then(
    () => undefined,
    (error) => error,
  );

describe("a call", () => {
  test.each(operations.map(({ id, examples }) => ({ id, value: Object.values(examples)[0]!.value })))(
    "$id answers its first example",
    async ({ id, value }) => {
      const call = api[id as OperationId] as (request: unknown) => Promise<{ readonly meta: object }>;
      expect((await call(value)).meta).toMatchObject({ units: expect.stringMatching(/^(si|us)$/) });
    },
  );

  test("asks and answers in the types of the document", async () => {
    const { settled } = await api.settleRig({
      water,
      rig: {
        float: { kind: "dry", size: 10, style: "foam" },
        sections: [
          {
            line: { kind: "tippet", material: "fluorocarbon", x: 5, length: inches(18) },
            sinker: { kind: "nymph", size: 16 },
          },
        ],
      },
      units: "us",
    });
    expect(settled.driftSpeed.unit).toBe("ft/s");
    expectTypeOf(settled.driftSpeed).toEqualTypeOf<Schemas["Speed"]>();
    expectTypeOf<AnswerOf<"settleRig">["settled"]["regime"]>().toEqualTypeOf<Schemas["Regime"]>();
  });

  test("does not compile with a speed for a depth, with a key too many, or with one missing", () => {
    expectTypeOf(water).toExtend<RequestOf<"readColumn">["water"]>();
    // @ts-expect-error a speed is no depth
    const wrong: RequestOf<"readColumn"> = { water: { ...water, depth: feetPerSecond(3) } };
    // @ts-expect-error no such key
    const more: RequestOf<"readColumn"> = { water, dpeth: feet(3) };
    // @ts-expect-error no water
    const less: RequestOf<"readColumn"> = {};
    expect([wrong, more, less]).toHaveLength(3);
  });

  test("sends the key where there is one", async () => {
    const seen: (string | null)[] = [];
    const fetch = async (request: Request) => {
      seen.push(request.headers.get("authorization"));
      return app.request(request);
    };
    await plumbdrift({ baseUrl, fetch, key: "a-key" }).readColumn({ water });
    await plumbdrift({ baseUrl, fetch }).readColumn({ water });
    expect(seen).toEqual(["Bearer a-key", null]);
  });

  test("ends when its signal does", async () => {
    const signal = AbortSignal.abort(new Error("enough"));
    const fetch = async (request: Request) => {
      request.signal.throwIfAborted();
      return app.request(request);
    };
    await expect(plumbdrift({ baseUrl, fetch }).readColumn({ water }, { signal })).rejects.toThrow("enough");
  });
});

describe("a failure", () => {
  test("throws the problem, whose code tells what it is", async () => {
    const error = await thrownBy(api.readColumn({ water: { ...water, depth: feet(-3) } }));
    expect(error).toBeInstanceOf(ProblemError);
    const { problem, message } = error as ProblemError;
    expect(problem).toMatchObject({ code: "invalid-request", status: 400 });
    expect(problem.errors.map(({ path }) => path)).toEqual(["/water/depth"]);
    expect(message).toBe(problem.detail);
  });

  test("narrows by its code", () => {
    type Status<C extends Problem["code"]> = Extract<Problem, { code: C }>["status"];
    expectTypeOf<Status<"over-budget">>().toEqualTypeOf<422>();
    expectTypeOf<Status<"not-found">>().toEqualTypeOf<404>();
    expectTypeOf<Problem["code"]>().toEqualTypeOf<Schemas["Problem"]["code"]>();
  });

  test.each([
    ["the page of a proxy", "<h1>Bad gateway</h1>", 502],
    ["another service", '{"message":"no"}', 404],
    ["nothing", "", 200],
  ])("throws ForeignAnswerError for %s", async (_, body, status) => {
    const error = await thrownBy(answering(body, status).readColumn({ water }));
    expect(error).toBeInstanceOf(ForeignAnswerError);
    expect(error).toMatchObject({ status });
  });

  test("a page that is not JSON with status 200 does not pass for an answer", async () => {
    const error = await thrownBy(answering("<h1>Sign in</h1>", 200, "text/html").readColumn({ water }));
    expect(error).toBeInstanceOf(ForeignAnswerError);
  });
});

describe("a batch", () => {
  test("has an outcome for each item, in the types of its operation", async () => {
    const [column, wrong, stream] = await api.batch([
      { operation: "readColumn", body: { water } },
      { operation: "readColumn", body: { water: { ...water, depth: feet(-3) } } },
      {
        operation: "scaleStream",
        body: {
          measurements: [{ discharge: cubicFeetPerSecond(60), width: feet(30), meanDepth: feet(1.1) }],
          discharges: [cubicFeetPerSecond(120)],
        },
      },
    ]);
    expectTypeOf(column).toEqualTypeOf<Outcome<"readColumn">>();
    expectTypeOf(stream).toEqualTypeOf<Outcome<"scaleStream">>();
    expect(stream.ok).toBe(true);
    expect(column.ok && column.answer).toEqual(await api.readColumn({ water }));
    expect(wrong).toMatchObject({ ok: false, problem: { code: "invalid-request", status: 400 } });
  });

  test("does not compile with a body of another operation", () => {
    // @ts-expect-error the body of readColumn has no rig
    const wrong: Item = { operation: "readColumn", body: { water, rig: {} } };
    expect(wrong.operation).toBe("readColumn");
  });

  test("that is refused as a whole is thrown", async () => {
    const error = await thrownBy(api.batch([]));
    expect(error).toBeInstanceOf(ProblemError);
    expect((error as ProblemError).problem.code).toBe("invalid-request");
  });
});

test("the plain client below reaches every path, with a result in place of a throw", async () => {
  const { data, error } = await api.http.GET("/v1/relations/{key}", {
    params: { path: { key: "NoSuchKey" } },
  });
  expect(data).toBeUndefined();
  expect(error).toMatchObject({ code: "not-found", status: 404 });
});
