/** Elementary functions of sums, products, quotients and square roots alone, which IEEE 754 rounds the same everywhere: engines may compute those
 *  of `Math` as they like, differ in the last digit, and a solver that ends one step sooner then answers otherwise. To one or two units in
 *  the last place. Reductions and coefficients: Sun Microsystems 1993, fdlibm, read as tabulated in FreeBSD's msun. */

const halfLn2 = 0.5 * Math.LN2;
const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;

/** 2^k for k from −1074 to 1023. */
const twos: Float64Array = new Float64Array(2098);
for (let k = 0, up = 1; k < 1024; k++, up *= 2) twos[k + 1074] = up;
for (let k = 1, down = 0.5; k <= 1074; k++, down /= 2) twos[1074 - k] = down;

const bits: DataView = new DataView(new ArrayBuffer(8));

/** e^x. */
export function exp(x: number): number {
  if (!(x > -746 && x < 709.8)) return x < 0 ? 0 : x + Number.POSITIVE_INFINITY;
  const k = Math.abs(x) > halfLn2 ? Math.round(x * Math.LOG2E) : 0;
  const high = x - k * ln2High;
  const low = k * ln2Low;
  const r = high - low;
  const t = r * r;
  const c =
    r -
    t *
      (0.16666666666666602 +
        t *
          (-2.7777777777015593e-3 +
            t * (6.613756321437934e-5 + t * (-1.6533902205465252e-6 + t * 4.1381367970572385e-8))));
  const y = 1 - (low - (r * c) / (2 - c) - high);
  return k > 1023 ? 2 * y * twos[k + 1073]! : k < -1074 ? 0.5 * y * twos[0]! : y * twos[k + 1074]!;
}

/** The natural logarithm; NaN below 0. */
export function ln(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY))
    return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
  const small = x < 2.2250738585072014e-308;
  bits.setFloat64(0, small ? x * 0x40000000000000 : x);
  // the exponent for a significand from √½ to √2
  const k = (bits.getInt32(0) - 0x3fe6a09e) >> 20;
  const f = (small ? x * 0x40000000000000 : x) * twos[1074 - k]! - 1;
  const s = f / (2 + f);
  const z = s * s;
  const tail =
    z *
    (0.6666666666666735 +
      z *
        (0.3999999999940942 +
          z *
            (0.2857142874366239 +
              z *
                (0.22222198432149784 +
                  z * (0.1818357216161805 + z * (0.15313837699209373 + z * 0.14798198605116586))))));
  const half = 0.5 * f * f;
  const n = small ? k - 54 : k;
  return n * ln2High - (half - (s * (half + tail) + n * ln2Low) - f);
}

/** The decimal logarithm. */
export function log10(x: number): number {
  const rough = ln(x) / Math.LN10;
  const whole = Math.round(rough);
  return Math.abs(whole) < 16 && Math.abs(rough - whole) < 1e-15 * Math.abs(rough) && raise(10, whole) === x
    ? whole
    : rough;
}

/** ln(1 + x), as exact for small x. */
export function ln1p(x: number): number {
  const sum = 1 + x;
  // what rounding took from the sum, it took from its logarithm in proportion
  return sum === 1 ? x : (ln(sum) * x) / (sum - 1);
}

/** x^p, for x of 0 or more, or a whole p. Whole p up to 1024 by products, else exp(p ln x): to |p ln x| units in the last place. */
export function raise(x: number, p: number): number {
  if (Number.isInteger(p) && Math.abs(p) <= 1024) return p < 0 ? 1 / byProducts(x, -p) : byProducts(x, p);
  if (p === 0.5) return Math.sqrt(x);
  return x === 0 ? (p > 0 ? 0 : Number.POSITIVE_INFINITY) : exp(p * ln(x));
}

function byProducts(x: number, p: number): number {
  let product = 1;
  for (let factor = x, left = p; left > 0; left = Math.floor(left / 2), factor *= factor) {
    if (left % 2 === 1) product *= factor;
  }
  return product;
}

/** The cube root. */
export function cbrt(x: number): number {
  if (x === 0 || !Number.isFinite(x)) return x;
  const size = Math.abs(x);
  const root = exp(ln(size) / 3);
  return Math.sign(x) * (root - (root - size / (root * root)) / 3);
}

/** The root of a sum of squares that neither over- nor underflow. */
export function hypot(a: number, b: number): number {
  return Math.sqrt(a * a + b * b);
}

/** The hyperbolic tangent. */
export function tanh(x: number): number {
  const size = Math.abs(x);
  const t = size < 0.2 ? tanhSeries(size) : 1 - 2 / (exp(2 * size) + 1);
  return x < 0 ? -t : t;
}

/** By the continued fraction of tanh, whose sixth convergent is exact to the last place below 0.2. */
function tanhSeries(x: number): number {
  const t = x * x;
  return x / (1 + t / (3 + t / (5 + t / (7 + t / (9 + t / 11)))));
}

/** The inverse hyperbolic sine. */
export function asinh(x: number): number {
  const size = Math.abs(x);
  const value = ln1p(size + (size * size) / (1 + Math.sqrt(1 + size * size)));
  return x < 0 ? -value : value;
}
