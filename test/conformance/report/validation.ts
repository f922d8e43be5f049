/** docs/validation.md: what the suite shows, from the same measure as the gate. Errors are rounded so that every platform prints the same. */
import type { Case, Kind } from "../case.js";
import { cases } from "../cases.js";
import { isVerified, type Measurement, measure } from "../measure.js";
import { notApplicable } from "../not-applicable.js";
import { perturbation } from "./perturbation.js";
import { sweepTable } from "./sweep-table.js";
import { count, list, table } from "./text.js";

interface Measured {
  readonly one: Case;
  readonly measured: Measurement;
}

const otherTraps = {
  T8: "a library's Clift drag above Re = 4e5 has a wrong slope: that correlation is not in the core, and the sweep against it ends at 1e5",
  T10: "depth fractions from the bed or from the surface: every height and depth of the core names its datum",
  T12: "two formulas go by the name of Clift and Gauvin: neither is in the core, and relations are told apart by their constants",
  T14: "limits for wading disagree by design: the core of hydraulics states none",
} as const;

export function validation(coreSources: URL): string {
  const measured = cases.map((one): Measured => ({ one, measured: measure(one) }));
  const of = (holds: (one: Case) => boolean) => measured.filter(({ one }) => holds(one));
  const verified = of(isVerified);
  const kinds = (["published", "independent", "analytic"] as const)
    .map((kind) => `${verified.filter(({ one }) => one.kind === kind).length} ${kind}`)
    .join(", ");
  return [
    "# Validation",
    "",
    "Generated from `test/conformance`: do not edit, run `pnpm -C test/conformance run write`.",
    "Each number the core gives is compared with what someone else says, within half of the last printed digit unless the case says why not.",
    "",
    `${count(verified, "check")} agree: ${kinds}. Practice, regression and memory never count as validation and stand apart.`,
    "",
    "## By relation",
    "",
    "The worst error is given as a share of its tolerance; the case with it is named.",
    "",
    relations(verified),
    "",
    "## By source",
    "",
    bySource(verified),
    "",
    "## Sweep",
    "",
    sweepTable(),
    "",
    "## Traps: published numbers that are not right, or not ours",
    "",
    "Each is a test that fails when the core begins to agree.",
    "",
    list(
      of((one) => one.disagrees !== undefined).map(
        ({ one }) => `**${one.id}**, ${one.source}, prints ${one.printed}: ${one.disagrees}`,
      ),
    ),
    "",
    "Traps of the list that hold no number of ours:",
    "",
    list(Object.entries(otherTraps).map(([id, what]) => `**${id}**: ${what}`)),
    "",
    "## Common practice and stated assumptions",
    "",
    "No source stands behind these. They show that the core says what its documents say it assumes, and what anglers hold to be so.",
    "",
    apart(of((one) => one.kind === "practice")),
    "",
    "## Regression",
    "",
    apart(of((one) => one.kind === "regression")),
    "",
    "## What could not be verified",
    "",
    "### From memory",
    "",
    "Compared, and never counted:",
    "",
    apart(of((one) => one.seen === "from-memory" && one.kind !== "practice")),
    "",
    "### Not asked of the core",
    "",
    list(Object.entries(notApplicable).map(([id, reason]) => `**${id}**: ${reason}`)),
    "",
    "## The suite can fail",
    "",
    perturbation(coreSources),
    "",
  ].join("\n");
}

function relations(verified: readonly Measured[]): string {
  const rows = groupsBy(verified, ({ evaluates }) => evaluates).map(({ name, group }) => [
    name,
    String(group.length),
    worst(group),
    sourcesOf(group),
  ]);
  return table(["relation", "n", "worst error", "sources"], rows);
}

function bySource(verified: readonly Measured[]): string {
  const rows = groupsBy(verified, ({ source }) => source).map(({ name, group }) => {
    const kinds = unique(group.map(({ one }): Kind => one.kind)).join(", ");
    const seen = unique(group.map(({ one }) => one.seen)).join(", ");
    return [name, kinds, seen, String(group.length), worst(group)];
  });
  return table(["source", "kind", "seen", "n", "worst error"], rows);
}

interface Group {
  readonly name: string;
  readonly group: readonly Measured[];
}

function groupsBy(all: readonly Measured[], key: (one: Case) => string): readonly Group[] {
  return unique(all.map(({ one }) => key(one))).map((name) => ({
    name,
    group: all.filter(({ one }) => key(one) === name),
  }));
}

/** The case nearest to its tolerance, or over it. */
function worst(group: readonly Measured[]): string {
  const share = ({ measured: { error, tolerance } }: Measured) => (error === 0 ? 0 : error / tolerance);
  const most = group.reduce((a, b) => (share(b) > share(a) ? b : a));
  return share(most) < 0.01 ? "below 1 %" : `${Math.round(100 * share(most))} % (${most.one.id})`;
}

function sourcesOf(group: readonly Measured[]): string {
  return unique(group.map(({ one }) => one.source)).join("; ");
}

function apart(group: readonly Measured[]): string {
  if (group.length === 0) return "None.";
  const rows = group.map(({ one, measured }) => {
    const outcome = measured.pass ? "agrees" : "disagrees";
    return [one.id, one.evaluates, one.printed, outcome, one.source];
  });
  return table(["case", "what", "stated", "the core", "source"], rows);
}

function unique<T>(values: readonly T[]): readonly T[] {
  return [...new Set(values)];
}
