/** What an adjustment rests on beside the water and the tackle: priors and likelihoods. */

import { type Assumption, type Grounds, joinGrounds } from "../sources/index.js";
import { sightingScales } from "./adjust-likelihood.js";
import type { Prior, UncertainPart } from "./adjust-prior.js";
import type { AdjustQuestion, RigSighting } from "./adjust-types.js";

const names: Readonly<Record<UncertainPart, string>> = {
  depth: "depth",
  surfaceSpeed: "surface speed",
  profile: "parameter of the law of speed",
  drag: "drag of the dressed nymph",
  treatment: "exponent on the treatment of the dry",
};

/** The pieces, the priors, and the likelihoods of the kinds of sighting that were made. */
export function adjustGrounds(
  { seen, uncertainty = {}, scales = {} }: AdjustQuestion,
  prior: Prior,
): Grounds {
  const spreads = (["depth", "surfaceSpeed", "profile", "drag", "treatment"] as const).map(
    (part): Assumption => ({
      name: `uncertainty of the ${names[part]}`,
      value: prior.spread[part] > 0 ? `lognormal, ${Number(prior.spread[part].toPrecision(3))}` : "none",
      basis: uncertainty[part] === undefined ? "default" : "assumption",
    }),
  );
  const kinds = [...new Set(seen.map(({ kind }) => kind))];
  const worth = kinds.map(
    (kind): Assumption => ({
      name: `worth of a sighting: ${kind}`,
      value: meaning({ ...sightingScales, ...scales })[kind],
      basis: "assumption",
    }),
  );
  return joinGrounds(prior.dry.grounds, prior.nymph.grounds, prior.tippet.grounds, {
    relations: ["OurAssumption"],
    assumptions: [...spreads, ...worth],
    caveats: [],
  });
}

function meaning(scales: typeof sightingScales): Readonly<Record<RigSighting["kind"], string>> {
  const said = (value: number): string => String(Number(value.toPrecision(3)));
  const angle = (value: number): string => said((value * 180) / Math.PI);
  return {
    ticks: `Poisson, ${said(scales.strayTicks)} + ${said(scales.ticksAtBed)} e^(-height/${said(scales.tickHeight)} m) a drift`,
    dry: `drowns at a rate of e^(-(margin - 1)/${said(scales.drowningMargin)}) per ${said(scales.drowningTime)} s`,
    lean: `normal, ${angle(scales.leanError)} degrees`,
    nymph: `under the dry within ${angle(scales.underWithin)} degrees, softly over ${angle(scales.underError)}; ${said(scales.misread)} at random`,
    "drift-time": `normal in speed, ${said(scales.speedError)} of the stated surface speed and ${said(scales.speedFloor)} m/s`,
  };
}
