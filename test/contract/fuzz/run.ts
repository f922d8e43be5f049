/** Sends random requests to the service and holds each answer to what every answer must be. */

import { MAX_ERRORS, MAX_WORK, operations } from "@plumbdrift/contract";
import fc from "fast-check";
import { ask, type Body } from "../api.js";
import { serviceWith } from "../service.js";
import { estimateOf, workShown } from "../work.js";
import { type Kind, kindsOf, type Sent } from "./kinds.js";
import { batchesOf, checkResults, lookUps } from "./others.js";

/** Every request comes from another address, so that the limiter has all it can hold to keep. */
const service = serviceWith({
  log: (line) => {
    if (line.includes('"event":"failure"')) failure = line;
  },
});

let sentSoFar = 0;
/** The last failure that was logged: what an answer does not say. */
let failure = "";

const alone = new Map(operations.map((operation) => [operation.id, kindsOf(operation)]));

/** Every target with its kinds: the operations, then batches, then what can be looked up. */
export const targets: ReadonlyMap<string, readonly Kind[]> = new Map([
  ...alone,
  ["computeBatch", batchesOf(alone)],
  ["look-ups", lookUps()],
]);

/** Rounds from one to before another. */
export interface Rounds {
  readonly from: number;
  readonly to: number;
}

/** How many requests of a kind some rounds have: its share in each, a fraction made up for in later ones. */
export function countOf({ share }: Kind, { from, to }: Rounds): number {
  return Math.round(to * share) - Math.round(from * share);
}

export interface Answered {
  /** How often each status came. */
  readonly statuses: ReadonlyMap<number, number>;
  /** The answers that are not as they must be, with what was sent. */
  readonly faults: readonly string[];
}

/** Sends requests of a kind and looks at their answers. */
export async function send(
  target: string,
  kind: Kind,
  asked: { readonly seed: number; readonly count: number },
): Promise<Answered> {
  const statuses = new Map<number, number>();
  const faults: string[] = [];
  const seed = seedOf(`${asked.seed} ${target} ${kind.name}`);
  for (const sent of fc.sample(kind.requests, { seed, numRuns: asked.count })) {
    try {
      const status = await sendOne(target, sent);
      if (kind.never.includes(status)) throw new Error(`answered ${status}`);
      statuses.set(status, (statuses.get(status) ?? 0) + 1);
    } catch (error) {
      const { method, headers, body } = sent.init;
      faults.push(
        `${error}\n${method} ${sent.path} ${JSON.stringify(headers)} ${String(body).slice(0, 2000)}`,
      );
    }
  }
  return { statuses, faults };
}

/** FNV-1a: a seed of its own for each kind of each target. */
function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash;
}

async function sendOne(target: string, { path, init }: Sent): Promise<number> {
  const headers = new Headers(init.headers);
  headers.set("x-forwarded-for", `2001:db8:${(sentSoFar++ % 65_536).toString(16)}::1`);
  if (isLines(init)) return sendLines(path, { ...init, headers });
  const { status, body } = await ask(path, { ...init, headers }, service);
  if (status === 200 && target === "computeBatch")
    checkResults(body.items, JSON.parse(String(init.body)).items);
  else if (status === 200 && target !== "look-ups") checkAnswer(target, body, init);
  else if (status >= 400) checkProblem(body);
  return status;
}

function isLines({ headers, method }: RequestInit): boolean {
  return method === "POST" && new Headers(headers).get("content-type") === "application/x-ndjson";
}

/** Lines are no JSON document: each is held to the document by itself. */
async function sendLines(path: string, init: RequestInit): Promise<number> {
  if (path !== "/v1/batch") return (await ask(path, init, service)).status;
  const response = await service.request(path, init);
  const text = await response.text();
  const parsed = (line: string): Body => {
    try {
      return JSON.parse(line);
    } catch {
      return undefined;
    }
  };
  const asked = String(init.body)
    .split("\n")
    .filter((line) => line.trim() !== "");
  const results = text
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line));
  if (response.status !== 200 || results.length !== asked.length)
    throw new Error(`${response.status} ${text}`);
  checkResults(results, asked.map(parsed));
  return response.status;
}

/** A number that is not finite cannot be written as JSON: it would be `null`, which no schema allows, or beyond a double. */
function checkAnswer(id: string, answer: Body, init: RequestInit): void {
  const asked = JSON.parse(textOf(init.body).replace(/^\ufeff/, ""));
  const [shown, estimate] = [workShown(id, answer, asked), estimateOf(id, asked)];
  if (!(shown <= estimate && estimate <= MAX_WORK))
    throw new Error(`did ${shown} units of work, counted ${estimate}`);
  if (answer.meta.request.length !== 32) throw new Error(`is called ${answer.meta.request}`);
  checkFinite(answer);
}

function textOf(body: RequestInit["body"]): string {
  return body instanceof Uint8Array ? new TextDecoder().decode(body) : String(body);
}

function checkFinite(value: Body): void {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error("a number that is not finite");
  if (typeof value === "object" && value !== null) Object.values(value).forEach(checkFinite);
}

/** A problem says where, briefly. */
function checkProblem({ errors, status, detail }: Body): void {
  if (status >= 500) throw new Error(`${detail} ${failure}`);
  if (errors.length > MAX_ERRORS) throw new Error(`${errors.length} errors`);
  for (const { path, received } of errors) {
    if (!/^($|\/|\?)/.test(path)) throw new Error(`a path ${path}`);
    if (received.length > 60) throw new Error(`echoes ${received}`);
  }
  if (JSON.stringify(errors).length > 30_000 || detail.length > 2_000)
    throw new Error("a problem as long as a book");
  if (Object.hasOwn(Object.prototype, "polluted")) throw new Error("the prototype of all objects is changed");
}
