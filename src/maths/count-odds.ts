/** How likely a count is, of which only mean and variance are known. */
import { lnGamma } from './gamma.ts';

/** Closer to 1 than this, variance over mean is that of a Poisson count. */
const POISSON = 1e-9;
/** ln of a chance too small to tell from none. */
const HARDLY = -700;

const lnChoose = (n: number, k: number): number => lnGamma(n + 1) - lnGamma(k + 1) - lnGamma(n - k + 1);

/** ln C(n, k) p^k (1 - p)^(n - k); n need not be whole. */
function lnBinomial(k: number, n: number, p: number): number {
  if (k > n) return HARDLY;
  return lnChoose(n, k) + k * Math.log(p) + (n > k ? (n - k) * Math.log1p(-p) : 0);
}

/** ln e^-m m^k / k! */
const lnPoisson = (k: number, mean: number): number => k * Math.log(mean) - mean - lnGamma(k + 1);

/** ln G(r + k) / (G(r) k!) p^r (1 - p)^k: a Poisson count whose mean is gamma of shape r and rate p/(1 - p). */
const lnNegativeBinomial = (k: number, r: number, p: number): number =>
  lnGamma(r + k) - lnGamma(r) - lnGamma(k + 1) + r * Math.log(p) + k * Math.log1p(-p);

/**
 * ln P(K = k) of the one count of its mean and variance among the binomial (variance below the mean), the Poisson and
 * the negative binomial (above): the class of Panjer (1981), ASTIN Bulletin 12:22-26. Certain to be 0 for a mean of 0.
 */
export function lnCountOdds(k: number, mean: number, variance: number): number {
  if (mean <= 0) return k === 0 ? 0 : HARDLY;
  const ratio = variance / mean;
  if (Math.abs(ratio - 1) < POISSON) return lnPoisson(k, mean);
  if (ratio > 1) return lnNegativeBinomial(k, mean / (ratio - 1), 1 / ratio);
  return lnBinomial(k, mean / (1 - ratio), 1 - ratio);
}
