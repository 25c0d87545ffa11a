/** Means over a day whose temperature swings as a sine between its least and greatest value. */

/** A continuous curve of straight pieces: x ascending; constant left of the first and right of the last point. */
export interface PiecewiseLinear {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** The curve's value at x. */
export function valueAt(curve: PiecewiseLinear, x: number): number {
  const { x: xs, y: ys } = curve;
  const last = xs.length - 1;
  if (x <= (xs[0] as number)) return ys[0] as number;
  if (x >= (xs[last] as number)) return ys[last] as number;
  let i = 1;
  while ((xs[i] as number) < x) i++;
  const [x0, x1] = [xs[i - 1] as number, xs[i] as number];
  const [y0, y1] = [ys[i - 1] as number, ys[i] as number];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/**
 * Mean of the curve over a sine day: (1/pi) * integral of f(M + A sin t), t from -pi/2 to pi/2,
 * M = (max + min)/2, A = (max - min)/2; exact piece by piece. With f = 0 below a lower threshold, rising by 1 per
 * degree and flat above an upper one this is the single-sine degree-day (Baskerville & Emin 1969, Ecology 50:514-517).
 */
export function meanOverSineDay(curve: PiecewiseLinear, min: number, max: number): number {
  const middle = (max + min) / 2;
  const amplitude = (max - min) / 2;
  if (amplitude <= 0) return valueAt(curve, middle);
  const cuts = [min, ...curve.x.filter((x) => x > min && x < max), max];
  let sum = 0;
  for (let i = 1; i < cuts.length; i++) {
    sum += pieceIntegral(curve, { from: cuts[i - 1] as number, to: cuts[i] as number, middle, amplitude });
  }
  return sum / Math.PI;
}

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  readonly amplitude: number;
}

function pieceIntegral(curve: PiecewiseLinear, { from, to, middle, amplitude }: Piece): number {
  const [y0, y1] = [valueAt(curve, from), valueAt(curve, to)];
  const slope = (y1 - y0) / (to - from);
  const t0 = Math.asin(Math.max(-1, (from - middle) / amplitude));
  const t1 = Math.asin(Math.min(1, (to - middle) / amplitude));
  return (y0 + slope * (middle - from)) * (t1 - t0) - slope * amplitude * (Math.cos(t1) - Math.cos(t0));
}
