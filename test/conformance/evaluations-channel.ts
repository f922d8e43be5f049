/** Sections, uniform and critical flow, energy and jumps, as the cases ask for them: in feet where `units` begins with us, else in metres. */
import {
  bedShear,
  type Channel,
  type CrossSection,
  circularSection,
  criticalDepth,
  cubicMetresPerSecond,
  type DepthsFor,
  type Flow,
  type Friction,
  flowClass,
  frictionSlope,
  froudeNumber,
  type HydraulicJump,
  hydraulicJump,
  kilogramsPerCubicMetre,
  type ManningUnits,
  type Metres,
  metres,
  minimumEnergy,
  normalDepth,
  rectangularSection,
  type SectionGeometry,
  sectionGeometry,
  specificEnergy,
  trapezoidalSection,
  triangularSection,
  uniformDischarge,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

const or = (i: Inputs, name: string, otherwise: number): number => (name in i ? number(i, name) : otherwise);
const foot = (i: Inputs): number => (text(i, "units").startsWith("us") ? 0.3048 : 1);

/** K_u = 0.3048^(−1/3) is SI in feet. */
function manningUnits(i: Inputs): ManningUnits {
  const units = text(i, "units");
  return units === "us-1.49" || units === "us-1.486" ? units : "si";
}

function sectionOf(i: Inputs): CrossSection {
  const size = (name: string): Metres => metres(number(i, name) * foot(i));
  if ("diameter" in i) return circularSection(size("diameter"));
  const left = or(i, "run", 0);
  const right = or(i, "rightRun", left);
  if (!("width" in i)) return triangularSection(left, right);
  return left === 0 && right === 0
    ? rectangularSection(size("width"))
    : trapezoidalSection(size("width"), left, right);
}

const gravityOf = (i: Inputs): number => or(i, "gravity", 9.80665 / foot(i)) * foot(i);

function channelOf(i: Inputs): Channel {
  const friction: Friction =
    "chezy" in i
      ? { law: "chezy", c: number(i, "chezy") }
      : { law: "manning", n: number(i, "n"), units: manningUnits(i) };
  return { section: sectionOf(i), friction, slope: number(i, "slope"), gravity: gravityOf(i) };
}

/** The discharge given, else that of uniform flow at the depth given. */
function flowOf(i: Inputs): Flow {
  const discharge =
    "discharge" in i
      ? cubicMetresPerSecond(number(i, "discharge") * foot(i) ** 3)
      : uniformDischarge(channelOf(i), metres(number(i, "depth") * foot(i)));
  return { section: sectionOf(i), discharge, gravity: gravityOf(i), energyCoefficient: or(i, "alpha", 1) };
}

function only(found: DepthsFor | { readonly kind: "no-slope" }): Metres {
  if (found.kind !== "found") throw new RangeError(`no depth: ${found.kind}`);
  return found.depth;
}

const critical = (i: Inputs): Metres => only(criticalDepth(flowOf(i)));
const normal = (i: Inputs): Metres => only(normalDepth(channelOf(i), flowOf(i).discharge));
/** The depth given, else normal depth. */
const depthOf = (i: Inputs): Metres => ("depth" in i ? metres(number(i, "depth") * foot(i)) : normal(i));
const geometryOf = (i: Inputs): SectionGeometry => sectionGeometry(sectionOf(i), depthOf(i));
/** As head of water times 62.4 lb/ft³. */
const shearOf = (i: Inputs, which: "mean" | "greatest"): number =>
  (bedShear(channelOf(i), depthOf(i), kilogramsPerCubicMetre(1000))[which] /
    (1000 * gravityOf(i) * foot(i))) *
  62.4;

function jumpOf(i: Inputs): Extract<HydraulicJump, { kind: "jump" }> {
  const jump = hydraulicJump(flowOf(i), depthOf(i), kilogramsPerCubicMetre(1000));
  if (jump.kind !== "jump") throw new RangeError(`no jump: ${jump.kind}`);
  return jump;
}

/** (y2 − y1)³/(4 y1 y2). */
const rectangleLoss = ({ before, after }: { readonly before: number; readonly after: number }): number =>
  (after - before) ** 3 / (4 * before * after);

export const channelEvaluations = {
  "area of a section": (i: Inputs): number => geometryOf(i).area / foot(i) ** 2,
  "wetted perimeter": (i: Inputs): number => geometryOf(i).wettedPerimeter / foot(i),
  "top width": (i: Inputs): number => geometryOf(i).topWidth / foot(i),
  "hydraulic radius": (i: Inputs): number => geometryOf(i).hydraulicRadius / foot(i),
  "hydraulic depth": (i: Inputs): number => geometryOf(i).hydraulicDepth / foot(i),
  "discharge of uniform flow": (i: Inputs): number => flowOf(i).discharge / foot(i) ** 3,
  "mean speed in a section": (i: Inputs): number => flowOf(i).discharge / geometryOf(i).area / foot(i),
  "Froude number in a section": (i: Inputs): number => froudeNumber(flowOf(i), depthOf(i)),
  "class of a flow, −1 slow, 1 fast": (i: Inputs): number =>
    ({ subcritical: -1, critical: 0, supercritical: 1 })[flowClass(froudeNumber(flowOf(i), depthOf(i)))],
  "specific energy": (i: Inputs): number => specificEnergy(flowOf(i), depthOf(i)) / foot(i),
  "energy above the least": (i: Inputs): number =>
    (specificEnergy(flowOf(i), depthOf(i)) - minimumEnergy(flowOf(i)).energy) / foot(i),
  "least energy over critical depth": (i: Inputs): number => minimumEnergy(flowOf(i)).energy / critical(i),
  "normal depth": (i: Inputs): number => normal(i) / foot(i),
  "critical depth": (i: Inputs): number => critical(i) / foot(i),
  "critical speed": (i: Inputs): number =>
    flowOf(i).discharge / sectionGeometry(sectionOf(i), critical(i)).area / foot(i),
  "critical depth over (q²/g)^(1/3)": (i: Inputs): number => {
    const flow = flowOf(i);
    const unit = flow.discharge / (number(i, "width") * foot(i));
    return critical(i) / Math.cbrt(unit ** 2 / gravityOf(i));
  },
  "critical slope": (i: Inputs): number =>
    frictionSlope(channelOf({ slope: 1, ...i }), critical(i), flowOf(i).discharge),
  "slope of friction at a depth": (i: Inputs): number =>
    frictionSlope(channelOf({ slope: 1, ...i }), depthOf(i), flowOf(i).discharge),
  "greatest shear on the bed, lb/ft²": (i: Inputs): number => shearOf(i, "greatest"),
  "mean shear on the bed, lb/ft²": (i: Inputs): number => shearOf(i, "mean"),
  "depth after a jump": (i: Inputs): number => jumpOf(i).after / foot(i),
  "depth after over before a jump": (i: Inputs): number => jumpOf(i).after / jumpOf(i).before,
  "speed after a jump": (i: Inputs): number =>
    flowOf(i).discharge / sectionGeometry(sectionOf(i), jumpOf(i).after).area / foot(i),
  "Froude number after a jump": (i: Inputs): number => jumpOf(i).froudeAfter,
  "head lost in a jump": (i: Inputs): number => jumpOf(i).headLoss / foot(i),
  "head lost in a jump, %": (i: Inputs): number =>
    (100 * jumpOf(i).headLoss) / specificEnergy(flowOf(i), depthOf(i)),
  "power lost in a jump, kW": (i: Inputs): number => jumpOf(i).power / 1000,
  "head lost in a jump over (y2 − y1)³/(4 y1 y2)": (i: Inputs): number =>
    jumpOf(i).headLoss / rectangleLoss(jumpOf(i)),
} as const;
