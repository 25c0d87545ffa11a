/**
 * The cheapest of all orders that can be placed, found by trying every one: prices told from the suppliers' words, the
 * use of what they bring solved apart. More stock never costs more, since it can be thrown away: orders that cost more by
 * themselves than the best found can save are not looked at.
 */
import type { PlanParcel, PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Decisions } from '../../../src/husbandry/plan/proposal.ts';
import { type Brought, leastUseCost } from './use-of-stock.ts';

export interface Cheapest extends Decisions {
  readonly cost: number;
}

/** Null where no order can be placed at all. */
export function cheapestOrder(problem: PlanProblem): Cheapest | null {
  const allowed = everyOrder(problem).flatMap((decided) => {
    const price = priceOf(problem, decided);
    return price === null ? [] : [{ ...decided, price }];
  });
  allowed.sort((a, b) => a.price - b.price);
  const floor = leastUseCost(problem, broughtBy(problem, everything(problem)));
  let best: Cheapest | null = null;
  for (const { price, ...decided } of allowed) {
    if (best && price + floor >= best.cost) break;
    const cost = price + leastUseCost(problem, broughtBy(problem, decided));
    if (!best || cost < best.cost) best = { ...decided, cost };
  }
  return best;
}

/** Every choice out of ranges of whole numbers. */
function choices(ranges: readonly (readonly [number, number])[]): number[][] {
  const [first, ...rest] = ranges;
  if (!first) return [[]];
  const others = choices(rest);
  const own = Array.from({ length: first[1] - first[0] + 1 }, (_, i) => first[0] + i);
  return own.flatMap((count) => others.map((other) => [count, ...other]));
}

function everyOrder({ parcels, starts }: PlanProblem): Decisions[] {
  const slots = parcels.flatMap(({ packs }) => packs);
  return choices([...slots, ...starts].map(({ least, most }) => [least, Math.floor(most)])).map((counts) => {
    const rest = [...counts];
    return { packs: parcels.map(({ packs }) => rest.splice(0, packs.length)), cups: rest, rests: [] };
  });
}

const everything = ({ parcels, starts }: PlanProblem): Decisions => ({
  packs: parcels.map(({ packs }) => packs.map(({ most }) => Math.floor(most))),
  cups: starts.map(({ most }) => most),
  rests: [],
});

/** What one parcel costs: money handed over and the keeper's time; null where the supplier would not send it. */
function billOf(parcel: PlanParcel, counts: readonly number[]): { paid: number; time: number } | null {
  let [goods, weight, time] = [0, 0, parcel.labourCents];
  parcel.packs.forEach(({ breaks, weightCents, lineCents }, j) => {
    const count = counts[j]!;
    if (count === 0) return;
    const price = breaks.reduce(
      (cents, each) => (count >= each.fromPacks ? each.cents : cents),
      breaks[0]!.cents,
    );
    goods += count * price;
    weight += count * weightCents;
    time += lineCents;
  });
  if (counts.every((count) => count === 0)) return { paid: 0, time: 0 };
  if (goods < parcel.minimumCents) return null;
  const isFree = parcel.freeFromCents !== null && goods >= parcel.freeFromCents;
  return { paid: goods + (isFree ? 0 : parcel.postageCents + weight), time };
}

/** Null where a supplier would not send or the budget of a week is passed. */
function priceOf({ parcels, starts, budget }: PlanProblem, { packs, cups }: Decisions): number | null {
  const spent = new Array<number>(budget.length).fill(0);
  let time = 0;
  for (const [i, parcel] of parcels.entries()) {
    const bill = billOf(parcel, packs[i]!);
    if (!bill) return null;
    spent[parcel.paid]! += bill.paid;
    time += bill.time;
  }
  starts.forEach(({ paid, cents }, i) => {
    spent[paid]! += cents * cups[i]!;
  });
  if (spent.some((cents, t) => cents > budget[t]!)) return null;
  return time + spent.reduce((a, b) => a + b, 0);
}

function broughtBy({ places, parcels, starts, periods }: PlanProblem, { packs, cups }: Decisions): Brought {
  const all = places.map(({ nodes }) => Array.from({ length: periods }, () => new Float64Array(nodes)));
  const add = (to: Float64Array, heads: Float64Array, times: number) => {
    heads.forEach((each, n) => {
      to[n]! += times * each;
    });
  };
  parcels.forEach(({ period, packs: inside }, i) => {
    for (const [j, { place, brings }] of inside.entries()) add(all[place]![period]!, brings, packs[i]![j]!);
  });
  starts.forEach(({ place, brings }, i) => {
    for (const [t, heads] of brings.entries()) add(all[place]![t]!, heads, cups[i]!);
  });
  return all;
}
