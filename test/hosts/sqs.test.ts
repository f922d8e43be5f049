/** The consumer of an SQS queue, as Lambda invokes it: which records come again, and what is delivered for the others. */

import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { settleRig } from "@plumbdrift/contract";
import type { SQSBatchResponse, SQSEvent, SQSRecord } from "aws-lambda";
import { expect, test, vi } from "vitest";

interface Outcome {
  readonly id: string;
  readonly status: number;
  readonly body: object;
}

type Consumer = (event: SQSEvent) => Promise<SQSBatchResponse>;

interface Built {
  readonly consumer: (deliver: (outcome: Outcome) => Promise<void>) => Consumer;
  readonly handler: Consumer;
}

const { consumer, handler }: Built = await import(pathToFileURL(resolve("../../apps/api/dist/sqs.js")).href);
const body = Object.values(settleRig.examples)[0]?.value;
const asked = (id: string) => ({ id, operation: "settleRig", body });

/** A record as AWS documents it; account, queue and digests are invented. */
function record(messageId: string, sent: unknown): SQSRecord {
  return {
    messageId,
    receiptHandle: "AQEBwJnKyrHigUMZj6rYigCgxlaS3SLy0a",
    body: typeof sent === "string" ? sent : JSON.stringify(sent),
    attributes: {
      ApproximateReceiveCount: "1",
      SentTimestamp: "1775200500000",
      SenderId: "123456789012",
      ApproximateFirstReceiveTimestamp: "1775200500001",
    },
    messageAttributes: {},
    md5OfBody: "098f6bcd4621d373cade4e832627b4f6",
    eventSource: "aws:sqs",
    eventSourceARN: "arn:aws:sqs:eu-north-1:123456789012:plumbdrift-work",
    awsRegion: "eu-north-1",
  };
}

/** Works off records; `refusing` is the id of an outcome that cannot be delivered. */
async function workOff(records: readonly SQSRecord[], refusing = "") {
  const delivered: Outcome[] = [];
  const silent = vi.spyOn(console, "error").mockImplementation(() => {});
  const { batchItemFailures } = await consumer(async (outcome) => {
    if (outcome.id === refusing) throw new Error("nobody is there");
    delivered.push(outcome);
  })({ Records: [...records] });
  silent.mockRestore();
  return { delivered, failed: batchItemFailures.map(({ itemIdentifier }) => itemIdentifier) };
}

test("an answer is delivered under the name that the sender gave it", async () => {
  const { delivered, failed } = await workOff([record("m1", asked("stop 4"))]);
  expect(failed).toEqual([]);
  expect(delivered).toMatchObject([{ id: "stop 4", operation: "settleRig", status: 200 }]);
  expect(delivered[0]?.body).toHaveProperty("settled.regime");
});

test.each([
  ["no JSON", "{", 400, "malformed-json"],
  ["a key twice", '{"operation":"settleRig","operation":"readColumn"}', 400, "invalid-request"],
  ["no message", [1], 400, "invalid-request"],
  ["no operation of this name", { operation: "settleRigs", body }, 400, "invalid-request"],
  ["a name out of the prototype", { operation: "constructor", body }, 400, "invalid-request"],
  ["a body that does not fit", { operation: "settleRig", body: {} }, 400, "invalid-request"],
  [
    "a body that cannot hold together",
    {
      operation: "readColumn",
      body: { water: { ...(body as { water: object }).water, bed: "sand", d84: { value: 1, unit: "mm" } } },
    },
    422,
    "impossible",
  ],
])("%s is an outcome and does not come again", async (_name, sent, status, code) => {
  const { delivered, failed } = await workOff([record("m1", sent)]);
  expect(failed).toEqual([]);
  expect(delivered).toMatchObject([{ id: "m1", status, body: { code } }]);
});

test("only the record whose outcome cannot be delivered comes again", async () => {
  const records = [record("m1", asked("a")), record("m2", asked("b")), record("m3", "{")];
  const { delivered, failed } = await workOff(records, "b");
  expect(failed).toEqual(["m2"]);
  expect(delivered.map(({ id }) => id)).toEqual(["a", "m3"]);
});

test("without an address for results nothing is taken off the queue", async () => {
  vi.stubEnv("RESULTS_URL", "");
  expect(() => handler({ Records: [record("m1", asked("a"))] })).toThrow("RESULTS_URL");
  vi.unstubAllEnvs();
});

test("results are posted with the authorization that was given; another answer than 2xx fails the record", async () => {
  const posted: { headers: Headers; body: Outcome }[] = [];
  const { createServer } = await import("node:http");
  const server = createServer(async (request, response) => {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk);
    const outcome: Outcome = JSON.parse(Buffer.concat(chunks).toString());
    posted.push({ headers: new Headers(request.headers as Record<string, string>), body: outcome });
    response.writeHead(outcome.id === "b" ? 503 : 204).end();
  }).listen(0, "127.0.0.1");
  await new Promise((done) => server.once("listening", done));
  const address = server.address();
  const port = typeof address === "object" ? address?.port : undefined;
  vi.stubEnv("RESULTS_URL", `http://127.0.0.1:${port}/outcomes`);
  vi.stubEnv("RESULTS_AUTHORIZATION", "Bearer invented");
  const silent = vi.spyOn(console, "error").mockImplementation(() => {});
  const response = await handler({ Records: [record("m1", asked("a")), record("m2", asked("b"))] });
  silent.mockRestore();
  vi.unstubAllEnvs();
  server.close();
  expect(response).toEqual({ batchItemFailures: [{ itemIdentifier: "m2" }] });
  expect(posted.map(({ body }) => [body.id, body.status])).toEqual([
    ["a", 200],
    ["b", 200],
  ]);
  expect(posted[0]?.headers.get("authorization")).toBe("Bearer invented");
  expect(posted[0]?.headers.get("content-type")).toBe("application/json");
});
