/** The settled rig as characters: the stream runs to the right, one row is one layer of the water. */

import type { RankSetupsResponse, ReadColumnResponse } from "@plumbdrift/contract";
import { level, said } from "./say.js";

type Setup = RankSetupsResponse["setups"][number];
type Window = RankSetupsResponse["window"];

/** Characters are twice as high as wide. */
const columnsPerRow = 2;
const width = 40;

/** Dry `O`, line `/ | \`, nymph `@`, and the heights between which the fish takes as `:`. */
export function rigPicture(
  { settled }: Setup,
  window: Window,
  { speeds, column }: ReadColumnResponse,
): string {
  const depth = column.depth.value;
  const rowHeight = depth / (speeds.length - 1);
  const across = (downstream: number): number => (downstream / rowHeight) * columnsPerRow;
  const xs = settled.shape.map((p) => across(p.downstreamOfFloat.value));
  const middle = Math.round(width / 2 - (Math.min(...xs) + Math.max(...xs)) / 2);
  const column0 = Math.min(width - 2, Math.max(1, middle));
  const rowOf = (height: number): number => Math.round((depth - height) / rowHeight);
  const rows = speeds.map((_, i) =>
    Array<string>(width).fill(i === 0 ? "~" : i === speeds.length - 1 ? "_" : " "),
  );
  const put = (row: number, x: number, mark: string): void => {
    const at = Math.min(width - 1, Math.max(0, column0 + Math.round(x)));
    const line = rows[Math.min(rows.length - 1, Math.max(0, row))];
    if (line) line[at] = mark;
  };
  for (let row = 1; row < rows.length; row++) {
    const here = lineAt(settled.shape, depth - row * rowHeight);
    const above = lineAt(settled.shape, depth - (row - 1) * rowHeight);
    if (here !== undefined) put(row, across(here), stroke(across(here) - across(above ?? 0)));
  }
  for (const sinker of settled.sinkers) {
    put(rowOf(sinker.heightAboveBed.value), across(sinker.downstreamOfFloat.value), "@");
  }
  put(0, 0, "O");
  return rows.map((cells, i) => labelled(cells.join(""), speeds[i], window)).join("\n");
}

/** Where the line crosses a height, nothing below its lower end. */
function lineAt(shape: Setup["settled"]["shape"], height: number): number | undefined {
  for (let i = 1; i < shape.length; i++) {
    const [a, b] = [shape[i - 1], shape[i]];
    if (!a || !b || b.heightAboveBed.value > height || a.heightAboveBed.value < height) continue;
    const fall = a.heightAboveBed.value - b.heightAboveBed.value;
    const share = fall > 0 ? (a.heightAboveBed.value - height) / fall : 0;
    return a.downstreamOfFloat.value + share * (b.downstreamOfFloat.value - a.downstreamOfFloat.value);
  }
  return undefined;
}

function stroke(step: number): string {
  if (Math.abs(step) < 0.5) return "|";
  return step < 0 ? "/" : "\\";
}

function labelled(
  cells: string,
  speed: ReadColumnResponse["speeds"][number] | undefined,
  window: Window,
): string {
  if (speed === undefined) return cells;
  const { value } = speed.heightAboveBed;
  const fish = value >= window.low.value && value <= window.high.value ? ":" : " ";
  return `${level(speed.heightAboveBed).padStart(8)} ${cells} ${fish}  ${said(speed.speed)}`.trimEnd();
}
