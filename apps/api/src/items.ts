/** From an item of a batch, or a line of a stream, to what can be computed. */

import { idOf, itemOf, type Problem, problem, STREAM } from "@plumbdrift/contract";
import type { Prepared } from "./computation.js";
import type { Find } from "./operations/index.js";
import { problemFor } from "./refuse.js";
import { parsed, type SentLine } from "./sent.js";

interface Place {
  readonly index: number;
  readonly id?: string;
}

export type Understood = Prepared & { readonly place: Place };

export interface Reader {
  (item: unknown, index: number): Promise<Understood>;
  readonly line: (line: SentLine, index: number, number: number) => Promise<Understood>;
}

/** Reads items for these computations. Does not throw: what cannot be read is a problem at its place. */
export function readerOf(find: Find): Reader {
  const read = async (sent: unknown, index: number): Promise<Understood> => {
    const id = idOf(sent);
    const place = { index, ...(id === undefined ? {} : { id }) };
    const item = itemOf(sent);
    if (!item.ok) {
      const [first] = item.errors;
      const detail = `${first?.path || "The item"}: expected ${first?.expected}.`;
      return { ok: false, problem: problem("invalid-request", detail, { errors: [...item.errors] }), place };
    }
    try {
      const { prepare } = await find(item.body.operation);
      return { ...prepare(item.body.body), place };
    } catch (error) {
      return { ok: false, problem: problemFor(error), place };
    }
  };
  const line: Reader["line"] = async (sent, index, number) => {
    const fault = (said: Problem): Understood => ({ ok: false, problem: said, place: { index } });
    if ("fault" in sent) {
      return sent.fault === "too-long"
        ? fault(problem("too-large", `Line ${number} has more than ${STREAM.lineBytes} bytes.`))
        : fault(problem("malformed-json", `Line ${number} is not UTF-8.`));
    }
    const value = parsed(sent.text);
    if (value.ok) return read(value.value, index);
    const { detail } = value.problem;
    return fault({ ...value.problem, detail: `Line ${number}: ${detail.replace("The body", "It")}` });
  };
  return Object.assign(read, { line });
}
