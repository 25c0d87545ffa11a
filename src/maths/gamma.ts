/** The gamma distribution: regularised incomplete gamma function and quantile. */

const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

/** ln Gamma(x) for x > 0: Lanczos (1964), g = 7, nine terms. */
export function lnGamma(x: number): number {
  const z = x - 1;
  const t = z + 7.5;
  const series = LANCZOS.reduce((sum, c, i) => sum + c / (z + i + 1), 0.9999999999998099);
  return 0.9189385332046727 + (z + 0.5) * Math.log(t) - t + Math.log(series);
}

const TINY = 1e-300;
const MOST_TERMS = 1000;
const CLOSE = 1e-16;

/** P(a, x): share of a gamma variable of shape a, scale 1, that lies below x (Abramowitz & Stegun 6.5.29, 6.5.31). */
export function lowerGammaShare(shape: number, x: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(shape * Math.log(x) - x - lnGamma(shape));
  return x < shape + 1 ? front * seriesBelow(shape, x) : 1 - front * fractionAbove(shape, x);
}

function seriesBelow(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < MOST_TERMS && term > sum * CLOSE; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

/** Continued fraction for the upper tail by the modified Lentz method. */
function fractionAbove(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = 1 / TINY;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const a = -n * (n - shape);
    b += 2;
    d = 1 / (Math.abs(a * d + b) < TINY ? TINY : a * d + b);
    c = b + a / c;
    h *= d * c;
    if (Math.abs(d * c - 1) < CLOSE) break;
  }
  return h;
}

/** x with P(shape, x) = p, by bisection to the last bit; 0 for p <= 0. */
export function gammaQuantile(p: number, shape: number): number {
  if (p <= 0) return 0;
  let low = 0;
  let high = shape + 1;
  while (lowerGammaShare(shape, high) < p) high *= 2;
  for (let i = 0; i < 200 && high - low > high * 1e-15; i++) {
    const middle = (low + high) / 2;
    if (lowerGammaShare(shape, middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
