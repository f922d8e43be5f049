/** Rigs that cannot be built. */

import type { Hostile } from "./row.js";

export const inRig: readonly Hostile[] = [
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
    name: "a misspelt kind of sinker",
    change: (b) => {
      b.rig.sections[0].sinker.kind = "nimph";
    },
    status: 400,
    path: "/rig/sections/0/sinker/kind",
    expected: "one of nymph, shot, body",
    suggestion: 'did you mean "nymph"?',
  },
  {
    name: "a misspelt key of a kind",
    change: (b) => {
      b.rig.float.styl = "foam";
    },
    status: 400,
    path: "/rig/float/styl",
    expected: "a known key: kind",
  },
  {
    name: "an odd hook",
    change: (b) => {
      b.rig.float.size = 11;
    },
    status: 422,
    path: "/rig/float/size",
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
    path: "/rig/sections/0/sinker/bead/diameter",
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
