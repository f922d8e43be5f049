import type { SourceCases } from "../case.js";

const ofU07 = { units: "m", width: 3.5, depth: 2, n: 0.017, slope: 0.001 };
const ofU08 = { units: "us-exact", diameter: 6, depth: 3, n: 0.024, slope: 0.002 };
const ofU09 = { units: "m", diameter: 0.2, depth: 0.1, n: 0.013, slope: 0.001 };
const ofU11 = { units: "m", width: 3, run: 1.5, depth: 1.5, n: 0.015, slope: 0.001 };
const ofU29 = { units: "m", width: 3, run: 1.1917536368745738, n: 0.017, slope: 0.001, discharge: 15 };
const ofU32 = { units: "m", width: 2, n: 0.017, slope: 0.012, discharge: 12 };
const ofT4 = { units: "m", width: 3, run: 1.5, depth: 1.5, n: 0.015, slope: 0.001 };

export const mott: SourceCases = {
  source: "Mott and Untener, Applied Fluid Mechanics, ch. 14, as evaluated by iemisc",
  locator: "problems 14.5, 14.10, 14.12, 14.17, 14.19 and example 14.2, github:cran/iemisc",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "U-07.discharge", evaluates: "discharge of uniform flow", inputs: ofU07, printed: "12.4358" },
    { id: "U-07.speed", evaluates: "mean speed in a section", inputs: ofU07, printed: "1.776542" },
    { id: "U-07.radius", evaluates: "hydraulic radius", inputs: ofU07, printed: "0.9333333" },
    { id: "U-07.froude", evaluates: "Froude number in a section", inputs: ofU07, printed: "0.401144" },
    { id: "U-07.critical", evaluates: "critical depth", inputs: ofU07, printed: "1.087836" },
    {
      id: "U-08.discharge",
      evaluates: "discharge of uniform flow",
      inputs: ofU08,
      printed: "51.29267",
      tolerance: { relative: 1e-6, because: "K_u is 1.48592 there" },
    },
    { id: "U-08.area", evaluates: "area of a section", inputs: ofU08, printed: "14.13717" },
    { id: "U-08.perimeter", evaluates: "wetted perimeter", inputs: ofU08, printed: "9.424778" },
    {
      id: "U-08.froude",
      evaluates: "Froude number in a section",
      inputs: ofU08,
      printed: "0.416711",
      tolerance: { absolute: 1e-6, because: "K_u is 1.48592 there" },
    },
    { id: "U-09.discharge", evaluates: "discharge of uniform flow", inputs: ofU09, printed: "0.005185889" },
    { id: "U-09.speed", evaluates: "mean speed in a section", inputs: ofU09, printed: "0.3301439" },
    { id: "U-09.radius", evaluates: "hydraulic radius", inputs: ofU09, printed: "0.05" },
    { id: "U-11.discharge", evaluates: "discharge of uniform flow", inputs: ofU11, printed: "15.8923" },
    { id: "U-11.speed", evaluates: "mean speed in a section", inputs: ofU11, printed: "2.018069" },
    { id: "U-11.area", evaluates: "area of a section", inputs: ofU11, printed: "7.875" },
    { id: "U-11.perimeter", evaluates: "wetted perimeter", inputs: ofU11, printed: "8.408327" },
    { id: "U-11.radius", evaluates: "hydraulic radius", inputs: ofU11, printed: "0.9365716" },
    { id: "U-11.hydraulic-depth", evaluates: "hydraulic depth", inputs: ofU11, printed: "1.05" },
    { id: "U-11.energy", evaluates: "specific energy", inputs: ofU11, printed: "1.707645" },
    { id: "U-11.froude", evaluates: "Froude number in a section", inputs: ofU11, printed: "0.6288992" },
    { id: "U-29.normal", evaluates: "normal depth", inputs: ofU29, printed: "1.632" },
    { id: "U-29.speed", evaluates: "mean speed in a section", inputs: ofU29, printed: "1.859" },
    {
      id: "U-32.normal",
      evaluates: "normal depth",
      inputs: ofU32,
      printed: "1.347974",
      tolerance: { absolute: 1e-5, because: "its root is found to 6e-6 m" },
    },
    {
      id: "U-32.froude",
      evaluates: "Froude number in a section",
      inputs: ofU32,
      printed: "1.224246",
      tolerance: { absolute: 1e-5, because: "its root is found to 6e-6 m" },
    },
    {
      id: "T4.manningtrap-critical",
      evaluates: "critical depth",
      inputs: ofT4,
      printed: "1.419",
      disagrees: "the function that printed it is wrong: α Q² B/(g A³) is 0.5 there, not 1",
    },
    { id: "T4.rivr", evaluates: "critical depth", inputs: ofT4, printed: "1.161" },
  ],
};
