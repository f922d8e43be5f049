/** Traces by OpenTelemetry, sent by OTLP over HTTP as the OTEL_ variables say. Loaded only when they say where to. */

import { httpInstrumentationMiddleware } from "@hono/otel";
import { propagation } from "@opentelemetry/api";
import { W3CTraceContextPropagator } from "@opentelemetry/core";
import { OTLPTraceExporter } from "@opentelemetry/exporter-trace-otlp-http";
import { defaultResource, resourceFromAttributes } from "@opentelemetry/resources";
import { BasicTracerProvider, BatchSpanProcessor, type SpanExporter } from "@opentelemetry/sdk-trace-base";
import { ENGINE_VERSION } from "@plumbdrift/contract";
import type { MiddlewareHandler } from "hono";

export interface Tracing {
  readonly around: readonly MiddlewareHandler[];
  /** Sends what is still held back. */
  readonly flush: () => Promise<void>;
}

/** One span per request: method, template of the path, status. No body, no header. */
export async function tracing(exporter: SpanExporter = new OTLPTraceExporter()): Promise<Tracing> {
  propagation.setGlobalPropagator(new W3CTraceContextPropagator());
  const named = resourceFromAttributes({ "service.name": process.env.OTEL_SERVICE_NAME ?? "plumbdrift" });
  const tracerProvider = new BasicTracerProvider({
    resource: defaultResource().merge(named),
    spanProcessors: [new BatchSpanProcessor(exporter)],
  });
  return {
    around: [
      httpInstrumentationMiddleware({
        tracerProvider,
        serviceName: "plumbdrift",
        serviceVersion: ENGINE_VERSION,
        captureActiveRequests: false,
      }),
    ],
    flush: () => tracerProvider.shutdown().catch(() => {}),
  };
}
