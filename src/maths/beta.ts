/** The beta distribution: regularised incomplete beta function and quantile. */
import { lnGamma } from './gamma.ts';

const TINY = 1e-300;
const MOST_TERMS = 1000;
const CLOSE = 1e-16;
const HALVINGS = 200;

/** I_x(a, b): share of a beta variable that lies below x (Abramowitz & Stegun 26.5.8, by the modified Lentz method). */
export function lowerBetaShare(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(1 - x, b, a)) / b;
}

const apart = (value: number): number => (Math.abs(value) < TINY ? TINY : value);

/** 1 / (1 + d1 / (1 + d2 / (1 + ...))) */
function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / apart(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / apart(1 + even * d);
    c = apart(1 + even / c);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / apart(1 + odd * d);
    c = apart(1 + odd / c);
    h *= d * c;
    if (Math.abs(d * c - 1) < CLOSE) break;
  }
  return h;
}

/** x with I_x(a, b) = p, by bisection to the last bit. */
export function betaQuantile(p: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < HALVINGS && high - low > high * CLOSE; i++) {
    const middle = (low + high) / 2;
    if (lowerBetaShare(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
