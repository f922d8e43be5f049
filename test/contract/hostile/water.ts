/** Water that cannot be read or cannot be. */

import type { Hostile } from "./row.js";

export const inWater: readonly Hostile[] = [
  {
    name: "a unit of another dimension",
    change: (b) => {
      b.water.depth = { value: 3, unit: "s" };
    },
    status: 400,
    path: "/water/depth/unit",
    expected: "m, cm, mm, ft, in",
    suggestion: '"s" is a unit of time; a length is wanted here',
  },
  {
    name: "an unknown unit",
    change: (b) => {
      b.water.depth = { value: 3, unit: "fathom" };
    },
    status: 400,
    path: "/water/depth/unit",
    expected: "m, cm, mm, ft, in",
  },
  {
    name: "a unit by its everyday name",
    change: (b) => {
      b.water.depth = { value: 3, unit: "Feet" };
    },
    status: 400,
    path: "/water/depth/unit",
    expected: "m, cm, mm, ft, in",
    suggestion: 'did you mean "ft"?',
  },
  {
    name: "an everyday name of a unit of another dimension",
    change: (b) => {
      b.water.depth = { value: 3, unit: "seconds" };
    },
    status: 400,
    path: "/water/depth/unit",
    expected: "m, cm, mm, ft, in",
    suggestion: '"seconds" is a unit of time; a length is wanted here',
  },
  {
    name: "a key of the water beside it",
    change: (b) => {
      b.depth = b.water.depth;
    },
    status: 400,
    path: "/depth",
    expected: "a known key: water",
    suggestion: 'it belongs inside "water"',
  },
  {
    name: "a bare number where a quantity is due",
    change: (b) => {
      b.water.surfaceSpeed = 3;
    },
    status: 400,
    path: "/water/surfaceSpeed",
    expected: 'a speed such as {"value": 1, "unit": "m/s"}',
  },
  {
    name: "a number as text",
    change: (b) => {
      b.water.depth.value = "3";
    },
    status: 400,
    path: "/water/depth/value",
    expected: "a number",
  },
  {
    name: "a misspelt key",
    change: (b) => {
      b.water.dpeth = b.water.depth;
      delete b.water.depth;
    },
    status: 400,
    path: "/water/dpeth",
    expected: "a known key: depth",
    suggestion: 'did you mean "depth"?',
  },
  {
    name: "a missing field",
    change: (b) => {
      delete b.water.depth;
    },
    status: 400,
    path: "/water/depth",
    expected: "a length",
  },
  {
    name: "null",
    change: (b) => {
      b.water.depth = null;
    },
    status: 400,
    path: "/water/depth",
    expected: "a length",
  },
  {
    name: "a negative depth",
    change: (b) => {
      b.water.depth = { value: -1, unit: "ft" };
    },
    status: 400,
    path: "/water/depth",
    expected: "from 0.01 to 50 m",
  },
  {
    name: "1e308",
    change: (b) => {
      b.water.depth = { value: 1e308, unit: "m" };
    },
    status: 400,
    path: "/water/depth/value",
    expected: "at most 1000000000",
  },
  {
    name: "a misspelt grade of the bed",
    change: (b) => {
      b.water.bed = "cobbel";
    },
    status: 400,
    path: "/water/bed",
    expected: "one of silt, sand, granule, pebble, cobble, boulder",
    suggestion: 'did you mean "cobble"?',
  },
  {
    name: "too many points",
    change: (b) => {
      b.water.points = Array(201).fill({ heightAboveBed: { value: 0, unit: "m" } });
    },
    status: 400,
    path: "/water/points",
    expected: "at most 200 items",
  },
  {
    name: "an object where an array is due",
    change: (b) => {
      b.water.points = { length: 3 };
    },
    status: 400,
    path: "/water/points",
    expected: "array",
  },
  {
    name: "an unknown system of units",
    change: (b) => {
      b.units = "imperial";
    },
    status: 400,
    path: "/units",
    expected: "one of si, us",
  },
  {
    name: "no speed at all",
    change: (b) => {
      delete b.water.surfaceSpeed;
    },
    status: 422,
    path: "/water/surfaceSpeed",
    expected: "given, or timed floats, or measured points",
    received: "nothing",
  },
  {
    name: "a law without what it needs",
    change: (b) => {
      b.water.law = "log";
      delete b.water.bed;
    },
    status: 422,
    path: "/water/bed",
    expected: "given (or a roughness) for the log law",
  },
  {
    name: "the dip law without a width",
    change: (b) => {
      b.water.law = "dip";
    },
    status: 422,
    path: "/water/channelWidth",
    expected: "given for the dip law",
  },
  {
    name: "a point above the surface",
    change: (b) => {
      const point = (value: number) => ({
        heightAboveBed: { value, unit: "m" },
        speed: { value: 1, unit: "m/s" },
      });
      b.water.points = [point(0.1), point(40)];
    },
    status: 422,
    path: "/water/points",
    expected: "height above the bed of a measured point",
  },
  {
    name: "stones larger than a log law can bear",
    change: (b) => {
      b.water.law = "log";
      b.water.roughnessLength = { value: 10, unit: "m" };
    },
    status: 422,
    path: "/water/depth",
    expected: "use another law",
  },
  {
    name: "a surface slower than any number that can be divided by",
    change: (b) => {
      const point = (value: number) => ({
        heightAboveBed: { value, unit: "m" },
        speed: { value: 1, unit: "m/s" },
      });
      b.water.surfaceSpeed = { value: 5e-323, unit: "m/s" };
      b.water.points = [point(0.1), point(0.2)];
    },
    status: 422,
    path: "/water/depth",
    expected: "use another law",
  },
];
