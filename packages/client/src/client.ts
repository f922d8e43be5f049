/** One method for each computation of the API, and the plain client below them for everything else. */

import createClient, { type Client } from "openapi-fetch";
import { type Item, type Outcomes, outcomesOf } from "./batch.js";
import { operationPaths } from "./generated/tables.js";
import { type Fetch, type Patience, patient } from "./patience.js";
import { ForeignAnswerError, isProblem, ProblemError } from "./problem.js";
import type { AnswerOf, OperationId, paths, RequestOf, Schemas } from "./types.js";

export interface ClientOptions extends Patience {
  /** Where the API is: `https://flies.example.org`. */
  readonly baseUrl: string;
  /** The key to send as a bearer token, where the host asks for one. */
  readonly key?: string | undefined;
  /** What sends requests; the `fetch` of the platform unless given. */
  readonly fetch?: Fetch | undefined;
}

export interface CallOptions {
  /** Ends the call, and any wait before it is sent again. */
  readonly signal?: AbortSignal | undefined;
}

type Call<Id extends OperationId> = (request: RequestOf<Id>, options?: CallOptions) => Promise<AnswerOf<Id>>;

export interface Plumbdrift extends Readonly<{ [Id in OperationId]: Call<Id> }> {
  /** Many computations in one call. Throws for the batch as a whole only. */
  readonly batch: <const Items extends readonly Item[]>(
    items: Items,
    options?: CallOptions,
  ) => Promise<Outcomes<Items>>;
  /** Every path of the document, with a result of `data` or `error` in place of a throw. */
  readonly http: Client<paths>;
}

/** A client of one host. Its methods answer what the document says, and throw ProblemError or ForeignAnswerError;
 *  what `fetch` throws (no connection, aborted) passes through. */
export function plumbdrift(options: ClientOptions): Plumbdrift {
  const { baseUrl, key, fetch = (request) => globalThis.fetch(request), ...patience } = options;
  const headers = key === undefined ? {} : { authorization: `Bearer ${key}` };
  const http = createClient<paths>({ baseUrl, headers, fetch: patient(fetch, patience) });
  const calls = Object.entries(operationPaths).map(([id, path]) => [
    id,
    (body: unknown, given?: CallOptions) => post(http, path, body, given),
  ]);
  return {
    ...(Object.fromEntries(calls) as Omit<Plumbdrift, "batch" | "http">),
    batch: async (items, given) =>
      outcomesOf((await post(http, "/v1/batch", { items }, given)) as Schemas["BatchResponse"]),
    http,
  };
}

type Path = (typeof operationPaths)[OperationId] | "/v1/batch";

/** Which body goes with which path is said by the types of `Plumbdrift`; here it is any of them. */
async function post(
  http: Client<paths>,
  path: Path,
  body: unknown,
  { signal }: CallOptions = {},
): Promise<unknown> {
  const init = { body, ...(signal === undefined ? {} : { signal }) };
  const { data, error, response } = await http.POST(path, init as never).catch(notJson);
  if (response.ok && data !== undefined) return data;
  throw isProblem(error) ? new ProblemError(error) : new ForeignAnswerError(response.status);
}

/** A page of somebody else's that came with a status of success. */
function notJson(error: unknown): never {
  throw error instanceof SyntaxError ? new ForeignAnswerError(200) : error;
}
