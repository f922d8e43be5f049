/** The rigs one change away from the one in hand. The steps are our own choice; a box replaces them. */

import type { Pieces } from "../setup/index.js";
import { beadMillimetres, type Dry, hookSizes, type Nymph, type Tippet } from "../tackle/index.js";
import { inches, metres, millimetres, QuantityError } from "../units/index.js";
import type { AdjustQuestion } from "./adjust-types.js";

/** The most single changes of a piece that one call compares. */
export const mostChanges = 60;
/** Shortest dropper and finest tippet that the usual steps lead to, m. */
const shortest = 0.1;
const finest = 7.5e-5;

export interface PieceChange {
  readonly part: keyof Pieces;
  readonly to: Pieces;
}

/** Every rig with one piece out of the box, or one usual step away: a hook size, a bead, 0.001 in of tippet, 3 or 6 in of dropper.
 *  Throws QuantityError for a box that allows more than 60. */
export function pieceChanges({ inHand, box }: AdjustQuestion): readonly PieceChange[] {
  const changes: readonly PieceChange[] = [
    ...(box?.dries ?? otherDries(inHand.dry)).map((dry) => to("dry", { ...inHand, dry })),
    ...(box?.nymphs ?? otherNymphs(inHand.nymph)).map((nymph) => to("nymph", { ...inHand, nymph })),
    ...(box?.tippets ?? otherTippets(inHand.tippet)).map((tippet) => to("tippet", { ...inHand, tippet })),
    ...(box?.dropperLengths ?? otherLengths(inHand.dropper)).map((dropper) =>
      to("dropper", { ...inHand, dropper }),
    ),
  ];
  if (changes.length > mostChanges)
    throw new QuantityError("single changes that the box allows", `at most ${mostChanges}`, changes.length);
  return changes;
}

function to(part: keyof Pieces, pieces: Pieces): PieceChange {
  return { part, to: pieces };
}

function otherDries({ size, style }: Dry): readonly Dry[] {
  return [size - 2, size + 2]
    .filter((other) => hookSizes.includes(other))
    .map((other) => ({ name: `${style} dry ${other}`, size: other, style }));
}

/** The next smaller and larger bead, and tungsten for what is not. */
function otherNymphs({ size, bead, knot }: Nymph): readonly Nymph[] {
  const material = bead?.material ?? "tungsten";
  const now = 1000 * (bead?.diameter ?? 0);
  const smaller = beadMillimetres.filter((one) => one < now - 0.05).slice(-1);
  const larger = beadMillimetres.filter((one) => one > now + 0.05).slice(0, 1);
  const beaded = (of: typeof material, diameter: number): Nymph => ({
    name: `${of} nymph ${size}, ${diameter.toFixed(1)} mm`,
    size,
    bead: { diameter: millimetres(diameter), material: of },
    ...(knot === undefined ? {} : { knot }),
  });
  const heavier = bead === undefined || material === "tungsten" ? [] : [beaded("tungsten", now)];
  return [...[...smaller, ...larger].map((diameter) => beaded(material, diameter)), ...heavier];
}

function otherTippets({ material, diameter }: Tippet): readonly Tippet[] {
  return [-1, 1]
    .map((step) => metres(diameter + step * inches(0.001)))
    .filter((other) => other >= finest && other <= 1e-3)
    .map((other) => ({ material, diameter: other }));
}

function otherLengths(dropper: number): Pieces["dropper"][] {
  return [-6, -3, 3, 6].map((step) => metres(dropper + inches(step))).filter((length) => length >= shortest);
}
