/** Discharge from depths and speeds measured across a stream: the velocity-area methods, each under its own name. */

import type { SourceKey } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  QuantityError,
  requireWithin,
  type SquareMetres,
  squareMetres,
} from "../units/index.js";

/** One vertical: distance along the tape, depth there, and the mean speed over that depth. The first and the last are the water's edges. */
export interface Vertical {
  readonly station: Metres;
  readonly depth: Metres;
  readonly speed: MetresPerSecond;
}

/** How much width the mid-section method gives to the verticals next to the edges.
 *  half-spacing: half of each spacing, so that a triangle beside a sloping edge is partly lost [Rantz1982];
 *  triangle: (W1 + W2/2)²/(2 W1), the triangle of a side slope that goes on from the edge to half of the next spacing [Subramanya2008]. */
export type EdgeRule = "half-spacing" | "triangle";

/** The part of the section that one vertical (mid-section) or one pair (mean-section) stands for. */
export interface Panel {
  /** Middle of the vertical or of the pair. */
  readonly station: Metres;
  readonly width: Metres;
  readonly area: SquareMetres;
  readonly speed: MetresPerSecond;
  readonly discharge: CubicMetresPerSecond;
}

export interface MeasuredDischarge {
  readonly method: "mid-section, half-spacing" | "mid-section, triangle" | "mean-section";
  readonly relation: SourceKey;
  readonly discharge: CubicMetresPerSecond;
  /** Area as the method counts it. */
  readonly area: SquareMetres;
  readonly width: Metres;
  /** Discharge over area. */
  readonly meanSpeed: MetresPerSecond;
  readonly panels: readonly Panel[];
  /** Largest share of the discharge in one panel: usual practice keeps it under a tenth. */
  readonly greatestShare: number;
}

/** Q = Σ v d (half of the spacing to the left + half to the right), the edges under a stated rule. [Rantz1982], [Subramanya2008]
 *  Throws QuantityError for fewer than three verticals, stations that do not rise, a negative depth, no water, or the triangle rule at an edge with depth.
 *  @example midSection([{ station: metres(0), depth: metres(0), speed: metresPerSecond(0) }, { station: metres(2), depth: metres(1), speed: metresPerSecond(0.5) }, { station: metres(4), depth: metres(0), speed: metresPerSecond(0) }], "half-spacing").discharge // => 1 */
export function midSection(verticals: readonly Vertical[], edges: EdgeRule): MeasuredDischarge {
  checkVerticals(verticals);
  const last = verticals.length - 1;
  const gap = (i: number): number => stationAt(verticals, i + 1) - stationAt(verticals, i);
  const widthOf = (i: number): number => {
    const before = i === 0 ? 0 : gap(i - 1);
    const after = i === last ? 0 : gap(i);
    if (edges === "half-spacing" || i === 0 || i === last) return (before + after) / 2;
    if (last === 2) return ofTriangle(before, 0) + ofTriangle(after, 0);
    if (i === 1) return ofTriangle(before, after);
    return i === last - 1 ? ofTriangle(after, before) : (before + after) / 2;
  };
  if (edges === "triangle") requireDryEdges(verticals);
  const panels = verticals.map((v, i) => panel(v.station, widthOf(i), v.depth, v.speed));
  const relation = edges === "triangle" ? "Subramanya2008" : "Rantz1982";
  return total(`mid-section, ${edges}`, relation, verticals, panels);
}

/** Q = Σ (v1 + v2)/2 (d1 + d2)/2 b over neighbouring verticals. At a dry edge it keeps a quarter of v d b. [ISO748]
 *  Throws QuantityError as `midSection` does.
 *  @example meanSection([{ station: metres(0), depth: metres(0), speed: metresPerSecond(0) }, { station: metres(2), depth: metres(1), speed: metresPerSecond(0.5) }, { station: metres(4), depth: metres(0), speed: metresPerSecond(0) }]).discharge // => 0.5 */
export function meanSection(verticals: readonly Vertical[]): MeasuredDischarge {
  checkVerticals(verticals);
  const panels = verticals.slice(1).map((right, i) => {
    const left = verticals[i] ?? right;
    const width = right.station - left.station;
    return panel(
      (left.station + right.station) / 2,
      width,
      (left.depth + right.depth) / 2,
      (left.speed + right.speed) / 2,
    );
  });
  return total("mean-section", "ISO748", verticals, panels);
}

/** Width that makes a depth at W1 from a dry edge, with W2 on its other side, stand for the triangle over W1 + W2/2. */
function ofTriangle(toEdge: number, inwards: number): number {
  return (toEdge + inwards / 2) ** 2 / (2 * toEdge);
}

function panel(station: number, width: number, depth: number, speed: number): Panel {
  return {
    station: metres(station),
    width: metres(width),
    area: squareMetres(width * depth),
    speed: metresPerSecond(speed),
    discharge: cubicMetresPerSecond(width * depth * speed),
  };
}

function total(
  method: MeasuredDischarge["method"],
  relation: SourceKey,
  verticals: readonly Vertical[],
  panels: readonly Panel[],
): MeasuredDischarge {
  const discharge = panels.reduce((sum, p) => sum + p.discharge, 0);
  const area = panels.reduce((sum, p) => sum + p.area, 0);
  if (!(area > 0)) throw new QuantityError("depth of the verticals", "above 0 m in one of them", area);
  const greatest = Math.max(...panels.map((p) => Math.abs(p.discharge)));
  return {
    method,
    relation,
    discharge: cubicMetresPerSecond(discharge),
    area: squareMetres(area),
    width: metres(stationAt(verticals, verticals.length - 1) - stationAt(verticals, 0)),
    meanSpeed: metresPerSecond(discharge / area),
    panels,
    greatestShare: discharge === 0 ? 0 : greatest / Math.abs(discharge),
  };
}

function stationAt(verticals: readonly Vertical[], i: number): number {
  return verticals[i]?.station ?? Number.NaN;
}

function checkVerticals(verticals: readonly Vertical[]): void {
  if (verticals.length < 3) throw new QuantityError("verticals", "three or more", verticals.length);
  verticals.forEach(({ station, depth, speed }, i) => {
    const before = i === 0 ? Number.NEGATIVE_INFINITY : stationAt(verticals, i - 1);
    if (!(station > before))
      throw new QuantityError(`station of vertical ${i + 1}`, `beyond ${before} m`, station);
    requireWithin(`depth of vertical ${i + 1}`, depth, 0, 1000, "m");
    requireWithin(`speed of vertical ${i + 1}`, speed, -20, 20, "m/s");
  });
}

function requireDryEdges(verticals: readonly Vertical[]): void {
  for (const edge of [verticals.at(0), verticals.at(-1)]) {
    if (edge?.depth !== 0)
      throw new QuantityError("depth at the edge, for the triangle rule", "0 m", edge?.depth);
  }
}
