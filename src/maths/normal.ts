/** The standard normal distribution: distribution function and quantile. */
import { lowerGammaShare } from './gamma.ts';

/** P(Z <= z), by the incomplete gamma function: erf(x) = P(1/2, x^2). */
export function normalCdf(z: number): number {
  const half = lowerGammaShare(0.5, (z * z) / 2) / 2;
  return z < 0 ? 0.5 - half : 0.5 + half;
}

const A = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.693765509461, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
];
const B = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852546,
];
const C = [
  1.4234371107496835, 4.630337846156545, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
];
const D = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
];
const E = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7,
];
const F = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  0.000018463183175100548, 1.421511758316446e-7, 2.0442631033899397e-15,
];

/** Value of a polynomial of degree 7, constant term first. */
function horner(c: readonly number[], x: number): number {
  let sum = 0;
  for (let i = 7; i >= 0; i--) sum = sum * x + (c[i] as number);
  return sum;
}

/** z with P(Z <= z) = p, 0 < p < 1, to about 1e-16: Wichura (1988) Algorithm AS 241, Appl. Statist. 37:477-484. */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * horner(A, r)) / horner(B, r);
  }
  const tail = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const z =
    tail <= 5 ? horner(C, tail - 1.6) / horner(D, tail - 1.6) : horner(E, tail - 5) / horner(F, tail - 5);
  return q < 0 ? -z : z;
}
