/** Every case, and the rows of the list of check values that must each have a case or a reason. */
import { type Case, casesOf, type SourceCases } from "./case.js";
import { castsOverLanes } from "./casts-over-lanes/cases.js";
import { channelFolders, channelRows } from "./channel-cases.js";
import { closedForms } from "./closed-forms/cases.js";
import { commonPractice } from "./common-practice/cases.js";
import { cowanTableCases } from "./cowan-1956/cases.js";
import { dennisChang } from "./dennis-chang-1970/cases.js";
import { dietrich } from "./dietrich-1982/cases.js";
import { feedingSources } from "./drift-feeding/cases.js";
import { floatMethod } from "./float-method/cases.js";
import { gpsa } from "./gpsa-13/cases.js";
import { hughesDill } from "./hughes-dill-1990/cases.js";
import { iapws95 } from "./iapws-95/cases.js";
import { iapwsSurfaceTension } from "./iapws-r1-76/cases.js";
import { iapwsLiquid } from "./iapws-sr6-08/cases.js";
import { isoViscosity } from "./iso-tr-3666/cases.js";
import { katul } from "./katul-2002/cases.js";
import { kell } from "./kell-1975/cases.js";
import { lineInAStream } from "./line-in-a-stream/cases.js";
import { masui } from "./masui-density/cases.js";
import { mazi } from "./mazi-surface-ratio/cases.js";
import { moorpy } from "./moorpy/cases.js";
import { nezuNakagawa } from "./nezu-nakagawa-1993/cases.js";
import { nezuRodi } from "./nezu-rodi-1985/cases.js";
import { perry } from "./perry-9/cases.js";
import { profileIdentities } from "./profile-identities/cases.js";
import { publishedRanges } from "./published-ranges/cases.js";
import { rantz } from "./rantz-1982/cases.js";
import { reachFolders, reachRows } from "./reach-cases.js";
import { rushton } from "./rushton-1996/cases.js";
import { scipyPchip } from "./scipy-pchip/cases.js";
import { standardDragCurve } from "./standard-drag-curve/cases.js";
import { statedInTheModel } from "./stated-in-the-model/cases.js";
import { suckerBrauer } from "./sucker-brauer-1975/cases.js";
import { tanaka } from "./tanaka-2001/cases.js";
import { temperatureSources } from "./temperature-criteria/cases.js";
import { tritton } from "./tritton-1959/cases.js";
import { unesco } from "./unesco-44/cases.js";
import { unsteadyLimits } from "./unsteady-limits/cases.js";
import { usgsSurface } from "./usgs-surface-velocity/cases.js";
import { verticalCurve } from "./usgs-vertical-curve/cases.js";
import { wadingSources } from "./wading/cases.js";
import { wentworth } from "./wentworth-1922/cases.js";
import { wholeRig, wholeRigByScipy } from "./whole-rig/cases.js";
import { wieselsberger } from "./wieselsberger-1921/cases.js";

const folders: readonly SourceCases[] = [
  iapwsLiquid,
  iapwsSurfaceTension,
  iapws95,
  tanaka,
  unesco,
  kell,
  masui,
  isoViscosity,
  perry,
  scipyPchip,
  standardDragCurve,
  gpsa,
  rushton,
  dietrich,
  suckerBrauer,
  tritton,
  dennisChang,
  wieselsberger,
  mazi,
  usgsSurface,
  rantz,
  floatMethod,
  verticalCurve,
  katul,
  nezuNakagawa,
  nezuRodi,
  profileIdentities,
  commonPractice,
  lineInAStream,
  moorpy,
  closedForms,
  wholeRig,
  wholeRigByScipy,
  hughesDill,
  cowanTableCases,
  wentworth,
  publishedRanges,
  unsteadyLimits,
  statedInTheModel,
  castsOverLanes,
  ...feedingSources,
  ...wadingSources,
  ...temperatureSources,
  ...channelFolders,
  ...reachFolders,
];

export const cases: readonly Case[] = folders.flatMap(casesOf);

/** Rows of the list of check values that the core can meet or must say why not. Numbers that the list skips are not here. */
export const rows: readonly string[] = [
  ...named("W", [1, 3, 4, 5, 6, 7, 8, 9, 10, 11, 21, 22, 23, 24, 25, 26, 27, 28, 30, 31, 32, 34, 36]),
  ...named("V", [1, 10, 11, 13, 14, 15, 16, 17, 18, 19, 20, 30, 32, 33, 35]),
  ...named("D", [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18]),
  ...named("D", [20, 21, 22, 23, 24, 25, 26, 28, 40, 41, 42, 43, 44, 46, 50, 52, 53, 54, 55, 56, 57, 58, 59]),
  ...named("K", [1, 2, 4, 6, 7, 9, 10, 20, 21, 22, 23]),
  ...named("F", [1, 2, 4, 5, 6, 8, 9, 10, 11, 12]),
  ...named("S", [1, 2, 3, 5, 6, 7, 8, 9, 10, 11]),
  ...Object.entries(channelRows).flatMap(([letter, numbers]) => named(letter, numbers)),
  ...Object.entries(reachRows).flatMap(([letter, numbers]) => named(letter, numbers)),
];

function named(letter: string, numbers: readonly number[]): readonly string[] {
  return numbers.map((n) => `${letter}-${String(n).padStart(2, "0")}`);
}
