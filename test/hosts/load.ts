/** How much of a bare app's throughput the API keeps, and how long its slowest answers take: both served by Node, in turn. */

import { type Described, rankSetups, settleRig } from "@plumbdrift/contract";
import autocannon from "autocannon";
import { bareCommands, bodyOf, median, report } from "./bench.js";
import { type Command, commands, started, stopped, type Variables } from "./hosts.js";

const rounds = 5;
const seconds = 4;
const warming = 3;
const connections = 16;

interface Load {
  readonly operation: Described;
  /** Whether no request is sent twice: then the API can answer none with what it kept. */
  readonly differing: boolean;
}

const loads: readonly Load[] = [
  { operation: settleRig, differing: false },
  { operation: settleRig, differing: true },
  { operation: rankSetups, differing: true },
];

interface Round {
  readonly perSecond: number;
  readonly p50: number;
  readonly p99: number;
}

/** One round against a server of its own, once it is warm. */
async function round(command: Command, { operation, differing }: Load, env?: Variables): Promise<Round> {
  const { base, process: server } = await started(command, env);
  const sent = {
    url: base + operation.path,
    method: "POST" as const,
    headers: { "content-type": "application/json" },
    body: bodyOf(operation),
    ...(differing && { requests: [{ setupRequest: otherwise(operation) }] }),
    connections,
  };
  try {
    await autocannon({ ...sent, duration: warming });
    const { requests, latency, errors, timeouts, non2xx } = await autocannon({ ...sent, duration: seconds });
    if (requests.total === 0) throw new Error("nothing was answered in a round: is something else running?");
    if (errors + timeouts + non2xx > 0)
      throw new Error(`${errors} errors, ${timeouts} timeouts, ${non2xx} other statuses`);
    return { perSecond: requests.average, p50: latency.p50, p99: latency.p99 };
  } finally {
    await stopped(server);
  }
}

/** Makes each request one of its own, by a bed a little deeper every time. */
function otherwise(operation: Described): (request: autocannon.Request) => autocannon.Request {
  const { water, ...rest } = JSON.parse(bodyOf(operation));
  let depth = water.depth.value;
  return (request) => {
    depth += 1e-7;
    return {
      ...request,
      body: JSON.stringify({ water: { ...water, depth: { ...water.depth, value: depth } }, ...rest }),
    };
  };
}

const rows: string[] = [];
for (const load of loads) {
  const { operation, differing } = load;
  const bare = await bareCommands(operation);
  const [ours, theirs, dressed]: [Round[], Round[], Round[]] = [[], [], []];
  for (let i = 0; i < rounds; i++) {
    ours.push(await round(commands.node, load));
    theirs.push(await round(bare.node, load));
    dressed.push(await round(bare.node, load, { ALL_HEADERS: "1" }));
  }
  const of = (all: readonly Round[], key: keyof Round) => median(all.map((one) => one[key]));
  const kept = median(ours.map(({ perSecond }, i) => perSecond / (theirs[i]?.perSecond ?? Number.NaN)));
  const ofDressed = median(ours.map(({ perSecond }, i) => perSecond / (dressed[i]?.perSecond ?? Number.NaN)));
  const tail = median(ours.map(({ p99, p50 }) => p99 / p50));
  rows.push(
    `| ${operation.id} | ${differing ? "differ" : "equal"} | ${of(ours, "perSecond").toFixed(0)} | ${of(theirs, "perSecond").toFixed(0)} | ${(100 * kept).toFixed(0)} % | ${(100 * ofDressed).toFixed(0)} % | ${of(ours, "p50")} ms | ${of(ours, "p99")} ms | ${tail.toFixed(1)} |`,
  );
}

report("Load", [
  `\`pnpm -C test/hosts run load --write\`: ${connections} connections on loopback, ${rounds} rounds of ${seconds} s each after ${warming} s, the API and the bare app in`,
  "turn. The bare app reads the body and returns a constant as long as the answer. The load comes from the same machine. Medians of the rounds; no error, no other status.",
  "Equal requests are answered from memory after the first (docs/operation.md); of those that differ none is sent twice, and each is computed.",
  "Aims: `settleRig` keeps at least 60 % of the bare throughput; the 99th percentile of `rankSetups` is less than 10 times its median.",
  "",
  "| operation | requests | requests/s | bare app, requests/s | kept | of a bare app with the same headers | median | 99th percentile | 99th percentile by median |",
  "|---|---|---|---|---|---|---|---|---|",
  ...rows,
]);
