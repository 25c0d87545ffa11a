/** Dice of the worlds: a generator of their own, and the distributions they draw from. */

export interface Dice {
  /** Strictly between 0 and 1. */
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly exponential: () => number;
  /** Mean 1. */
  readonly gammaOfCv: (cv: number) => number;
  /** Median 1. */
  readonly logNormal: (logSd: number) => number;
}

/** Small fast counting generator of 32 bits (Doty-Humphrey, sfc32, public domain), its first numbers thrown away. */
export function diceOf(seed: number): Dice {
  let [a, b, c, counter] = [0, 0x9e3779b9, seed | 0, 1];
  const word = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  const uniform = () => (word() + 0.5) / 4294967296;
  for (let i = 0; i < 20; i += 1) word();
  const exponential = () => -Math.log(uniform());
  /** Polar to plain (Box & Muller 1958). */
  const normal = () => Math.sqrt(2 * exponential()) * Math.cos(2 * Math.PI * uniform());
  return {
    uniform,
    normal,
    exponential,
    gammaOfCv: (cv) => gamma(1 / cv ** 2, { normal, uniform }) * cv ** 2,
    logNormal: (logSd) => Math.exp(logSd * normal()),
  };
}

/** Marsaglia & Tsang (2000), ACM Trans. Math. Softw. 26:363-372; shape 1 or more. */
function gamma(shape: number, { normal, uniform }: Pick<Dice, 'normal' | 'uniform'>): number {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(uniform()) < (x * x) / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}
