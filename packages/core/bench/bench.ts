/** What things cost: rounds of every task in turn, the median over the rounds and its spread, and the ratio to one drag law of the same round. */

import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { measure } from "mitata";
import {
  type Box,
  buildDry,
  buildNymph,
  buildTippet,
  cubicMetresPerSecond,
  cylinderDrag,
  drift,
  feet,
  feetPerSecond,
  generalBox,
  inches,
  metres,
  normalDepth,
  rankSetups,
  rig,
  seconds,
  settle,
  surfaceProfile,
  surveyedSection,
  waterColumn,
} from "../src/index.js";
import { exhaustiveAgreement } from "./exhaustive.js";

const rounds = 7;
const perCall = 1000;

const column = waterColumn({ depth: feet(3), surfaceSpeed: feetPerSecond(3), bed: { d84: metres(0.1) } });
const boulders = waterColumn({ depth: feet(3), surfaceSpeed: feetPerSecond(3), bed: "boulder" });
const nymph = generalBox.nymphs[4]!;
const made = rig(buildDry(generalBox.dries[1]!).body, {
  line: buildTippet(generalBox.tippets[3]!, inches(18)).body,
  sinker: buildNymph(nymph).body,
});

/** A bowl 20 m wide with stones on its bed, levelled at 60 stations. */
const levelled = surveyedSection({
  points: Array.from({ length: 60 }, (_, i) => ({
    station: metres((20 * i) / 59),
    elevation: metres(3 * (i / 29.5 - 1) ** 2 + 0.1 * Math.sin(2.5 * i)),
  })),
});
const friction = { law: "manning", n: 0.035 } as const;
const discharge = cubicMetresPerSecond(12);
const pooled = {
  section: levelled,
  discharge,
  reaches: [{ length: metres(500), slope: 0.004, friction }],
  downstream: { depth: metres(2) },
  pointsPerReach: 200,
};

/** √10 times as many dries and nymphs, told apart by a hair in their measured mass: 43,320 candidates. */
const tenfold: Box = {
  ...generalBox,
  dries: many(generalBox.dries, 38, (dry, i) => ({ ...dry, name: `${dry.name} (${i})` })),
  nymphs: many(generalBox.nymphs, 38, (fly, i) => ({
    ...fly,
    name: `${fly.name} (${i})`,
    measured: { dressing: 1.5 + 0.01 * i },
  })),
};

function many<T>(items: readonly T[], count: number, change: (item: T, i: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, i) => change(items[i % items.length]!, i));
}

interface Task {
  readonly name: string;
  readonly limit: string;
  readonly run: () => unknown;
  readonly calls: number;
}

let sink = 0;
const tasks: readonly Task[] = [
  {
    name: "cylinder drag law, one evaluation",
    limit: "",
    calls: perCall,
    run: () => {
      for (let i = 0; i < perCall; i++) sink += cylinderDrag(1 + 0.05 * i);
      return sink;
    },
  },
  { name: "settled drift, log law", limit: "60 µs", calls: 1, run: () => settle(made, column) },
  { name: "settled drift, mixing layer", limit: "60 µs", calls: 1, run: () => settle(made, boulders) },
  {
    name: "unsteady drift of 8 s, every step",
    limit: "10 ms",
    calls: 1,
    run: () => drift(made, column, { duration: seconds(8), runLength: metres(100) }),
  },
  { name: "rank 4,320 candidates", limit: "60 ms", calls: 1, run: () => rankSetups({ column }) },
  {
    name: "rank 43,320 candidates",
    limit: "4 × the line above",
    calls: 1,
    run: () => rankSetups({ column, box: tenfold }),
  },
  {
    name: "normal depth in a section levelled at 60 points",
    limit: "20 µs",
    calls: 1,
    run: () => normalDepth({ section: levelled, friction, slope: 0.004 }, discharge),
  },
  {
    name: "surface above a pool in the same section, 200 stations",
    limit: "2 ms",
    calls: 1,
    run: () => surfaceProfile(pooled),
  },
];

const costs = tasks.map(() => [] as number[]);
for (let round = 0; round < rounds; round++) {
  for (const [i, task] of tasks.entries()) {
    const { p50 } = await measure(task.run, { min_cpu_time: 3e8, min_samples: 8 });
    costs[i]!.push(p50 / task.calls);
  }
}

function quantile(values: readonly number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.round(q * (sorted.length - 1))]!;
}

function time(ns: number): string {
  const [value, unit] = ns < 1e3 ? [ns, "ns"] : ns < 1e6 ? [ns / 1e3, "µs"] : [ns / 1e6, "ms"];
  return `${value.toPrecision(3)} ${unit}`;
}

const rows = tasks.map((task, i) => {
  const of = costs[i]!;
  const ratios = of.map((cost, round) => cost / costs[0]![round]!);
  const spread = `${time(quantile(of, 0))} to ${time(quantile(of, 1))}`;
  return `| ${task.name} | ${time(quantile(of, 0.5))} | ${spread} | ${Math.round(quantile(ratios, 0.5)).toLocaleString("en")} | ${task.limit} |`;
});
const tenfoldRatio = quantile(
  costs[5]!.map((cost, round) => cost / costs[4]![round]!),
  0.5,
);
const agreement = exhaustiveAgreement(100);
const report = `# Benchmarks

Made by \`npm run bench -- --write\`; nothing here is a test. ${rounds} interleaved rounds of every task, median and spread of the rounds;
the last but one column is the cost in evaluations of the cylinder drag law, measured in the same round, since absolute times drift.

Machine: ${cpus()[0]?.model.trim()}, ${cpus().length} cores, Node ${process.versions.node}.

| task | median | spread | drag laws | aim |
|---|---|---|---|---|
${rows.join("\n")}

A box ten times larger costs ${tenfoldRatio.toFixed(1)} times as much (median of the rounds; aim: at most 4).

## Is the shortcut honest?

\`rankSetups\` estimates most candidates and judges a shortlist in full. On ${agreement.waters} seeded waters with a box of 200, its five places were
those of judging every candidate in full, or within 1 % of their effective seconds, on ${agreement.agree} (aim: 95).
The worst shortfall of any place was ${(100 * agreement.worst).toFixed(2)} %.
`;
console.log(report);
if (process.argv.includes("--write"))
  writeFileSync(new URL("../../../docs/benchmarks.md", import.meta.url), report);
