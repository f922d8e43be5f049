/** What is wet at a depth, in plain numbers, for kernels that ask many times. */

import { asin, asinh, hypot, raise } from "../elementary/index.js";
import type { CrossSection, PrismaticSection } from "./section.js";
import { surveyWetAt } from "./survey.js";

/** SI. `widening` and `steepening` are the derivatives of width and perimeter; those of area and moment are width and area. */
export interface Wet {
  readonly area: number;
  readonly perimeter: number;
  readonly width: number;
  /** First moment of the area about the surface, m³. */
  readonly moment: number;
  readonly widening: number;
  readonly steepening: number;
}

/** The depth above which the section says nothing, m. */
export function greatestDepth(section: CrossSection): number {
  if (section.shape === "circular") return section.diameter;
  return section.shape === "surveyed" ? section.greatestDepth : Number.POSITIVE_INFINITY;
}

/** No check: the depth must be above 0 and at most the greatest. */
export function wetAt(section: CrossSection, depth: number): Wet {
  return section.shape === "surveyed" ? surveyWetAt(section, depth) : prismaticWetAt(section, depth);
}

function prismaticWetAt(section: PrismaticSection, y: number): Wet {
  switch (section.shape) {
    case "rectangular":
      return banked(section.width, 0, 0, y);
    case "triangular":
      return banked(0, section.leftRun, section.rightRun, y);
    case "trapezoidal":
      return banked(section.bottomWidth, section.leftRun, section.rightRun, y);
    case "circular":
      return circular(section.diameter, y);
    case "parabolic":
      return parabolic(section.width, section.depth, y);
  }
}

/** A = b y + (m1 + m2) y²/2, P = b + y (√(1 + m1²) + √(1 + m2²)), B = b + (m1 + m2) y, Aȳ = b y²/2 + (m1 + m2) y³/6. */
function banked(b: number, left: number, right: number, y: number): Wet {
  const runs = left + right;
  const steepening = Math.sqrt(1 + left * left) + Math.sqrt(1 + right * right);
  return {
    area: (b + 0.5 * runs * y) * y,
    perimeter: b + steepening * y,
    width: b + runs * y,
    moment: (0.5 * b + (runs * y) / 6) * y * y,
    widening: runs,
    steepening,
  };
}

/** With s half of the angle at the centre, sin²(s/2) = y/d: A = d² (s − sin s cos s)/4, P = d s, B = d sin s,
 *  Aȳ = d³ (3 sin s − sin³ s − 3 s cos s)/24. */
function circular(d: number, y: number): Wet {
  const s = 2 * asin(Math.sqrt(y / d));
  const sine = 2 * Math.sqrt((y / d) * (1 - y / d));
  const cosine = 1 - (2 * y) / d;
  return {
    area: 0.25 * d * d * (s < 0.5 ? segment(s) : s - sine * cosine),
    perimeter: d * s,
    width: d * sine,
    moment: (raise(d, 3) / 24) * (s < 0.5 ? segmentMoment(s) : sine * (3 - sine * sine) - 3 * s * cosine),
    widening: (2 * cosine) / sine,
    steepening: 2 / sine,
  };
}

/** s − sin s cos s, which loses its digits for small s, as a series: Σ −(−4)^k s^(2k+1)/(2k+1)! 2/2. */
function segment(s: number): number {
  const q = 4 * s * s;
  let term = (q * s) / 6;
  let sum = 0;
  for (let k = 2; k <= 10; k++) {
    sum += term;
    term *= -q / (2 * k * (2 * k + 1));
  }
  return sum;
}

/** 3 sin s − sin³ s − 3 s cos s as a series: Σ (−1)^k s^(2k+1)/(2k+1)! (9/4 + 3^(2k+1)/4 − 3 (2k + 1)), from k = 2. */
function segmentMoment(s: number): number {
  let power = raise(s, 5) / 120;
  let three = 243;
  let sum = 0;
  for (let k = 2; k <= 11; k++) {
    sum += power * (2.25 + three / 4 - 3 * (2 * k + 1));
    power *= (-s * s) / ((2 * k + 2) * (2 * k + 3));
    three *= 9;
  }
  return sum;
}

/** B = B0 √(y/y0), A = 2 B y/3, P = (B/2) (√(1 + x²) + asinh(x)/x) with x = 4y/B, Aȳ = 4 B y²/15. */
function parabolic(width: number, depth: number, y: number): Wet {
  const b = width * Math.sqrt(y / depth);
  const x = (4 * y) / b;
  return {
    area: (2 * b * y) / 3,
    perimeter: 0.5 * b * (hypot(1, x) + asinh(x) / x),
    width: b,
    moment: (4 * b * y * y) / 15,
    widening: b / (2 * y),
    steepening: 2 * hypot(1, 1 / x),
  };
}
