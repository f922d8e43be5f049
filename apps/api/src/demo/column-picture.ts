/** The water column as bars of speed against height. */

import type { ReadColumnResponse } from "@plumbdrift/contract";
import { level, said } from "./say.js";

const longest = 44;

/** One line per height, the surface first: the bar is as long as the water there is quick. */
export function columnPicture({ speeds, column }: ReadColumnResponse): string {
  const fastest = Math.max(...speeds.map(({ speed }) => speed.value), column.surfaceSpeed.value, 1e-9);
  const every = Math.max(1, Math.floor(speeds.length / 8));
  const rows = speeds.filter((_, i) => i % every === 0 || i === speeds.length - 1);
  return rows
    .map(({ heightAboveBed: height, speed }) => {
      const bar = "=".repeat(Math.max(0, Math.round((longest * speed.value) / fastest)));
      const label = `${level(height)}`.padStart(8);
      return `${label}  ${`${bar}>`.padEnd(longest + 2)} ${said(speed)}`;
    })
    .join("\n");
}
