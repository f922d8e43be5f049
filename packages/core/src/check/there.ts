/** The person and the fish at the stop: where standing goes past a limit, and how warm the water is for trout and salmon. */

import { type Celsius, celsius } from "../units/index.js";
import { waterAt } from "../water/index.js";
import type { CheckStop, Finding } from "./finding.js";
import { type Heat, type HeatAdvice, heat, heatPractice } from "./heat.js";
import { isStated } from "./rule-facts.js";
import type { Rules } from "./rules.js";
import { type Wade, type Wading, type WadingVerdict, wade } from "./wading.js";

/** Standing at the stop, at its depth and mean speed, and place by place on the way. No level is a permission. */
export interface WadingThere {
  readonly stop: Wading;
  readonly route: readonly Wading[];
}

export function wadingThere({ column, wader, footing, route = [] }: CheckStop): WadingThere {
  const person = {
    ...(wader === undefined ? {} : { wader }),
    ...(footing === undefined ? {} : { footing }),
  };
  const at = (place: Pick<Wade, "depth" | "speed">): Wading => wade({ ...person, ...place });
  return { stop: at({ depth: column.depth, speed: column.meanSpeed }), route: route.map(at) };
}

/** What the temperature asks for, null where nobody took it. */
export function heatThere(stop: CheckStop, rules: Rules | undefined): Heat | null {
  return isStated(stop) ? heat(stop.column.water.temperature, closureOf(rules)) : null;
}

/** The lowest temperature at which a stated rule closes the water. */
function closureOf(rules: Rules | undefined): Celsius | undefined {
  const closed = (rules?.clauses ?? []).flatMap((clause) =>
    "closedFrom" in clause ? [clause.closedFrom] : [],
  );
  return closed.length === 0 ? undefined : celsius(Math.min(...closed));
}

/** The gravest place first; nothing where nobody wades, and nothing below a limit, which is no permission. */
export function wadingFindings(stop: CheckStop, { stop: here, route }: WadingThere): readonly Finding[] {
  if (stop.wades === false) return [];
  const { column } = stop;
  const places = [
    { depth: column.depth, speed: column.meanSpeed, where: "at the stop", said: here },
    ...(stop.route ?? []).map((place, i) => ({ ...place, where: "on the way", said: route[i]! })),
  ];
  for (const { level, code, severity } of wadingCodes) {
    const found = places.find(({ said }) => said.level === level);
    if (found === undefined) continue;
    const { depth, speed, where, said } = found;
    const against = said.verdicts.filter((verdict) => verdict.level === level);
    return [
      {
        code,
        severity,
        basis: "published",
        numbers: [
          { name: "depth", kind: "length", value: depth },
          { name: "speed", kind: "speed", value: speed },
          { name: "against", kind: "number", value: against.length },
          { name: "asked", kind: "number", value: said.verdicts.length },
        ],
        parameters: [
          { name: "where", value: where },
          {
            name: "sources",
            value: against.map(({ source }) => sourceWords[source] ?? source.replace(/\d/, " $&")).join(", "),
          },
        ],
        remedy: { kind: "fish", act: "stand", to: null, stop: { ...stop, wades: false }, effect: gone },
      },
    ];
  }
  return [];
}

/** Nothing where the temperature asks for what is usual. */
export function heatFindings(
  stop: CheckStop,
  said: Heat | null,
  rules: Rules | undefined,
): readonly Finding[] {
  const found = said === null ? undefined : heatCodes[said.advice];
  if (said === null || found === undefined) return [];
  const { column } = stop;
  const cool = celsius(Math.min(heatPractice.quick, closureOf(rules) ?? heatPractice.quick));
  const cooled = { ...column, water: waterAt(celsius(cool - 0.1)) };
  return [
    {
      ...found,
      basis: said.decided === "local-closure" ? "stated" : "practice",
      numbers: [{ name: "temperature", kind: "temperature", value: column.water.temperature }],
      parameters: [],
      remedy: {
        kind: "fish",
        act: "wait",
        to: { name: "temperature", kind: "temperature", value: cool },
        stop: { ...stop, column: cooled },
        effect: gone,
      },
    },
  ];
}

type Coded = Pick<Finding, "code" | "severity">;

const wadingCodes: readonly (Coded & Pick<WadingVerdict, "level">)[] = [
  { level: "beyond", code: "wading-beyond-limit", severity: "stop" },
  { level: "doubtful", code: "wading-near-limit", severity: "watch" },
];

const heatCodes: Readonly<Partial<Record<HeatAdvice, Coded>>> = {
  leave: { code: "water-too-warm", severity: "stop" },
  last: { code: "water-nearly-too-warm", severity: "watch" },
  quick: { code: "water-warm", severity: "note" },
};

/** As people call it; else its key. */
const sourceWords: Readonly<Record<string, string>> = {
  Karvonen2000: "RESCDAM 2000",
  LaneFay1997: "the rule of ten",
};

/** Who stays out, or waits, is no longer concerned. */
const gone = { before: null, after: null, left: null } as const;
