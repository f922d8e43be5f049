/** Takes, as the cases ask for them. */
import { weighTakes } from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number } from "./inputs.js";

/** The least takes on the dry that `does` asks for, over the takes on the nymph. */
function ratioWhere(i: Inputs, does: (answer: ReturnType<typeof weighTakes>) => boolean): number {
  const nymph = number(i, "nymph");
  for (let dry = 0; dry <= 10 * nymph; dry++) {
    if (does(weighTakes({ dry: { takes: dry }, nymph: { takes: nymph } }))) return dry / nymph;
  }
  throw new RangeError("never");
}

export const outingEvaluations = {
  "ratio at which the bare rule cuts": (i: Inputs): number =>
    ratioWhere(i, ({ ruleOfThumb }) => ruleOfThumb === "cut"),
  "ratio at which cutting is as likely right as wrong": (i: Inputs): number =>
    ratioWhere(i, ({ probability }) => probability >= 0.5),
};
