/** What is left after the last period, followed on: for how long it is still fit to be eaten by whom, what it is then worth. */
import type { Step } from '../../maths/chain-step.ts';
import type { EndFare, Fare } from './problem.ts';

export interface Following {
  /** How the prey of each place passes on in a week. */
  readonly week: readonly Step[];
  /** Weeks that are looked at after the last period. */
  readonly endWeeks: number;
  /** Items that one must at least be worth to be counted on. */
  readonly leastItems: number;
}

/** Less than this share of what a node is worth at its best is past it. */
const PAST = 1 / 2;

/** What somebody who eats of this fare can make of heads at the end. */
export function endFareOf(
  fare: readonly Fare[],
  { week, endWeeks: weeks, leastItems }: Following,
): EndFare[] {
  return week.flatMap((step, place) => {
    const own = fare.filter((each) => each.place === place);
    if (own.length === 0) return [];
    const worth = worthOver(own, step, weeks);
    return step.flatMap((_, node): EndFare[] => {
      const series = worth.map((each) => each[node] as number);
      const least = Math.max(leastItems, PAST * Math.max(...series));
      const from = series.findIndex((items) => items >= least);
      if (from < 0) return [];
      const past = series.findIndex((items, w) => w > from && items < least);
      const until = past < 0 ? weeks : past;
      const items = series.slice(from, until).reduce((a, b) => a + b, 0) / (until - from);
      return [{ place, node, items, span: until - from, until }];
    });
  });
}

/** By week from now, items one head of each node will then be worth in the mean: w(k+1) = P' w(k). */
function worthOver(own: readonly Fare[], step: Step, weeks: number): Float64Array[] {
  const now = new Float64Array(step.length);
  for (const { node, items } of own) now[node] = items;
  const all = [now];
  while (all.length < weeks) {
    const before = all[all.length - 1] as Float64Array;
    all.push(
      before.map((_, from) =>
        step.reduce((sum, row, to) => sum + (row[from] as number) * (before[to] as number), 0),
      ),
    );
  }
  return all;
}
