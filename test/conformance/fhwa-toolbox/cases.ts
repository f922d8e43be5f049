import type { SourceCases } from "../case.js";

const ofU03 = { units: "us-1.486", width: 4, run: 3, depth: 1.454, n: 0.055, slope: 0.02, gravity: 32.2 };
const ofU22 = {
  units: "us-1.486",
  width: 8,
  run: 2,
  rightRun: 1.5,
  n: 0.015,
  slope: 0.01,
  discharge: 745,
  gravity: 32.2,
};
const ofC06 = { units: "us-1.486", width: 4, run: 3, n: 0.055, discharge: 44.001, gravity: 32.2 };
const ofT3 = { units: "us-1.486", width: 8, run: 2, rightRun: 1.5, n: 0.015, discharge: 745, gravity: 32.2 };

export const fhwaToolbox: SourceCases = {
  source: "FHWA Hydraulic Toolbox v4.4",
  locator: "examples 1 and 2, as quoted by github:cran/iemisc@991a620, vignette Comparing_Manningtrap",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "U-03.discharge",
      evaluates: "discharge of uniform flow",
      inputs: ofU03,
      printed: "44.001",
      tolerance: { absolute: 0.04, because: "the depth is printed to 0.001 ft" },
    },
    {
      id: "U-03.area",
      evaluates: "area of a section",
      inputs: ofU03,
      printed: "12.161",
      tolerance: { absolute: 0.0064, because: "the depth is printed to 0.001 ft" },
    },
    {
      id: "U-03.perimeter",
      evaluates: "wetted perimeter",
      inputs: ofU03,
      printed: "13.197",
      tolerance: { absolute: 0.0032, because: "the depth is printed to 0.001 ft" },
    },
    { id: "U-03.radius", evaluates: "hydraulic radius", inputs: ofU03, printed: "0.921" },
    { id: "U-03.speed", evaluates: "mean speed in a section", inputs: ofU03, printed: "3.618" },
    {
      id: "U-03.width",
      evaluates: "top width",
      inputs: ofU03,
      printed: "12.725",
      tolerance: { absolute: 0.003, because: "the depth is printed to 0.001 ft" },
    },
    { id: "U-03.froude", evaluates: "Froude number in a section", inputs: ofU03, printed: "0.652" },
    {
      id: "U-03.greatest-shear",
      evaluates: "greatest shear on the bed, lb/ft²",
      inputs: ofU03,
      printed: "1.815",
    },
    { id: "U-03.mean-shear", evaluates: "mean shear on the bed, lb/ft²", inputs: ofU03, printed: "1.150" },
    { id: "U-22.normal", evaluates: "normal depth", inputs: ofU22, printed: "3.298" },
    {
      id: "U-22.area",
      evaluates: "area of a section",
      inputs: ofU22,
      printed: "45.419",
      tolerance: { absolute: 0.0098, because: "the depth is printed to 0.001 ft" },
    },
    {
      id: "U-22.perimeter",
      evaluates: "wetted perimeter",
      inputs: ofU22,
      printed: "21.320",
      tolerance: { absolute: 0.002, because: "the depth is printed to 0.001 ft" },
    },
    { id: "U-22.radius", evaluates: "hydraulic radius", inputs: ofU22, printed: "2.130" },
    {
      id: "U-22.speed",
      evaluates: "mean speed in a section",
      inputs: ofU22,
      printed: "16.408",
      tolerance: { absolute: 0.01, because: "the depth is printed to 0.001 ft" },
    },
    {
      id: "U-22.width",
      evaluates: "top width",
      inputs: ofU22,
      printed: "19.543",
      tolerance: { absolute: 0.0018, because: "the depth is printed to 0.001 ft" },
    },
    { id: "U-22.froude", evaluates: "Froude number in a section", inputs: ofU22, printed: "1.896" },
    {
      id: "U-22.greatest-shear",
      evaluates: "greatest shear on the bed, lb/ft²",
      inputs: ofU22,
      printed: "2.058",
    },
    { id: "U-22.mean-shear", evaluates: "mean shear on the bed, lb/ft²", inputs: ofU22, printed: "1.329" },
    { id: "C-06.critical", evaluates: "critical depth", inputs: ofC06, printed: "1.163" },
    {
      id: "C-06.speed",
      evaluates: "mean speed in a section",
      inputs: { ...ofC06, depth: 1.163 },
      printed: "5.052",
    },
    { id: "C-06.width", evaluates: "top width", inputs: { ...ofC06, depth: 1.163 }, printed: "10.978" },
    {
      id: "C-06.slope",
      evaluates: "slope of friction at a depth",
      inputs: { ...ofC06, depth: 1.163 },
      printed: "0.04979",
      tolerance: { absolute: 5e-5, because: "the depth is printed to 0.001 ft" },
    },
    {
      id: "T3.misprint",
      evaluates: "critical slope",
      inputs: ofT3,
      printed: "0.0257",
      disagrees: "a typing error in the copy: ten times the slope that the same table's numbers give",
    },
    { id: "T3.beside-it", evaluates: "critical slope", inputs: ofT3, printed: "0.0026" },
  ],
};
