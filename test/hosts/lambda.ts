/** Requests as the events that AWS documents for API Gateway (payload 1.0 and 2.0) and for a load balancer. Every name in them is invented. */

import { gunzipSync } from "node:zlib";
import type { ALBEvent, ALBResult, APIGatewayProxyEvent, APIGatewayProxyEventV2 } from "aws-lambda";
import { type Reply, type Request, replyOf } from "./exchange.js";

export type LambdaHandler = (event: unknown) => Promise<ALBResult>;

const domain = "abcdefghij.execute-api.eu-north-1.amazonaws.com";
const forwarded = { "x-forwarded-for": "192.0.2.7", "x-forwarded-port": "443", "x-forwarded-proto": "https" };
const time = { requestTime: "03/Apr/2026:07:15:00 +0000", requestTimeEpoch: 1_775_200_500_000 };
const account = {
  accountId: "123456789012",
  apiId: "abcdefghij",
  domainName: domain,
  domainPrefix: "abcdefghij",
};

const headersOf = ({ headers }: Request, host: string) => ({ ...headers, ...forwarded, host });

const lists = (headers: Readonly<Record<string, string>>): Record<string, string[]> =>
  Object.fromEntries(Object.entries(headers).map(([name, value]) => [name, [value]]));

/** A REST API or an HTTP API with payload format 1.0. */
function gatewayV1(request: Request): APIGatewayProxyEvent {
  const { method, path, body } = request;
  const headers = headersOf(request, domain);
  return {
    resource: "/{proxy+}",
    path,
    httpMethod: method,
    headers,
    multiValueHeaders: lists(headers),
    queryStringParameters: null,
    multiValueQueryStringParameters: null,
    pathParameters: { proxy: path.slice(1) },
    stageVariables: null,
    requestContext: {
      ...account,
      ...time,
      authorizer: null,
      extendedRequestId: "JKJaXmPLvHcESHA=",
      httpMethod: method,
      identity: { ...noIdentity, sourceIp: "192.0.2.7", userAgent: "river-log/1.0" },
      path: `/prod${path}`,
      protocol: "HTTP/1.1",
      requestId: "c6af9ac6-7b61-11e6-9a41-93e8deadbeef",
      resourceId: "123456",
      resourcePath: "/{proxy+}",
      stage: "prod",
    },
    ...encoded(body ?? null),
  };
}

/** Text as it is; bytes in base 64, as a gateway passes on what it takes for no text. */
function encoded<T>(body: T | Uint8Array): { readonly body: T | string; readonly isBase64Encoded: boolean } {
  if (!(body instanceof Uint8Array)) return { body, isBase64Encoded: false };
  return { body: Buffer.from(body).toString("base64"), isBase64Encoded: true };
}

/** An HTTP API with payload format 2.0, or a function URL. A body may come in base 64. */
function gatewayV2(request: Request): APIGatewayProxyEventV2 {
  const { method, path, body } = request;
  return {
    version: "2.0",
    routeKey: "$default",
    rawPath: path,
    rawQueryString: "",
    headers: headersOf(request, domain),
    requestContext: {
      ...account,
      http: { method, path, protocol: "HTTP/1.1", sourceIp: "192.0.2.7", userAgent: "river-log/1.0" },
      requestId: "JKJaXmPLvHcESHA=",
      routeKey: "$default",
      stage: "$default",
      time: time.requestTime,
      timeEpoch: time.requestTimeEpoch,
    },
    ...(body === undefined ? {} : { body: Buffer.from(body).toString("base64") }),
    isBase64Encoded: body !== undefined,
  };
}

/** A load balancer; its health checks and requests have a target group instead of an API. */
function loadBalancer(request: Request): ALBEvent {
  const { method, path, body = "" } = request;
  const group = "arn:aws:elasticloadbalancing:eu-north-1:123456789012:targetgroup/plumb/49e9d65c45c6791a";
  return {
    requestContext: { elb: { targetGroupArn: group } },
    httpMethod: method,
    path,
    queryStringParameters: {},
    headers: headersOf(request, "plumb-1234567890.eu-north-1.elb.amazonaws.com"),
    ...encoded(body),
  };
}

const noIdentity = {
  accessKey: null,
  accountId: null,
  apiKey: null,
  apiKeyId: null,
  caller: null,
  clientCert: null,
  cognitoAuthenticationProvider: null,
  cognitoAuthenticationType: null,
  cognitoIdentityId: null,
  cognitoIdentityPoolId: null,
  principalOrgId: null,
  user: null,
  userArn: null,
};

export const events: Readonly<Record<string, (request: Request) => unknown>> = {
  "API Gateway v1": gatewayV1,
  "API Gateway v2": gatewayV2,
  "load balancer": loadBalancer,
};

/** What the gateway makes of a result, and a client of what is compressed. */
export function replyOfLambda({
  statusCode,
  headers,
  multiValueHeaders,
  body = "",
  isBase64Encoded,
}: ALBResult): Reply {
  const all = new Headers();
  for (const [name, value] of Object.entries(headers ?? {})) all.set(name, String(value));
  for (const [name, values] of Object.entries(multiValueHeaders ?? {})) all.set(name, values.join(", "));
  const bytes = Buffer.from(body, isBase64Encoded ? "base64" : "utf8");
  const whole = all.get("content-encoding") === "gzip" ? gunzipSync(bytes) : bytes;
  return replyOf(statusCode, all, whole.toString());
}
