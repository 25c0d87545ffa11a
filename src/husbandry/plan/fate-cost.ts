/** What decisions cost on the mean of all fates: money, and late and missed meals, less what is left. */
import type { Cents } from '../orders/index.ts';
import type { Fates, Lot } from './fates.ts';
import { leftWorth } from './left-worth.ts';
import type { EaterLaid, Living } from './living.ts';
import { decisionsCost } from './parcel-cost.ts';
import type { PlanEater } from './problem.ts';
import type { Decisions } from './proposal.ts';

/** Arrays that serve every fate of every plan, and how the plan last settled on stood at the start of each period. */
export interface Room {
  readonly fates: Fates;
  /** Who eats, told finely. */
  readonly living: Living;
  /** A change dearer in each of so many fates is not tried in the others. */
  readonly tried: number;
  /** What the plan settled on costs in each fate, and all fates: the dearest, the cheapest, the next dearest ... */
  readonly settled: Float64Array;
  readonly order: Int32Array;
  /** Share of each slice that nobody has eaten yet. */
  readonly rest: Float64Array;
  /** Heads of each node, before and after the meals of a period. */
  readonly there: Float64Array;
  readonly before: Float64Array;
  readonly late: Float64Array;
  /** Lots of the plan under way, and how many times each is there. */
  readonly active: Int32Array;
  readonly times: Float64Array;
  /** By fate and period: what is not eaten of each slice, items late by eater, cost so far. */
  readonly restAt: Float64Array;
  readonly lateAt: Float64Array;
  readonly centsAt: Float64Array;
}

export function roomFor(fates: Fates, living: Living, tried: number): Room {
  const { nodes, problem } = living;
  const floats = (size: number) => new Float64Array(size);
  const moments = fates.count * problem.periods;
  return {
    fates,
    living,
    tried,
    settled: floats(fates.count),
    order: Int32Array.from({ length: fates.count }, (_, fate) => fate),
    rest: floats(fates.slices),
    there: floats(nodes),
    before: floats(nodes),
    late: floats(problem.eaters.length),
    active: new Int32Array(fates.lots.length),
    times: floats(fates.lots.length),
    restAt: floats(moments * fates.slices),
    lateAt: floats(moments * problem.eaters.length),
    centsAt: floats(moments),
  };
}

/** Mean over the fates, in the programme's prices; how it stands in each period is noted. */
export function settleInFates(room: Room, decided: Decisions): Cents {
  const { fates, living, settled, order } = room;
  const lots = lotsOf(room, decided);
  const money = decisionsCost(living.problem, decided);
  let sum = 0;
  for (let fate = 0; fate < fates.count; fate++) {
    settled[fate] = money + liveFate(room, fate, { lots, from: 0, notes: true });
    sum += settled[fate] as number;
  }
  order.sort((a, b) => (settled[b] as number) - (settled[a] as number) || a - b);
  order.set(fromBothEnds(order));
  return sum / fates.count;
}

const fromBothEnds = (list: Int32Array): Int32Array =>
  list.map((_, k) => list[k % 2 === 0 ? k / 2 : list.length - (k + 1) / 2] as number);

/**
 * The same of decisions that differ from those settled on from a period on; Infinity for those that are dearer in the
 * worst fates, which safety would pay for in, and in the best, where thrift would.
 */
export function costFromPeriod(room: Room, decided: Decisions, period: number): Cents {
  const { fates, living, settled, order, tried } = room;
  const lots = lotsOf(room, decided);
  const money = decisionsCost(living.problem, decided);
  const from = Math.min(period, fates.periods - 1);
  let sum = 0;
  let isDearer = true;
  for (let k = 0; k < fates.count; k++) {
    const fate = order[k] as number;
    const cents = money + liveFate(room, fate, { lots, from, notes: false });
    sum += cents;
    isDearer &&= cents >= (settled[fate] as number);
    if (isDearer && k + 1 >= tried) return Number.POSITIVE_INFINITY;
  }
  return sum / fates.count;
}

interface Going {
  readonly from: number;
  readonly notes: boolean;
}

/** Lists the lots that are there with these decisions; returns how many. */
function lotsOf({ fates, active, times }: Room, { packs, cups }: Decisions): number {
  let n = 0;
  fates.lots.forEach(({ by }, lot) => {
    const count = by === null ? 1 : by.pack < 0 ? (cups[by.at] ?? 0) : (packs[by.at]?.[by.pack] ?? 0);
    if (count <= 0) return;
    active[n] = lot;
    times[n++] = count;
  });
  return n;
}

function liveFate(room: Room, fate: number, { lots, from, notes }: Going & { readonly lots: number }): Cents {
  const { fates, living, rest, late, there, before, restAt, lateAt, centsAt } = room;
  const { periods } = living.problem;
  const first = fate * periods + from;
  let cents = 0;
  if (from === 0) {
    rest.fill(1);
    late.fill(0);
  } else {
    rest.set(restAt.subarray(first * rest.length, (first + 1) * rest.length));
    late.set(lateAt.subarray(first * late.length, (first + 1) * late.length));
    cents = centsAt[first] as number;
  }
  for (let t = from; t < periods; t++) {
    const moment = fate * periods + t;
    if (notes) {
      restAt.set(rest, moment * rest.length);
      lateAt.set(late, moment * late.length);
      centsAt[moment] = cents;
    }
    gather(room, moment * fates.slices, { lots, t });
    before.set(there);
    for (const e of living.order) cents += feed(room, e, { fate, t });
    take(room, moment * fates.slices, { lots, t });
    cents += keepCents(room);
  }
  return cents - leftWorth(living, there);
}

interface Now {
  readonly lots: number;
  readonly t: number;
}

/** Heads of every node before anybody eats. */
function gather({ fates, rest, there, active, times }: Room, at: number, { lots, t }: Now): void {
  const { heads, node } = fates;
  there.fill(0);
  for (let k = 0; k < lots; k++) {
    const { first, slices, from } = fates.lots[active[k] as number] as Lot;
    if (from > t) continue;
    const many = times[k] as number;
    for (let q = first; q < first + slices; q++) {
      const n = node[at + q] as number;
      if (n >= 0) there[n] = (there[n] as number) + many * (heads[at + q] as number) * (rest[q] as number);
    }
  }
}

/** What was eaten of a node is missing from all its slices alike ever after. */
function take({ fates, rest, there, before, active }: Room, at: number, { lots, t }: Now): void {
  const { node } = fates;
  for (let n = 0; n < before.length; n++)
    before[n] = (before[n] as number) > 0 ? (there[n] as number) / (before[n] as number) : 1;
  for (let k = 0; k < lots; k++) {
    const { first, slices, from } = fates.lots[active[k] as number] as Lot;
    if (from > t) continue;
    for (let q = first; q < first + slices; q++) {
      const n = node[at + q] as number;
      if (n >= 0) rest[q] = (rest[q] as number) * (before[n] as number);
    }
  }
}

/** Feeds one eater from its best node on; caps on shares are priced as they are passed. */
function feed(
  { fates, living, there, late }: Room,
  e: number,
  { fate, t }: { fate: number; t: number },
): Cents {
  const { wanted } = fates;
  const { problem } = living;
  const eater = problem.eaters[e] as PlanEater;
  const { node, items, cents, cap, capRoom } = living.eaters[e] as EaterLaid;
  const asks = wanted[(fate * problem.periods + t) * problem.eaters.length + e] as number;
  let wants = asks + (late[e] as number);
  let cost = 0;
  for (let c = 0; c < capRoom.length; c++) capRoom[c] = (eater.caps[c]?.share ?? 1) * asks;
  for (let round = capRoom.length > 0 ? 0 : 1; round < 2 && wants > 0; round++) {
    for (let k = 0; k < node.length && wants > 0; k++) {
      const heads = there[node[k] as number] as number;
      const of = cap[k] as number;
      const most = round === 0 && of >= 0 ? Math.min(wants, capRoom[of] as number) : wants;
      if (heads <= 0 || most <= 0) continue;
      const taken = Math.min(heads, most / (items[k] as number));
      there[node[k] as number] = heads - taken;
      wants -= taken * (items[k] as number);
      cost += taken * (cents[k] as number);
      if (of >= 0) capRoom[of] = (capRoom[of] as number) - taken * (items[k] as number);
    }
  }
  for (let c = 0; c < capRoom.length; c++)
    cost += Math.max(0, -(capRoom[c] as number)) * (eater.caps[c]?.cents ?? 0);
  const waits = Math.min(
    Math.max(0, wants),
    asks > 0 ? lateShare(eater, t) * (asks + (late[e] as number)) : wants,
  );
  const missed = Math.max(0, wants - waits);
  late[e] = waits;
  return cost + waits * eater.lateCents + missed * eater.missedCents;
}

/** Of what is wanted in a period the share that may wait, as in the mean. */
function lateShare({ lateMost, wanted }: PlanEater, t: number): number {
  const mean = wanted[t] as number;
  return mean > 0 ? Math.min(1, (lateMost[t] as number) / mean) : 1;
}

function keepCents({ living, there }: Room): Cents {
  const { keepCents: each } = living;
  let cents = 0;
  for (let n = 0; n < there.length; n++) cents += (there[n] as number) * (each[n] as number);
  return cents;
}
