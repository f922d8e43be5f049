/** The cases of resistance, gaugings, ratings, hydraulic geometry and water surfaces. */
import { arcementSchneider } from "./arcement-schneider-1989/cases.js";
import type { SourceCases } from "./case.js";
import { chowBackwater } from "./chow-10-1/cases.js";
import { chowTableCases } from "./chow-table-5-6/cases.js";
import { gaugingIdentities } from "./gauging-identities/cases.js";
import { hydrocal } from "./hydrocal/cases.js";
import { leopoldMaddock } from "./leopold-maddock-1953/cases.js";
import { resistanceRatios } from "./resistance-ratios/cases.js";
import { rivrProfiles } from "./rivr-profile/cases.js";
import { scipyStatistics } from "./scipy-statistics/cases.js";
import { subramanyaDischarge } from "./subramanya-discharge/cases.js";

export const reachFolders: readonly SourceCases[] = [
  hydrocal,
  arcementSchneider,
  resistanceRatios,
  chowTableCases,
  subramanyaDischarge,
  leopoldMaddock,
  chowBackwater,
  rivrProfiles,
  scipyStatistics,
  gaugingIdentities,
];

/** Rows of the list of check values that these folders answer. */
export const reachRows: Readonly<Record<"R" | "Q" | "H" | "G", readonly number[]>> = {
  R: [1, 2, 4, 6, 8, 9, 10, 11, 13, 14, 15, 20, 21, 23, 25, 30, 31, 32, 33, 34, 35, 36, 38, 39, 40, 41],
  Q: [1, 3],
  H: [1, 2, 3, 4],
  G: [1, 4],
};
