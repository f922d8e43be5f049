/** The cases of sections, uniform and critical flow, energy and jumps. */

import { ancey } from "./ancey/cases.js";
import { automaticSolution } from "./automatic-solution/cases.js";
import { bengtson } from "./bengtson/cases.js";
import type { SourceCases } from "./case.js";
import { cengel } from "./cengel-jump/cases.js";
import { channelIdentities } from "./channel-identities/cases.js";
import { chowFlow } from "./chow-1959-flow/cases.js";
import { cleveland } from "./cleveland-ce5362/cases.js";
import { cruise } from "./cruise-11/cases.js";
import { fang } from "./fang-calculator/cases.js";
import { fhwaHds } from "./fhwa-hds/cases.js";
import { fhwaToolbox } from "./fhwa-toolbox/cases.js";
import { flowIdentities } from "./flow-identities/cases.js";
import { hauser } from "./hauser/cases.js";
import { hwang } from "./hwang-6/cases.js";
import { leeds } from "./leeds-cive3415/cases.js";
import { maurer } from "./maurer-hydraulics/cases.js";
import { mott } from "./mott-14/cases.js";
import { munson } from "./munson-10/cases.js";
import { rivrFlow } from "./rivr-flow/cases.js";
import { sdsu } from "./sdsu-cive-530/cases.js";
import { white } from "./white-10/cases.js";

export const channelFolders: readonly SourceCases[] = [
  sdsu,
  fhwaToolbox,
  fang,
  munson,
  mott,
  hauser,
  ancey,
  leeds,
  chowFlow,
  bengtson,
  cruise,
  rivrFlow,
  fhwaHds,
  maurer,
  white,
  cleveland,
  hwang,
  cengel,
  channelIdentities,
  flowIdentities,
  automaticSolution,
];

/** Rows of the list of check values that these folders answer. */
export const channelRows: Readonly<Record<"U" | "C" | "J", readonly number[]>> = {
  U: [1, 3, 4, 6, 7, 8, 9, 11, 12, 14, 20, 21, 22, 24, 25, 27, 29, 31, 32, 33, 34, 36],
  C: [2, 3, 4, 5, 6, 9, 10, 11, 13, 14, 15, 17, 18],
  J: [1, 2, 4, 6],
};
