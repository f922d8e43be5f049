/** Bad input of every kind is answered with a problem that names the path and what was expected. */

import { MAX_ERRORS, operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { type Body, exampleOf, post } from "./api.js";

/** Where a hostile value goes, what it is, and what must be said of it. */
interface Hostile {
  readonly name: string;
  readonly change: (body: Body) => void;
  readonly status: 400 | 422;
  readonly path: string;
  readonly expected: string;
  readonly suggestion?: string;
}

const hostile: readonly Hostile[] = [
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
      b.water.depth = { value: 3, unit: "metres" };
    },
    status: 400,
    path: "/water/depth/unit",
    expected: "m, cm, mm, ft, in",
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
    expected: "no such key; known here: depth",
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
];

const inRig: readonly Hostile[] = [
  {
    name: "a rig without sections",
    change: (b) => {
      b.rig.sections = [];
    },
    status: 400,
    path: "/rig/sections",
    expected: "at least 1 items",
  },
  {
    name: "eleven sections",
    change: (b) => {
      b.rig.sections = Array(11).fill(b.rig.sections[0]);
    },
    status: 400,
    path: "/rig/sections",
    expected: "at most 10 items",
  },
  {
    name: "an unknown kind of float",
    change: (b) => {
      b.rig.float.kind = "balloon";
    },
    status: 400,
    path: "/rig/float/kind",
    expected: "one of dry, body",
  },
  {
    name: "a misspelt key of a kind",
    change: (b) => {
      b.rig.float.styl = "foam";
    },
    status: 400,
    path: "/rig/float/styl",
    expected: "known here: kind",
  },
  {
    name: "an odd hook",
    change: (b) => {
      b.rig.float.size = 11;
    },
    status: 422,
    path: "/rig/float",
    expected: "one of 6, 8, 10",
  },
  {
    name: "a tippet with an X rating and a diameter",
    change: (b) => {
      b.rig.sections[0].line.diameter = { value: 0.15, unit: "mm" };
    },
    status: 422,
    path: "/rig/sections/0/line/diameter",
    expected: "x or diameter",
  },
  {
    name: "a bead too large for its hook",
    change: (b) => {
      b.rig.sections[0].sinker.bead.diameter = { value: 8, unit: "mm" };
    },
    status: 422,
    path: "/rig/sections/0/sinker",
    expected: "bead diameter",
  },
  {
    name: "a line that floats",
    change: (b) => {
      b.rig.sections[0].line = {
        kind: "body",
        length: { value: 0.4, unit: "m" },
        diameter: { value: 0.2, unit: "mm" },
        density: { value: 920, unit: "kg/m3" },
      };
    },
    status: 422,
    path: "/rig/sections",
    expected: "density of the line",
  },
  {
    name: "a sinker that floats",
    change: (b) => {
      b.rig.sections[0].sinker = {
        kind: "body",
        mass: { value: 10, unit: "mg" },
        volume: { value: 100, unit: "mm3" },
        bead: { value: 3, unit: "mm" },
      };
    },
    status: 422,
    path: "/rig/sections",
    expected: "above 0",
  },
];

const fly = { size: 12, style: "foam" };
const smallBox = {
  dries: [fly],
  nymphs: [{ size: 16 }],
  tippets: [{ material: "nylon", x: 5 }],
  dropperLengths: [{ value: 18, unit: "in" }],
};
const boxed = (changed: object) => (b: Body) => {
  b.box = { ...smallBox, ...changed };
};

const inBox: readonly Hostile[] = [
  {
    name: "an empty box",
    change: boxed({ dries: [], nymphs: [] }),
    status: 400,
    path: "/box/dries",
    expected: "at least 1 items",
  },
  {
    name: "a box without a compartment",
    change: boxed({ nymphs: undefined }),
    status: 400,
    path: "/box/nymphs",
    expected: "an array",
  },
  {
    name: "a box of ten thousand flies",
    change: boxed({ dries: Array(10_000).fill(fly) }),
    status: 400,
    path: "/box/dries",
    expected: "at most 500 items",
  },
  {
    name: "a box with too many combinations",
    change: boxed({ dries: Array(300).fill(fly), nymphs: Array(200).fill({ size: 16 }) }),
    status: 422,
    path: "/box",
    expected: "at most 50000 candidates",
  },
  {
    name: "a nymph of no size in the box",
    change: boxed({ nymphs: [{ size: 16 }, { size: 13 }] }),
    status: 422,
    path: "/box/nymphs/1",
    expected: "one of 6, 8, 10",
  },
  {
    name: "a tippet without a diameter",
    change: boxed({ tippets: [{ material: "nylon" }] }),
    status: 422,
    path: "/box/tippets/0/diameter",
    expected: "x or diameter",
  },
  {
    name: "a control character in a name",
    change: boxed({ dries: [{ ...fly, name: "\u001b[31mred" }] }),
    status: 400,
    path: "/box/dries/0/name",
    expected: "no control characters",
  },
  {
    name: "a rig in hand without its dropper",
    change: (b) => {
      b.inHand = { dry: fly, nymph: { size: 16 }, tippet: { material: "nylon", x: 5 } };
    },
    status: 400,
    path: "/inHand/dropper",
    expected: "a length",
  },
];

const withFish: Hostile = {
  name: "a fish above the surface",
  change: (b) => {
    b.fish = { holdingHeight: { value: 9, unit: "ft" } };
  },
  status: 422,
  path: "/fish/holdingHeight",
  expected: "holding height",
};

const inDrift: readonly Hostile[] = [
  {
    name: "milliseconds, which are no unit here",
    change: (b) => {
      b.timeStep = { value: 1, unit: "ms" };
    },
    status: 400,
    path: "/timeStep/unit",
    expected: "one of s, min",
  },
  {
    name: "more work than one call may ask for",
    change: (b) => {
      b.duration = { value: 10, unit: "min" };
    },
    status: 422,
    path: "/timeStep",
    expected: "at most 500000 steps times points of line",
  },
  {
    name: "a nymph that lands farther off than the line is long",
    change: (b) => {
      b.cast = { sinkerDownstream: { value: 20, unit: "ft" } };
    },
    status: 422,
    path: "/cast",
    expected: "distance from the float to the lowest sinker",
  },
  {
    name: "a window upside down",
    change: (b) => {
      b.window = { low: { value: 2, unit: "ft" }, high: { value: 1, unit: "ft" } };
    },
    status: 422,
    path: "/window/high",
    expected: "upper edge of the window",
  },
];

async function expectProblem(path: string, { change, status, ...says }: Hostile): Promise<void> {
  const body = exampleOf(path);
  change(body);
  const reply = await post(path, body);
  expect(reply).toMatchObject({ status, type: "application/problem+json" });
  const errors: { path: string; expected: string; suggestion?: string }[] = reply.body.errors;
  const named = errors.find((error) => error.path === says.path);
  expect(errors.map((error) => error.path)).toContain(says.path);
  expect(named?.expected).toContain(says.expected);
  if (says.suggestion) expect(named?.suggestion).toBe(says.suggestion);
}

describe.each(operations.map(({ id, path }) => [id, path] as const))("%s", (id, path) => {
  test.each(hostile.map((row) => [row.name, row] as const))("%s", (_name, row) => expectProblem(path, row));

  const rows = [
    ...("rig" in exampleOf(path) ? inRig : []),
    ...(id === "rankSetups" ? [...inBox, withFish] : []),
    ...(id === "driftRig" ? [...inDrift, withFish] : []),
  ];
  test.each(rows.map((row) => [row.name, row] as const))("%s", (_name, row) => expectProblem(path, row));

  test.each([
    ["an empty body", "", "malformed-json"],
    ["half a body", '{"water":', "malformed-json"],
    ["NaN", '{"water":{"depth":{"value":NaN,"unit":"m"}}}', "malformed-json"],
    ["a trailing comma", '{"water":{},}', "malformed-json"],
    ["an array", "[]", "invalid-request"],
    ["a text", '"water"', "invalid-request"],
    ["null", "null", "invalid-request"],
    ["a number beyond double precision", '{"water":{"depth":{"value":1e309,"unit":"m"}}}', "invalid-request"],
    ["brackets 100,000 deep", `${"[".repeat(1e5)}${"]".repeat(1e5)}`, "invalid-request"],
    [
      "objects 50,000 deep in a field",
      `{"water":${'{"a":'.repeat(5e4)}1${"}".repeat(5e4)}}`,
      "invalid-request",
    ],
  ])("%s as the body", async (_name, text, code) => {
    const reply = await post(path, text);
    expect(reply).toMatchObject({ status: 400, type: "application/problem+json", body: { code } });
  });

  test("keys of the prototype are unknown keys and change nothing", async () => {
    const inner = '{"polluted":true}';
    for (const key of ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty"]) {
      const { body } = await post(path, `{"${key}":${inner},"water":{"${key}":${inner}}}`);
      expect(body.errors.map((error: Body) => error.path)).toEqual(
        expect.arrayContaining([`/${key}`, `/water/${key}`]),
      );
    }
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  test("a thousand wrong keys give twenty errors and no echo of their length", async () => {
    const wrong = Object.fromEntries(
      Array.from({ length: 1000 }, (_, i) => [`${"x".repeat(200)}${i}`, "y".repeat(200)]),
    );
    const reply = await post(path, { ...exampleOf(path), ...wrong });
    expect(reply.body.errors).toHaveLength(MAX_ERRORS);
    expect(JSON.stringify(reply.body).length).toBeLessThan(10_000);
  });
});
