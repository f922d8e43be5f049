/** Boxes that cannot be ranked. */

import type { Body } from "../api.js";
import type { Hostile } from "./row.js";

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

export const inBox: readonly Hostile[] = [
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
    change: boxed({ dries: Array(300).fill(fly), nymphs: Array(400).fill({ size: 16 }) }),
    status: 422,
    path: "/box",
    expected: "at most 1000000 units of work",
  },
  {
    name: "a nymph of no size in the box",
    change: boxed({ nymphs: [{ size: 16 }, { size: 13 }] }),
    status: 422,
    path: "/box/nymphs/1/size",
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
