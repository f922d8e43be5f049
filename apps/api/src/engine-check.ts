/** A rig in hand, and the person who stands there: findings, wading, heat. */

import * as core from "@plumbdrift/core";
import type { Engine } from "./engine.js";

export const checkRig: Engine["checkRig"] = ({ observation, inHand, stop, rules, wade, route }) => {
  const column = core.waterColumn(observation);
  const { temperature } = observation;
  return {
    checked: core.check(inHand, { ...stop, column }, rules),
    wading: {
      stop: core.wade({ ...wade, depth: column.depth, speed: column.meanSpeed }),
      route: route.map((place) => core.wade({ ...wade, ...place })),
    },
    heat: temperature === undefined ? null : core.heat(temperature, closureOf(rules)),
  };
};

/** The lowest temperature at which a stated rule closes the water. */
function closureOf(rules: core.Rules | undefined): core.Celsius | undefined {
  const closed = (rules?.clauses ?? []).flatMap((clause) =>
    "closedFrom" in clause ? [clause.closedFrom] : [],
  );
  return closed.length === 0 ? undefined : core.celsius(Math.min(...closed));
}
