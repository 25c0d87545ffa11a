/** The frontier of money against harm: what can be had by choosing among ways to buy, or by turns between two of them. */
import type { Point } from './prices.ts';

export const meanOf = (points: readonly Point[]): Point => ({
  cents: points.reduce((sum, { cents }) => sum + cents, 0) / points.length,
  harm: points.reduce((sum, { harm }) => sum + harm, 0) / points.length,
});

/** Indices of the points of the lower left convex hull, from the least harm to the least cost. */
export function hullOf(points: readonly Point[]): number[] {
  const order = points
    .map((_, k) => k)
    .sort((a, b) => at(points, a).harm - at(points, b).harm || at(points, a).cents - at(points, b).cents);
  const hull: number[] = [];
  for (const k of order) {
    if (hull.length > 0 && at(points, k).cents >= at(points, hull[hull.length - 1] as number).cents) continue;
    while (hull.length > 1 && isAbove(points, hull, k)) hull.pop();
    hull.push(k);
  }
  return hull;
}

const at = (points: readonly Point[], k: number): Point => points[k] as Point;

/** Whether the last of a hull lies on or above the line from the one before it to a new point. */
function isAbove(points: readonly Point[], hull: readonly number[], k: number): boolean {
  const [a, b] = hull.slice(-2).map((n) => at(points, n)) as [Point, Point];
  const c = at(points, k);
  return (b.cents - a.cents) * (c.harm - a.harm) >= (c.cents - a.cents) * (b.harm - a.harm);
}

export interface Read {
  readonly cents: number;
  /** Whether the harm lies within what the points reach; else the nearest end was taken. */
  readonly within: boolean;
}

/**
 * Cost of the points' hull at a harm. More harm than any brings: the cheapest. Less than any: the most careful, and the
 * harm it still does at its stated price, since no way to avoid it is among the points.
 */
export function costAt(points: readonly Point[], harm: number): Read {
  const hull = hullOf(points).map((k) => at(points, k));
  const [first] = hull as [Point];
  const last = hull[hull.length - 1] as Point;
  if (harm < first.harm) return { cents: first.cents + first.harm - harm, within: false };
  const next = hull.findIndex((point) => point.harm >= harm);
  if (next < 0) return { cents: last.cents, within: false };
  if (next === 0) return { cents: first.cents, within: true };
  const [a, b] = [hull[next - 1] as Point, hull[next] as Point];
  return { cents: a.cents + ((b.cents - a.cents) * (harm - a.harm)) / (b.harm - a.harm), within: true };
}

/** Weights of harm against money at which a way to buy may prove the best. */
const WEIGHTS = [0.5, 1, 2, 4, 10, 30];

/** The points that at some weight cost no more than a share above the best. */
export function near(points: readonly Point[], share: number): number[] {
  const best = WEIGHTS.map((weight) => Math.min(...points.map((point) => sumOf(point, weight))));
  return points
    .map((_, k) => k)
    .filter((k) =>
      WEIGHTS.some((weight, w) => sumOf(at(points, k), weight) <= (1 + share) * (best[w] as number)),
    );
}

const sumOf = ({ cents, harm }: Point, weight: number): number => cents + weight * harm;
