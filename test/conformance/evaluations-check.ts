/** Wading, temperature and capture, as the cases ask for them. */
import {
  captureSuccess,
  celsius,
  centimetres,
  check,
  type Footing,
  feet,
  feetPerSecond,
  hazardRating,
  heat,
  heatCriteria,
  judgeRules,
  juvenileCapture,
  karvonenObserved,
  karvonenProduct,
  kilograms,
  metres,
  metresPerSecond,
  millimetres,
  reactionDistance,
  squareFeetPerSecond,
  streamgagersTen,
  tippetDiameter,
  turbidityFactor,
  type WadingLevel,
  type WadingVerdict,
  wade,
  waterColumn,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

const severities = ["none", "note", "watch", "fix", "stop"];

const dryStyles = ["foam", "yarn", "hair"] as const;

/** The gravest finding whose code starts so, with a nymph of tungsten on 0.46 m of 5X over cobbles. */
function gravest(i: Inputs): number {
  const column = waterColumn({ depth: metres(0.9), surfaceSpeed: metresPerSecond(0.6), bed: "cobble" });
  const style = dryStyles.find((one) => one === text(i, "style")) ?? "low-profile";
  const bead = { diameter: millimetres(number(i, "bead")), material: "tungsten" } as const;
  const { findings } = check(
    {
      dry: { name: "dry", style, size: number(i, "dry") },
      nymph: { name: "nymph", size: number(i, "nymph"), bead },
      tippet: { material: "fluorocarbon", diameter: tippetDiameter(5) },
      dropper: metres(0.46),
    },
    { column },
  );
  const found = findings.filter(({ code }) => code.startsWith(text(i, "code")));
  return Math.max(0, ...found.map(({ severity }) => severities.indexOf(severity)));
}

const rank: Readonly<Record<WadingLevel, number>> = { silent: 0, under: 1, doubtful: 2, beyond: 3 };
/** A person of so many m kg. */
const person = (heightMass: number) => ({ height: metres(1.5), mass: kilograms(heightMass / 1.5) });

const thereOf = (i: Inputs) => ({
  depth: metres(number(i, "depth")),
  speed: metresPerSecond(number(i, "speed")),
});

function verdictOf(i: Inputs, source: string): WadingVerdict | undefined {
  const { verdicts } = wade({ ...thereOf(i), wader: person(number(i, "heightMass")) });
  return verdicts.find((one) => one.source === source);
}
const levelOf = (i: Inputs, source: string): number => rank[verdictOf(i, source)?.level ?? "silent"];

export const checkEvaluations = {
  "rule of ten, m2/s": (): number => streamgagersTen,
  "rule of ten, level in feet": (i: Inputs): number => {
    const { verdicts } = wade({
      depth: feet(number(i, "depthFeet")),
      speed: feetPerSecond(number(i, "speedFeet")),
    });
    return rank[verdicts.find(({ source }) => source === "LaneFay1997")?.level ?? "silent"];
  },
  "least lost footing, m2/s": (): number => karvonenObserved.least,
  "greatest lost footing, m2/s": (): number => karvonenObserved.greatest,
  "rescue product, m2/s": (i: Inputs): number => {
    const named = (["good", "normal", "poor"] as const).find((one) => one === text(i, "footing"));
    const footing: Footing = named ?? "poor";
    return karvonenProduct(
      { height: metres(number(i, "height")), mass: kilograms(number(i, "mass")) },
      footing,
    );
  },
  "hazard level, 1 low to 3 most": (i: Inputs): number => levelOf(i, "Cox2010"),
  "flood class, mildest 1": (i: Inputs): number => {
    const { class: said = "" } = verdictOf({ heightMass: 130, ...i }, text(i, "source")) ?? {};
    return Number(/\d/.exec(said)?.[0]);
  },
  "level in a flood, 0 silent or 3 beyond": (i: Inputs): number => levelOf(i, text(i, "source")),
  "hazard rating": (i: Inputs): number => hazardRating({ ...thereOf(i), debris: number(i, "debris") }),
  "ft2/s in m2/s": (i: Inputs): number => squareFeetPerSecond(number(i, "value")),
  "ft/s in m/s": (i: Inputs): number => feetPerSecond(number(i, "value")),
  "wading level, 1 to 3": (i: Inputs): number => rank[wade(thereOf(i)).level],
  "criterion, C": (i: Inputs): number => {
    const found = heatCriteria.find(
      ({ source, what }) => source === text(i, "source") && what.startsWith(text(i, "what")),
    );
    return found?.limit ?? Number.NaN;
  },
  "heat advice, 0 usual to 3 leave": (i: Inputs): number =>
    ["usual", "quick", "last", "leave"].indexOf(heat(celsius(number(i, "temperature"))).advice),
  "capture success": (i: Inputs): number => {
    const preyLength = millimetres(6);
    const fishLength = centimetres(number(i, "fishCentimetres"));
    return captureSuccess({
      preyLength,
      fishLength,
      waterSpeed: metresPerSecond(number(i, "speed")),
      distance: metres(number(i, "share") * reactionDistance(preyLength, fishLength)),
    });
  },
  "capture by juveniles": (i: Inputs): number =>
    juvenileCapture(metresPerSecond(number(i, "speed"))).probability,
  "turbidity factor": (i: Inputs): number => turbidityFactor(number(i, "turbidity")),
  "severity, 0 none to 4 stop": (i: Inputs): number => gravest(i),
  "rules that allow so many flies, none stated": (i: Inputs): number =>
    judgeRules(undefined, { flies: number(i, "flies") }).filter(({ answer }) => answer === "allowed").length,
} as const;
