/** What an item that is there after the last period is worth: less than what it could be had for then. */
import { afterStep } from '../../maths/chain-step.ts';
import type { Cents } from '../orders/index.ts';
import type { EndFare, PlanParcel, PlanPlace } from './problem.ts';
import { undated } from './undated.ts';

/** A pack that nobody eats of. */
export interface Grown {
  readonly place: number;
  /** Heads by node after the last period. */
  readonly heads: Float64Array;
  /** Its lowest price. */
  readonly cents: Cents;
}

/** Of every offer the last pack that can be bought, grown until the end of the plan. */
export function lastPacks(parcels: readonly PlanParcel[], places: readonly PlanPlace[]): Grown[] {
  const last = new Map<string, Grown>();
  for (const { period, packs } of parcels.toSorted((a, b) => a.period - b.period))
    for (const { key, place, brings, breaks } of packs)
      last.set(undated(key), {
        place,
        heads: (places[place] as PlanPlace).passes.slice(period).reduce(afterStep, brings),
        cents: Math.min(...breaks.map(({ cents }) => cents)),
      });
  return [...last.values()];
}

/**
 * By fare, the most an item can be worth at the end so that no pack bought at the end would pay for itself, whoever gets
 * which of its heads; Infinity where nothing on offer lasts so long.
 */
export function endPricesOf(fares: readonly (readonly EndFare[])[], packs: readonly Grown[]): number[] {
  const offered = packs.map((pack) => ({ pack, worths: fares.map((fare) => worthsIn(fare, pack)) }));
  let cents = fares.map((_, e) => cheapestAtEnd(offered, e));
  for (let isOver = true; isOver; ) {
    const times = cents.map(() => 1);
    for (const each of offered) {
      const over = excess(each, cents);
      for (const e of over.eaters) times[e] = Math.max(times[e] as number, over.times);
    }
    isOver = times.some((each) => each > ALIKE);
    cents = cents.map((each, e) => each / (times[e] as number));
  }
  return cents;
}

interface Offered {
  readonly pack: Grown;
  /** Items its heads are worth, by fare and node. */
  readonly worths: readonly Float64Array[];
}

/** Prices that differ by less are one. */
const ALIKE = 1 + Math.sqrt(Number.EPSILON);

/** The least an item of a fare can be had for at the end; Infinity where nothing on offer lasts so long. */
const cheapestAtEnd = (offered: readonly Offered[], e: number): Cents =>
  offered.reduce(
    (least, { pack, worths }) => Math.min(least, pack.cents / sumOf(worths[e] as Float64Array)),
    Number.POSITIVE_INFINITY,
  );

const sumOf = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);

/** Items of this fare that the heads of each node of a pack are worth. */
function worthsIn(fare: readonly EndFare[], { place, heads }: Grown): Float64Array {
  const worths = new Float64Array(heads.length);
  for (const each of fare)
    if (each.place === place) worths[each.node] = each.items * (heads[each.node] as number);
  return worths;
}

/** How many times its price a pack is worth where every head goes to whom it is worth most, and who they all are. */
function excess(
  { pack, worths }: Offered,
  cents: readonly number[],
): { readonly times: number; readonly eaters: ReadonlySet<number> } {
  const eaters = new Set<number>();
  let sum = 0;
  for (let n = 0; n < pack.heads.length; n++) {
    const each = worths.map((items, e) => {
      const worth = items[n] as number;
      return worth > 0 ? worth * (cents[e] as number) : 0;
    });
    const most = Math.max(...each);
    if (most <= 0) continue;
    sum += most;
    each.forEach((worth, e) => {
      if (worth * ALIKE >= most) eaters.add(e);
    });
  }
  return { times: sum / pack.cents, eaters };
}
