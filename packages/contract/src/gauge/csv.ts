/** A gauge series as plain CSV (RFC 4180): a header with `time` and `value`, and `flag` if there is one. */

import { csvParseRows } from "d3-dsv";
import { RefusedError } from "../refusal.js";
import type { Row } from "./series.js";

const known = ["time", "value", "flag"];

/** The rows of a CSV text; an empty value is missing. Throws RefusedError at `path` for another header. */
export function rowsOfCsv(text: string, path: string): readonly Row[] {
  // by rows: objects would be made by generated code, which hosts at the edge forbid
  const [first = [], ...lines] = csvParseRows(text.replace(/^\uFEFF/, "").trim());
  const header = first.map((name) => name.trim());
  const wrong =
    header.find((name) => !known.includes(name)) ?? known.slice(0, 2).find((name) => !header.includes(name));
  if (wrong === undefined) {
    const cell = (line: readonly string[], name: string): string => (line[header.indexOf(name)] ?? "").trim();
    return lines.map((line) => ({
      time: cell(line, "time"),
      value: cell(line, "value"),
      flag: cell(line, "flag"),
    }));
  }
  throw new RefusedError("impossible", `${path}: expected a header of time, value and, if any, flag.`, {
    path,
    expected: "a header of time, value and, if any, flag",
    received: JSON.stringify(header.join(",").slice(0, 80)),
  });
}
