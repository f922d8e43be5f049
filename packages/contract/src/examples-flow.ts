/** Named examples of a river that rises or falls. River, stop, gauge and notes are invented. */

import { cfs, cumecs, type Examples, ft, m } from "./examples-units.js";

const fps = (value: number) => ({ value, unit: "ft/s" });
const stop = { depth: ft(3), surfaceSpeed: fps(3), bed: "cobble", temperature: { value: 54, unit: "degF" } };
const metric = { depth: m(0.9), surfaceSpeed: { value: 0.9, unit: "m/s" }, bed: "cobble" };

export const flowExamples: Examples = {
  rising: {
    summary: "Larkspur Bend, an invented stop, after rain: 180 to 320 ft3/s by published exponents",
    value: {
      water: stop,
      width: ft(40),
      measuredAt: cfs(180),
      now: cfs(320),
      wader: { height: { value: 70, unit: "in" }, mass: { value: 78, unit: "kg" } },
      units: "us",
    },
  },
  pairs: {
    summary: "Your own notes of the same stop at three other flows",
    value: {
      water: metric,
      measuredAt: cumecs(5.1),
      now: cumecs(8),
      method: {
        by: "pairs",
        pairs: [
          { discharge: cumecs(3.2), depth: m(0.74), surfaceSpeed: { value: 0.78, unit: "m/s" } },
          { discharge: cumecs(7), depth: m(1.01), surfaceSpeed: { value: 1.02, unit: "m/s" } },
          { discharge: cumecs(10.4), depth: m(1.2), surfaceSpeed: { value: 1.13, unit: "m/s" } },
        ],
      },
    },
  },
  section: {
    summary: "A section with slope and resistance, and the best setup at the new flow",
    value: {
      water: metric,
      measuredAt: cumecs(9),
      now: cumecs(6),
      method: {
        by: "section",
        section: { shape: "trapezoidal", bottomWidth: m(10), leftRun: 2, rightRun: 2 },
        friction: { law: "manning", n: 0.035 },
        slope: 0.004,
      },
      rank: true,
      top: 1,
    },
  },
  gauge: {
    summary: "A gauge as CSV, read when the stop was measured and now",
    value: {
      water: metric,
      gauge: {
        series: {
          form: "csv",
          unit: "m3/s",
          text: "time,value,flag\n2031-05-04T06:00:00Z,5.0,\n2031-05-04T07:00:00Z,5.2,\n2031-05-04T08:00:00Z,,\n2031-05-04T09:00:00Z,5.9,\n2031-05-04T10:00:00Z,99,debris\n2031-05-04T11:00:00Z,6.8,\n",
        },
        measuredAt: "2031-05-04T06:30:00Z",
        now: "2031-05-04T11:00:00Z",
      },
      ground: "normal",
    },
  },
};
