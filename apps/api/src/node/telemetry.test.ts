/** Spans as an exporter of OpenTelemetry's own, in memory, gets them. */

import { InMemorySpanExporter } from "@opentelemetry/sdk-trace-base";
import { expect, test } from "vitest";
import { readConfig } from "../service/config.js";
import { createService } from "../service/service.js";
import { tracing } from "./telemetry.js";

// the example of the W3C's Trace Context, section 3.2
const traceparent = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";
const secret = "the secret of the caller";

test("one span for each request, with the template of its path and its status, and nothing that was sent", async () => {
  const exporter = new InMemorySpanExporter();
  const { around, flush } = await tracing(exporter);
  const reading = readConfig({});
  if (!reading.ok) throw new Error(reading.mistakes.join());
  const service = createService(reading.config, { around, log: () => {} });
  const headers = { authorization: `Bearer ${secret}`, "x-secret": secret, traceparent };
  await service.request("/v1/relations/Chow1959", { headers });
  await service.request("/v1/columns", { method: "POST", body: secret, headers });
  const keep: unknown[] = [];
  exporter.shutdown = async () => void keep.push(...exporter.getFinishedSpans());
  await flush();
  const spans = keep as ReturnType<typeof exporter.getFinishedSpans>;
  expect(spans.map(({ name, attributes }) => [name, attributes["http.response.status_code"]])).toEqual([
    ["GET /v1/relations/:key", 200],
    ["POST /v1/columns", 415],
  ]);
  expect(spans.map((span) => [span.spanContext().traceId, span.parentSpanContext?.spanId])).toEqual(
    spans.map(() => ["4bf92f3577b34da6a3ce929d0e0e4736", "00f067aa0ba902b7"]),
  );
  expect(JSON.stringify(spans.map(({ attributes, events }) => [attributes, events]))).not.toContain(secret);
});
