/** What nobody said and would sharpen the answer: a note each, with what was taken instead. */

import { metres } from "../units/index.js";
import type { CheckStop, Finding, FindingCode, InputName, Measure } from "./finding.js";
import { isStated } from "./rule-facts.js";
import type { Rules } from "./rules.js";
import type { Seen } from "./seen.js";
import { leaderStrength } from "./strength.js";

interface Unsaid {
  readonly when: boolean;
  readonly code: FindingCode;
  readonly input: InputName;
  readonly taken?: Measure;
}

export function unstated(seen: Seen, rules: Rules | undefined): readonly Finding[] {
  return unsaid(seen, rules)
    .filter(({ when }) => when)
    .map(({ code, input, taken }) => ({
      code,
      severity: "note",
      basis: "assumption",
      numbers: taken === undefined ? [] : [taken],
      parameters: [{ name: "input", value: input }],
      remedy: { kind: "supply", input },
    }));
}

function unsaid({ stop, window }: Seen, rules: Rules | undefined): readonly Unsaid[] {
  const { column, cast, lie } = stop;
  const temperature = column.water.temperature;
  return [
    { when: rules === undefined, code: "rules-not-stated", input: "rules" },
    {
      when: !isStated(stop),
      code: "temperature-not-stated",
      input: "temperature",
      taken: { name: "taken", kind: "temperature", value: temperature },
    },
    { when: isBedUnknown(stop), code: "bed-not-stated", input: "bed" },
    {
      when: stop.runLength === undefined,
      code: "run-not-stated",
      input: "runLength",
      taken: { name: "taken", kind: "length", value: metres(6) },
    },
    {
      when: lie?.holdingHeight === undefined,
      code: "fish-not-stated",
      input: "fish",
      taken: { name: "taken", kind: "length", value: window.holding },
    },
    { when: stop.surface === undefined, code: "surface-not-stated", input: "surface" },
    { when: leaderStrength(stop) === null, code: "leader-not-stated", input: "leader" },
    {
      when: cast?.sinkerDownstream === undefined || cast.laneGradient === undefined,
      code: "cast-not-stated",
      input: "cast",
    },
    {
      when: stop.slack === undefined || stop.laneDifference === undefined,
      code: "slack-not-stated",
      input: "slack",
    },
  ];
}

/** Measured points need no bed. */
function isBedUnknown({ column }: CheckStop): boolean {
  return column.relativeSubmergence === null && column.profile.law === "power";
}
