/** Resistance of stony beds, as the cases ask for it. */
import {
  bathurstRatio,
  type ChowChannel,
  type CowanChoice,
  chowRoughness,
  chowTable,
  cowanRoughness,
  cowanTable,
  fergusonRatio,
  heyRatio,
  jarrettRoughness,
  limerinosRatio,
  manningOf,
  maynordRoughness,
  metres,
  rickenmannReckingRatio,
  rickenmannReckingSpeed,
  shearVelocityOf,
  stricklerRoughness,
  velocityRatioOf,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

function bound(i: Inputs): "min" | "normal" | "max" {
  const name = text(i, "bound");
  if (name !== "min" && name !== "normal" && name !== "max")
    throw new TypeError(`no bound is called ${name}`);
  return name;
}

function isChowChannel(name: string): name is ChowChannel {
  return name in chowTable;
}

/** A word of the table of Cowan, checked against it. */
function word<Table extends object>(i: Inputs, name: string, table: Table): keyof Table & string {
  const value = text(i, name);
  const known = (key: string): key is keyof Table & string => key in table;
  if (!known(value)) throw new TypeError(`${name} is not ${value}`);
  return value;
}

function cowan(i: Inputs): CowanChoice {
  return {
    material: word(i, "material", cowanTable.material),
    irregularity: word(i, "irregularity", cowanTable.irregularity),
    variation: word(i, "variation", cowanTable.variation),
    obstructions: word(i, "obstructions", cowanTable.obstructions),
    vegetation: word(i, "vegetation", cowanTable.vegetation),
    meandering: word(i, "meandering", cowanTable.meandering),
  };
}

const d84 = (i: Inputs) => number(i, "radius") / number(i, "d84");

export const resistanceEvaluations = {
  "n by Limerinos": (i: Inputs): number => manningOf(limerinosRatio(d84(i)), metres(number(i, "radius"))),
  "n by Bathurst": (i: Inputs): number => manningOf(bathurstRatio(d84(i)), metres(number(i, "radius"))),
  "n by Jarrett": (i: Inputs): number => jarrettRoughness(number(i, "slope"), number(i, "radius")),
  "n by Strickler": (i: Inputs): number => stricklerRoughness(number(i, "d50")),
  "n by Maynord": (i: Inputs): number => maynordRoughness(number(i, "d90")),
  "n by Cowan": (i: Inputs): number => cowanRoughness(cowan(i)).normal,
  "n by Cowan, base and vegetation": (i: Inputs): number => number(i, "base") + cowanTable.vegetation.low.min,
  "n by Chow's table": (i: Inputs): number => {
    const channel = text(i, "channel");
    if (!isChowChannel(channel)) throw new TypeError(`no channel is called ${channel}`);
    return chowRoughness(channel)[bound(i)];
  },
  "n from speed, slope and hydraulic radius": (i: Inputs): number => {
    const radius = metres(number(i, "radius"));
    return manningOf(number(i, "speed") / shearVelocityOf(radius, number(i, "slope")), radius);
  },
  "friction factor of n": (i: Inputs): number =>
    8 / velocityRatioOf(number(i, "n"), metres(number(i, "radius"))) ** 2,
  "V/u* by Ferguson": (i: Inputs): number => fergusonRatio(number(i, "x")),
  "V/u* by Rickenmann and Recking": (i: Inputs): number => rickenmannReckingRatio(number(i, "x")),
  "V/u* by Limerinos": (i: Inputs): number => limerinosRatio(number(i, "x")),
  "V/u* by Bathurst": (i: Inputs): number => bathurstRatio(number(i, "x")),
  "V/u* by Hey": (i: Inputs): number => heyRatio(number(i, "x")),
  "1/√f by Hey at R = D84": (i: Inputs): number => heyRatio(1, number(i, "shape")) / Math.sqrt(8),
  "U** by Rickenmann and Recking": (i: Inputs): number => rickenmannReckingSpeed(number(i, "q")),
} as const;
