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
    "Not taken for constants of a relation, each entry read: 0, 1 and 2; bounds on input; brackets, tolerances and sizes given to solvers; and",
    "",
    list(
      Object.entries({ ...methodFiles, ...methodNames }).map(([name, reason]) => `\`${name}\`: ${reason}`),
    ),
  ].join("\n");
}
