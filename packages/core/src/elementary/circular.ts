/** Circular functions of sums, products, quotients and square roots alone: see logarithms.ts for why, and where the coefficients are from. */

const halfPiHigh = 1.5707963267341256;
const halfPiLow = 6.077100506506192e-11;
const arcSeries = [
  0.3333333333333293, -0.19999999999876483, 0.14285714272503466, -0.11111110405462356, 0.09090887133436507,
  -0.0769187620504483, 0.06661073137387531, -0.058335701337905735, 0.049768779946159324,
  -0.036531572744216916, 0.016285820115365782,
] as const;

/** The sine of an angle in radians, |x| up to 1e5. */
export function sin(x: number): number {
  return turned(x, 0);
}

/** The cosine of an angle in radians, |x| up to 1e5. */
export function cos(x: number): number {
  return turned(x, 1);
}

/** The sine of an angle and so many quarters of a turn. */
function turned(x: number, quarters: number): number {
  const n = Math.round((x * 2) / Math.PI);
  const y = x - n * halfPiHigh;
  const low = n * halfPiLow;
  const r = y - low;
  const rest = y - r - low;
  const quarter = (((n + quarters) % 4) + 4) % 4;
  const value = quarter % 2 === 0 ? sineNear(r, rest) : cosineNear(r, rest);
  return quarter < 2 ? value : -value;
}

function sineNear(x: number, rest: number): number {
  const z = x * x;
  const r =
    0.00833333333332249 +
    z *
      (-0.0001984126982985795 +
        z * (2.7557313707070068e-6 + z * (-2.5050760253406863e-8 + z * 1.58969099521155e-10)));
  const cube = z * x;
  return x - (z * (0.5 * rest - cube * r) - rest - cube * -0.16666666666666632);
}

function cosineNear(x: number, rest: number): number {
  const z = x * x;
  const r =
    z *
    (0.0416666666666666 +
      z *
        (-0.001388888888887411 +
          z *
            (2.480158728947673e-5 +
              z * (-2.7557314351390663e-7 + z * (2.087572321298175e-9 + z * -1.1359647557788195e-11)))));
  const half = 0.5 * z;
  const w = 1 - half;
  return w + (1 - w - half + (z * r - x * rest));
}

/** The angle of a point from the first axis, from −π to π. */
export function atan2(y: number, x: number): number {
  if (x === 0 && y === 0) return 0;
  const a = Math.abs(y);
  const b = Math.abs(x);
  const acute = a <= b ? arc(a, b) : Math.PI / 2 - arc(b, a);
  const angle = x < 0 ? Math.PI - acute : acute;
  return y < 0 ? -angle : angle;
}

/** The angle whose sine is x, |x| up to 1. */
export function asin(x: number): number {
  return atan2(x, Math.sqrt((1 - x) * (1 + x)));
}

/** The angle whose tangent is a/b, a at most b: that of 1/2 is taken off where it is nearer to it than to nought. */
function arc(a: number, b: number): number {
  if (a < 0.4375 * b) return arcNear(a / b);
  return a < 0.6875 * b
    ? 0.4636476090008061 + arcNear((2 * a - b) / (2 * b + a))
    : Math.PI / 4 + arcNear((a - b) / (a + b));
}

function arcNear(x: number): number {
  const z = x * x;
  let sum = 0;
  for (let i = arcSeries.length - 1; i >= 0; i--) sum = z * (arcSeries[i]! + sum);
  return x - x * sum;
}
