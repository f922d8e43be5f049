/** The one catalogue of English: what each finding and each remedy says, with `{name}` where a number or a word goes. */

import type { Finding, FindingCode, FishingAct, InputName, Measure, Remedy } from "./finding.js";

/** Says one measure in words: in SI, or in the units of a reader. */
export type SayMeasure = (measure: Measure) => string;

/** By code. A number is said with its unit. */
export const findingMessages: Readonly<Record<FindingCode, string>> = {
  "dry-drowns": "{dry} goes under: it can carry {reserve} and {load} hangs below it, a margin of {margin}.",
  "dry-overloaded":
    "{dry} carries {nymph} with a margin of {margin}; {least} is wanted, or a splash drowns it.",
  "dry-barely-carries":
    "{dry} carries {nymph} with a margin of {margin}, just above {least}: keep it dressed.",
  "dry-pulled-under":
    "{dry} would carry {nymph} once settled, but the swing after the landing pulls it under.",
  "dry-floats-by-film":
    "{dry} is {style} and holds by the film alone: soaked, its margin under {nymph} is {soakedMargin} in place of {margin}.",
  "nymph-leans": "The nymph hangs {lean} off plumb: {dropper} of dropper fishes {depth} deep.",
  "nymph-towed":
    "The nymph is towed {excess} faster than its own water: the rig drifts at {drift}, the surface at {surface}.",
  "nymph-on-bed": "The nymph drags on the bed: {dropper} of dropper in {depth} of water. Expect to lose it.",
  "nymph-near-bed": "The nymph passes {heightAboveBed} above the bed: it will catch the higher stones.",
  "dropper-longer-than-water": "The dropper of {dropper} is longer than the water is deep, {depth}.",
  "nymph-above-fish":
    "The nymph passes {heightAboveBed} above the bed, and the fish takes no higher than {high}.",
  "nymph-below-fish":
    "The nymph passes {heightAboveBed} above the bed, and the fish takes no lower than {low}.",
  "run-ends-first": "The run of {run} ends before the nymph has settled.",
  "settles-late": "The nymph has settled only after {settled} of a run of {run}.",
  "dropper-outlasts-leader":
    "The leader breaks first: it bears {leader} at its knot, the dropper {dropper}. A snag costs both flies.",
  "line-order-close":
    "The dropper bears {dropper} at its knot and the leader {leader}: either may break first.",
  "tippet-coarse": "{x}X is coarse for a hook of size {hook}; about {suits}X is usual.",
  "tippet-fine": "{x}X is fine for a hook of size {hook}; about {suits}X is usual.",
  "splash-shows":
    "{nymph} of {mass} lands at {entry}: its splash is {splashRatio} times what a {surface} surface hides.",
  "nymph-in-slower-lane":
    "The nymph lands {across} across, in water {laneLag} slower than the dry's: it lags.",
  "nymph-lands-below":
    "The nymph lands {landsBelow} below the dry and nothing holds the dry back: slack, and no touch.",
  "drag-before-settled":
    "{slack} of slack is used up after {dragFree}, before the nymph has settled: the lanes differ by {lane}.",
  "drag-before-end":
    "{slack} of slack is used up after {dragFree} of a drift of {run}: the lanes differ by {lane}.",
  "wading-beyond-limit":
    "Do not stand in it: {depth} of water at {speed}, {where}, is past a limit of {against} of {asked} sources ({sources}).",
  "wading-near-limit":
    "Some lose their footing in {depth} of water at {speed}, {where} ({sources}). Under a limit is no permission.",
  "water-too-warm": "The water is at {temperature}: leave trout and salmon alone until it has cooled.",
  "water-nearly-too-warm":
    "The water is at {temperature}: a fish or two at dawn at most, landed at once and kept in the water.",
  "water-warm": "The water is at {temperature}: shorten the fight, and keep the fish in the water.",
  "rule-forbids": "Not allowed at {place}, as to {topic}: {clause} (as stated by {statedBy}).",
  "rule-unknown": "Unknown at {place}, as to {topic}: {missing} was not stated ({because}).",
  "rules-not-stated":
    "Nobody stated the local rules: whether two flies, their hooks and their weight are allowed here is unknown.",
  "temperature-not-stated":
    "The temperature of the water was not stated: {taken} was taken, and nothing is known of heat.",
  "bed-not-stated": "Nothing was said of the bed: how slow the water is down there is a guess.",
  "run-not-stated": "The length of the run was not stated: {taken} was taken.",
  "fish-not-stated": "Where the fish holds was not stated: {taken} above the bed was taken, as is common.",
  "surface-not-stated":
    "The surface was not described: it was taken as rippled, and glassy water hides less.",
  "leader-not-stated": "Nobody said what the leader bears: whether the dropper breaks first is unknown.",
  "cast-not-stated":
    "How the cast lands was not said: it was taken with the nymph straight upstream, in one lane.",
  "slack-not-stated":
    "Slack and the lanes between angler and dry were not said: how long the drift is free of drag is unknown.",
};

const actMessages: Readonly<Record<FishingAct, string>> = {
  hold: "Hold the dry back with {to}",
  cast: "Land the nymph {to} {name} the dry",
  soften: "Land it softer, at {to}",
  run: "Fish a run of {to}",
  slack: "Give {to} of slack",
  obey: "Do as the clause says",
  stand: "Fish it from where nobody stands in such water",
  wait: "Come back once it is below {to}",
};

/** Where a cast lands, by the name of its measure. */
const placeWords: Readonly<Record<string, string>> = { beyond: "beyond", short: "short of", above: "above" };

/** What a caller can supply, in words. */
export const inputWords: Readonly<Record<InputName, string>> = {
  rules: "the clauses that apply here",
  temperature: "the temperature of the water",
  bed: "the bed, by grade or by stone size",
  runLength: "the length of the run",
  fish: "the height at which the fish holds",
  surface: "whether the surface is glassy, rippled or broken",
  leader: "what the leader bears",
  cast: "where the nymph lands, and how the lanes differ",
  slack: "slack, and the difference of the lanes",
  flies: "the number of flies",
  hooks: "the number of hook points",
  barbless: "whether the hooks are barbless",
  addedWeight: "the weight added to the flies",
  lead: "whether there is lead on the rig",
  bait: "whether bait is used",
  date: "the date",
  time: "the time of day",
};

/** A finding in English. @example findingMessage({ code: "nymph-near-bed", severity: "watch", basis: "assumption", numbers: [{ name: "heightAboveBed", kind: "length", value: metres(0.03) }], parameters: [], remedy: { kind: "none", tried: 0 } }) // => "The nymph passes 0.03 m above the bed: it will catch the higher stones." */
export function findingMessage({ code, numbers, parameters }: Finding, say: SayMeasure = sayInSi): string {
  const words = [
    ...numbers.map((measure) => [measure.name, say(measure)] as const),
    ...parameters.map(({ name, value }) => [name, name === "missing" ? missingWord(value) : value] as const),
  ];
  return filled(findingMessages[code], Object.fromEntries(words));
}

/** A remedy in English, with what it does to the number that the finding turns on. */
export function remedyMessage(remedy: Remedy, say: SayMeasure = sayInSi): string {
  if (remedy.kind === "supply") return `Say ${inputWords[remedy.input]}.`;
  if (remedy.kind === "none") return "No single change that was tried answers it.";
  const { before, after, left } = remedy.effect;
  const change =
    remedy.kind === "retie"
      ? `${remedy.part} ${said(remedy.from, say)} → ${said(remedy.to, say)}`
      : filled(actMessages[remedy.act], {
          to: remedy.to === null ? "" : say(remedy.to),
          name: placeWords[remedy.to?.name ?? ""] ?? "",
        });
  const effect =
    before === null || after === null ? "" : `: ${worded(before.name)} ${say(before)} → ${say(after)}`;
  return `${change}${effect}${left === null ? "" : `, still to ${left}`}.`;
}

const siUnits: Readonly<Record<Measure["kind"], readonly [factor: number, unit: string]>> = {
  length: [1, "m"],
  dropper: [1, "m"],
  size: [1000, "mm"],
  speed: [1, "m/s"],
  time: [1, "s"],
  force: [1000, "mN"],
  strength: [1, "N"],
  mass: [1000, "g"],
  angle: [180 / Math.PI, "°"],
  temperature: [1, "°C"],
  number: [1, ""],
};

/** Three figures at most, and the unit. @example sayInSi({ name: "dropper", kind: "dropper", value: metres(0.4572) }) // => "0.457 m" */
export function sayInSi({ kind, value }: Measure): string {
  const [factor, unit] = siUnits[kind];
  return inUnit(value * factor, unit);
}

/** A value of three figures at most with its unit; degrees close up. */
export function inUnit(value: number, unit: string): string {
  const figures = String(Number(value.toPrecision(3)));
  return unit === "" ? figures : `${figures}${unit === "°" ? "" : " "}${unit}`;
}

function said(label: string | Measure, say: SayMeasure): string {
  return typeof label === "string" ? label : say(label);
}

/** "float margin" for floatMargin. */
function worded(name: string): string {
  return name.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
}

function missingWord(value: string): string {
  return Object.entries(inputWords).find(([input]) => input === value)?.[1] ?? value;
}

/** Throws where the template names something that is not there: a catalogue that does not fit its finding is a fault of ours. */
function filled(template: string, words: Readonly<Record<string, string>>): string {
  const text = template.replace(/\{(\w+)\}/g, (_, name: string) => {
    if (!Object.hasOwn(words, name)) throw new Error(`no ${name} for "${template}"`);
    return words[name]!;
  });
  return text.charAt(0).toUpperCase() + text.slice(1);
}
