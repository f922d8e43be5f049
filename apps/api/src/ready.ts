/** Whether this host computes what it should: three published values, computed anew at every call through the whole of an operation. */

import { ENGINE_VERSION, type OperationId, type Ready } from "@plumbdrift/contract";
import type { Context, Handler } from "hono";
import type { Find } from "./operations/index.js";
import { refuse } from "./refuse.js";

interface Check {
  readonly operation: OperationId;
  readonly body: object;
  /** Where the answer says the quantity. */
  readonly at: readonly string[];
  readonly source: string;
  /** The digits as printed, in `unit`. */
  readonly printed: string;
  readonly unit: string;
  readonly tolerance: number;
}

const m = (value: number): object => ({ value, unit: "m" });
const rectangular = (width: number): object => ({ shape: "rectangular", width: m(width) });

/** Cases U-01, U-20 and J-01 of test/conformance, where each is held against the core to the same digits. */
const checks: readonly Check[] = [
  {
    operation: "carryFlow",
    body: {
      section: rectangular(5),
      friction: { law: "manning", n: 0.015 },
      slope: 0.0025,
      depth: m(0.8),
    },
    at: ["discharge"],
    source: "San Diego State University, CIV E 530, midterm 2, sp07 problem 1",
    printed: "9.548",
    unit: "m3/s",
    tolerance: 0.001, // the source rounded the speed first
  },
  {
    operation: "findDepth",
    body: {
      section: rectangular(3),
      friction: { law: "manning", n: 0.025 },
      slope: 0.002,
      discharge: { value: 5, unit: "m3/s" },
    },
    at: ["normal", "flows", "0", "depth"],
    source: "University of Leeds, CIVE3415, example sheet S2 (2024), problem E2.2",
    printed: "1.215",
    unit: "m",
    tolerance: 0.0005,
  },
  {
    operation: "jumpFlow",
    body: { section: rectangular(1), discharge: { value: 3, unit: "m3/s" }, before: m(0.56824) },
    at: ["jump", "after"],
    source: "San Diego State University, CIV E 530, midterm 2, sp04 problem 2",
    printed: "1.53",
    unit: "m",
    tolerance: 0.01, // the source rounded the ratio of depths to 2.7 first
  },
];

/** 503 when any value is off. */
export function ready(find: Find): Handler {
  return async (c: Context) => {
    const made: Ready["checks"][number][] = [];
    for (const { operation, body, at, source, printed, unit, tolerance } of checks) {
      const said = quantityAt(await computed(c, () => find(operation), body), at);
      const [published, got] = [`${printed} ${unit}`, `${said.value.toPrecision(6)} ${said.unit}`];
      const right = said.unit === unit && Math.abs(said.value - Number(printed)) <= tolerance;
      if (!right)
        return refuse(c, "unavailable", `${operation} computes ${got}; ${source}, has ${published}.`);
      made.push({ operation, source, published, computed: got });
    }
    const body: Ready = { status: "ready", engine: ENGINE_VERSION, checks: made };
    return c.json(body);
  };
}

/** The answer to a body; nothing where the engine fails. */
async function computed(c: Context, find: () => ReturnType<Find>, body: object): Promise<unknown> {
  try {
    const prepared = (await find()).prepare(body);
    return prepared.ok ? prepared.run() : undefined;
  } catch (error) {
    c.get("call")?.report(error);
    return undefined;
  }
}

/** The quantity at a place of an answer; NaN where there is none. */
function quantityAt(
  answer: unknown,
  at: readonly string[],
): { readonly value: number; readonly unit: string } {
  const found = at.reduce<unknown>(
    (value, key) => (value as Record<string, unknown> | undefined)?.[key],
    answer,
  );
  const { value = Number.NaN, unit = "" } = (found ?? {}) as { value?: number; unit?: string };
  return { value, unit };
}
