/** A place as the programme counts it: what is there, what comes whatever is decided, how it passes on. */
import { afterStep, type Step } from '../../maths/chain-step.ts';
import {
  type BinState,
  capacityOf,
  type ExpectedDelivery,
  type Life,
  nextDay,
  preyIn,
  spreadLot,
} from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import type { StockBin } from '../supply/index.ts';
import type { Period } from './answer.ts';
import { byNode, type Nodes } from './nodes.ts';
import { headsAfter, type Passing, passOf } from './passing.ts';
import { middleOf, periodFrom } from './periods.ts';
import type { Place } from './place-of.ts';
import type { PlanPlace } from './problem.ts';

export interface Laying {
  readonly periods: readonly Period[];
  readonly policy: Policy;
  readonly today: number;
  readonly deliveries: readonly ExpectedDelivery[];
  readonly keepCents: number;
}

export const passingOf = ({ bin, climate, speedLog }: Place, nodes: Nodes, policy: Policy): Passing => ({
  nodes,
  bin: bin.role === 'cup' ? { ...bin, role: 'holding' } : bin,
  climate,
  speedLog,
  speeds: policy.planSpeeds.value,
});

/** What a sum of heads is in the problem. */
export function planPlace(place: Place, nodes: Nodes, laying: Laying): PlanPlace {
  const { periods, policy } = laying;
  const passing = passingOf(place, nodes, policy);
  const passes = passesOver(passing, periods);
  const comes = periods.map(() => new Float64Array(nodes.all.length));
  for (const stock of place.bins) {
    const own = ownProduce(stock, { nodes, passing, passes, laying });
    own.forEach((heads, t) => {
      addTo(comes[t] as Float64Array, heads);
    });
  }
  for (const delivery of laying.deliveries) {
    if (!place.bins.some(({ bin }) => bin.code === delivery.bin)) continue;
    const { loss, over } = shares(delivery, policy);
    const heads = spreadLot(place.chain, {
      ...delivery.lot,
      heads: delivery.lot.heads * (1 + over) * (1 - loss),
    });
    const came = arriving(passing, { heads, day: Math.max(delivery.day, laying.today), periods });
    if (came) addTo(comes[came.period] as Float64Array, came.heads);
  }
  return {
    key: place.key,
    nodes: nodes.all.length,
    passes,
    comes,
    keepCents: place.role === 'holding' ? laying.keepCents : 0,
    room: roomOf(place, nodes),
    // What it should be worth rests on who eats of it (breeding.ts).
    floor: null,
  };
}

const shares = ({ sender }: ExpectedDelivery, policy: Policy) => ({
  loss: sender?.lossShare ?? policy.deadOnArrivalShare.value,
  over: sender?.overCountShare ?? policy.overCountShare.value,
});

const addTo = (sum: Float64Array, more: Float64Array): void => {
  more.forEach((heads, n) => {
    sum[n] = (sum[n] as number) + heads;
  });
};

/** One pass between the middles of each pair of periods; those of equal length are one. */
function passesOver(passing: Passing, periods: readonly Period[]): Step[] {
  const byDays = new Map<number, Step>();
  return periods.slice(1).map((period, t) => {
    const from = middleOf(periods[t] as Period);
    const days = middleOf(period) - from;
    const known = byDays.get(days) ?? passOf(passing, { from, days });
    byDays.set(days, known);
    return known;
  });
}

export interface Coming {
  readonly period: number;
  /** By node, at the middle of that period. */
  readonly heads: Float64Array;
}

/** Heads by substage that are there from a day on; null where that is beyond the last period. */
export function arriving(
  passing: Passing,
  { heads, day, periods }: { heads: Float64Array; day: number; periods: readonly Period[] },
): Coming | null {
  const period = periodFrom(periods, day);
  if (period < 0) return null;
  const middle = middleOf(periods[period] as Period);
  return { period, heads: headsAfter(passing, heads, { from: day, days: Math.max(0, middle - day) }) };
}

interface Producing {
  readonly nodes: Nodes;
  readonly passing: Passing;
  readonly passes: readonly Step[];
  readonly laying: Laying;
}

/** What a bin holds at the first middle, and what is born in it by each later one, as if nothing were taken. */
function ownProduce(stock: StockBin, { nodes, passing, passes, laying }: Producing): Float64Array[] {
  const { periods, today } = laying;
  const { chain, bin, state, belief } = stock;
  const life: Life = { chain, bin, climate: passing.climate, speed: Math.exp(belief.speedLog.mean) };
  const here = preyIn(state, { life, today });
  const first = middleOf(periods[0] as Period);
  const held = headsAfter(passing, here, { from: today, days: first - today });
  const none = periods.slice(1).map(() => new Float64Array(nodes.all.length));
  if (bin.role === 'holding' || bin.role === 'frozen') return [held, ...none];
  const seen = statesAt(life, state, { today, periods });
  const counted = seen.map((each, t) =>
    byNode(nodes, preyIn(each, { life, today: middleOf(periods[t] as Period) })),
  );
  return counted.map((heads, t) => {
    if (t === 0) return heads;
    const kept = afterStep(counted[t - 1] as Float64Array, passes[t - 1] as Step);
    return heads.map((n, to) => Math.max(0, n - (kept[to] as number)));
  });
}

function statesAt(
  life: Life,
  state: BinState,
  { today, periods }: { today: number; periods: readonly Period[] },
): BinState[] {
  let now = state;
  let day = today;
  return periods.map((period) => {
    for (; day < middleOf(period); day++) now = nextDay(life, now, day).state;
    return now;
  });
}

/** Room for as many as all its bins together hold; no bound where that of one is not known. */
function roomOf({ bins, chain, role }: Place, { all }: Nodes): PlanPlace['room'] {
  if (role === 'frozen' || role === 'cup' || bins.length === 0) return null;
  const each = bins.map(({ bin }) => capacityOf(bin, chain));
  if (each.some((capacity) => capacity === null)) return null;
  const bySize = each.every((capacity) => capacity?.bySize);
  return {
    most: each.reduce((sum, capacity) => sum + (capacity?.heads ?? 0), 0),
    footprint: Float64Array.from(all, ({ profile }) =>
      bySize ? profile.reduce((sum, share, j) => sum + share * (chain.footprint[j] as number), 0) : 1,
    ),
  };
}
