/** What an unsteady drift rests on beyond its settled state. */

import { type Assumption, type Grounds, joinGrounds } from "../sources/index.js";
import { bedFriction } from "./bed-friction.js";
import { floatAddedShare } from "./unsteady-chain.js";
import type { Plan } from "./unsteady-plan.js";
import type { DriftOptions } from "./unsteady-types.js";

/** The grounds of the settled state joined with those of the scheme and of every default taken. */
export function groundsOfDrift(settled: Grounds, options: DriftOptions, plan: Plan): Grounds {
  const { cast } = options;
  const taken: readonly (Assumption | null)[] = [
    cast?.sinkerDownstream === undefined
      ? byDefault(
          "landing of the lowest sinker",
          `${(-plan.cast.sinkerDownstream).toPrecision(3)} m upstream of the float`,
        )
      : null,
    cast?.sinkerAcross === undefined ? byDefault("landing across the stream", "0 m") : null,
    cast?.entrySpeed === undefined
      ? byDefault("entry speed of the sinkers", `${plan.cast.entrySpeed} m/s`)
      : null,
    cast?.laneGradient === undefined ? byDefault("lane gradient", "0 1/s") : null,
    options.runLength === undefined ? byDefault("length of the run", `${plan.runLength} m`) : null,
    options.duration === undefined ? byDefault("longest duration", `${plan.duration} s`) : null,
    options.excessScale === undefined ? byDefault("excess scale e0", `${plan.excessScale} m/s`) : null,
    {
      name: "added mass of the float",
      value: `${floatAddedShare} of the water of its body`,
      basis: "assumption",
    },
    { name: "memory of the float's load", value: "0.2 s", basis: "assumption" },
    { name: "friction on the bed", value: `${bedFriction} of the reaction`, basis: "assumption" },
  ];
  return joinGrounds(settled, {
    relations: ["Hoerner1965", "Lamb1932", "OurAssumption"],
    assumptions: taken.filter((a) => a !== null),
    caveats: [],
  });
}

function byDefault(name: string, value: string): Assumption {
  return { name, value, basis: "default" };
}
