/** What `pnpm perturb` asks and finds, as text. */
import { constantsOf } from "../perturb/constants.js";
import { methodFiles, methodNames } from "../perturb/rule.js";
import { survivors } from "../perturb/survivors.js";
import { list } from "./text.js";

export function perturbation(coreSources: URL): string {
  const constants = constantsOf(coreSources);
  const names = Object.entries(survivors);
  return [
    `\`pnpm perturb\` makes each of ${constants.length} numeric constants of the relations 1 % larger, one at a time, and asks every case and sweep.`,
    `${names.length} changes are not noticed${names.length > 0 ? ":" : "."}`,
    "",
    list(names.map(([name, reason]) => `\`${name}\`: ${reason}`)),
    "",
    "Every 1 and 2 counts, exponents and halves too, but for those that step to a neighbour in a list, count things or tell cases apart (`=== 1`).",
    "Not taken for constants of a relation either, each entry read: 0; bounds on input; brackets, tolerances, sizes and places given to solvers and lists; and",
    "",
    list(
      Object.entries({ ...methodFiles, ...methodNames }).map(([name, reason]) => `\`${name}\`: ${reason}`),
    ),
  ].join("\n");
}
