/** How long a host takes from its start to its first answer, beside the bare app, in turn. */

import { settleRig } from "@plumbdrift/contract";
import { bareCommands, median, post, report } from "./bench.js";
import { anyone, type Command, commands, started, stopped } from "./hosts.js";

const rounds = 21;

/** Milliseconds from the start of the process to the whole first answer. */
async function coldStart(command: Command): Promise<number> {
  const begun = performance.now();
  const { base, process: server } = await started(command, anyone);
  const response = await post(base, settleRig);
  await response.text();
  const taken = performance.now() - begun;
  await stopped(server);
  if (!response.ok) throw new Error(`the first answer has status ${response.status}`);
  return taken;
}

const bare = await bareCommands(settleRig);
const rows: string[] = [];
for (const host of ["node", "workerd"] as const) {
  const [ours, theirs]: [number[], number[]] = [[], []];
  for (let i = 0; i < rounds; i++) {
    ours.push(await coldStart(commands[host]));
    theirs.push(await coldStart(bare[host]));
  }
  const ratio = median(ours.map((one, i) => one / (theirs[i] ?? Number.NaN)));
  rows.push(
    `| ${host} | ${median(ours).toFixed(0)} ms | ${median(theirs).toFixed(0)} ms | ${ratio.toFixed(2)} |`,
  );
}

report("Cold start", [
  `\`pnpm -C test/hosts run cold --write\`: from the start of the process to the end of the first answer of \`settleRig\`, ${rounds} rounds, the API and the bare`,
  "app in turn. Medians. Aim: at most 2 times the bare app.",
  "",
  "| host | API | bare app | ratio |",
  "|---|---|---|---|",
  ...rows,
]);
