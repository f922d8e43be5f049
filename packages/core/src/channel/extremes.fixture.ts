/** Sections, flows, gaugings and beds drawn from sizes that are nothing, a billionth, a billion, below nothing, or plain. */
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  squareMetresPerSecond,
} from "../units/index.js";
import * as channel from "./index.js";
import { pointsOf } from "./sections.fixture.js";

/** Draws what one case needs, in order; the same numbers draw the same case. */
export interface Draw {
  readonly number: () => number;
  readonly of: <T>(...choices: readonly [T, ...T[]]) => T;
  readonly list: <T>(make: (i: number) => T) => readonly T[];
}

const sizes = [1, 0.3, 2, 40, 0.001, 1e-9, 1e9, 0, -1e-9, -1, -1e9, 5, 0.01, 10, 0.1, 3] as const;

export function drawing(numbers: readonly number[]): Draw {
  let next = 0;
  const index = (count: number): number => (numbers[next++ % numbers.length] ?? 0) % count;
  const draw: Draw = {
    number: () => sizes[index(sizes.length)]!,
    of: (...choices) => choices[index(choices.length)]!,
    list: (make) => Array.from({ length: index(7) }, (_, i) => make(i)),
  };
  return draw;
}

export const m = (d: Draw): Metres => metres(d.number());
export const q = (d: Draw): CubicMetresPerSecond => cubicMetresPerSecond(d.number());
export const v = (d: Draw): MetresPerSecond => metresPerSecond(d.number());
export const survey = (d: Draw): channel.Survey => ({
  points: pointsOf(
    d.of<() => readonly (readonly [number, number])[]>(
      () => d.list(() => [d.number(), d.number()]),
      () => [...d.list(() => [d.number(), d.number()] as const)].sort(([a], [b]) => a - b),
      () => [
        [0, d.number()],
        [0, 0],
        [d.number(), 0],
        [1e9, d.number()],
      ],
      () => [
        [0, 2],
        [1, 1e-9],
        [2, 0],
        [3 + Math.abs(d.number()), 2],
      ],
      () => [
        [0, 3],
        [0, 0],
        [5, 0],
        [5, 3],
      ],
    )(),
  ),
  ...d.of(
    {},
    {
      zones: [
        { from: metres(0), manning: 0.03 },
        { from: metres(1), manning: d.number() },
      ],
    },
  ),
  ...d.of({}, { walls: "vertical" as const }),
  ...d.of({}, { ineffective: { left: { station: metres(1), elevation: m(d) } } }),
});
export const section = (d: Draw): channel.CrossSection =>
  d.of<() => channel.CrossSection>(
    () => channel.rectangularSection(m(d)),
    () => channel.triangularSection(d.number(), d.number()),
    () => channel.trapezoidalSection(m(d), d.number(), d.number()),
    () => channel.circularSection(m(d)),
    () => channel.parabolicSection(m(d), m(d)),
    () => channel.surveyedSection(survey(d)),
  )();
export const friction = (d: Draw): channel.Friction =>
  d.of<() => channel.Friction>(
    () => ({ law: "manning", n: d.number() }),
    () => ({ law: "manning-zones", method: d.of("divided", "felkel", "pavlovskii", "horton-einstein") }),
    () => ({ law: "chezy", c: d.number() }),
    () => ({ law: "darcy", f: d.number() }),
    () => ({ law: "rough", roughness: m(d) }),
    () => ({ law: "smooth", viscosity: squareMetresPerSecond(d.number()) }),
    () => ({ law: "transitional", roughness: m(d), viscosity: squareMetresPerSecond(d.number()) }),
  )();
export const flow = (d: Draw): channel.Flow => ({
  section: section(d),
  discharge: q(d),
  ...d.of(
    {},
    { gravity: d.number() },
    { energyCoefficient: d.number() },
    { momentumCoefficient: d.number() },
  ),
});
export const stream = (d: Draw): channel.Channel => ({
  section: section(d),
  friction: friction(d),
  slope: d.number(),
  ...d.of({}, {}, { gravity: d.number() }),
});
export const reach = (d: Draw): channel.ReachFlow => ({ ...stream(d), discharge: q(d) });
export const verticals = (d: Draw): readonly channel.Vertical[] => {
  const step = d.number();
  return d.list((i) => ({ station: metres(d.of(step * i, step * i, d.number())), depth: m(d), speed: v(d) }));
};
export const gaugings = (d: Draw): readonly channel.Gauging[] => {
  const [step, weighted] = [d.number(), d.of(false, false, true)];
  return d.list((i) => ({
    stage: metres(d.of(step * (i + 1), step * (i + 1), d.number())),
    discharge: q(d),
    ...(weighted ? { uncertainty: d.number() } : {}),
  }));
};
export const zero = (d: Draw): channel.ZeroFlow => d.of({ stage: m(d) }, { from: m(d), to: m(d) });
export const day = (d: Draw): channel.StationMeasurement => ({
  discharge: q(d),
  width: m(d),
  meanDepth: m(d),
});
export const geometry = (d: Draw): channel.HydraulicGeometry =>
  d.of(
    () => channel.geometryOf(day(d), "at a station"),
    () => channel.fitGeometry(d.list(() => day(d))),
  )();
export const bed = (d: Draw): channel.Bed => ({
  hydraulicRadius: m(d),
  ...d.of({}, { depth: m(d) }),
  ...d.of({}, { slope: d.number() }),
  ...d.of({}, { d50: m(d) }),
  ...d.of({}, { d84: m(d), d90: m(d) }),
  ...d.of({}, { roughness: m(d) }),
});
export const control = (d: Draw): channel.Control =>
  d.of<channel.Control>("critical", "normal", { depth: m(d) });
