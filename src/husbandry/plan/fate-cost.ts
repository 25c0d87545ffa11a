/** What decisions cost on the mean of all fates: money, and late and missed meals, less what is left. */
import type { Cents } from '../orders/index.ts';
import { type Feeding, feed } from './fate-feeding.ts';
import type { Breeding, Noted, Room } from './fate-room.ts';
import { leftWorth } from './left-worth.ts';
import { decisionsCost } from './parcel-cost.ts';
import type { Decisions } from './proposal.ts';
import { asideIn, putBack, type SetAside, setAside } from './set-aside.ts';

/** Mean over the fates, in the programme's prices; how it stands in each period is noted. */
export function settleInFates(room: Room, decided: Decisions): Cents {
  const { fates, living, settled, order } = room;
  const going = { ...goingBy(room, decided), from: 0, notes: true };
  const money = decisionsCost(living.problem, decided);
  let sum = 0;
  for (let fate = 0; fate < fates.count; fate++) {
    settled[fate] = money + liveFate(room, fate, going);
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
  const going = { ...goingBy(room, decided), from: Math.min(period, fates.periods - 1), notes: false };
  const money = decisionsCost(living.problem, decided);
  let sum = 0;
  let isDearer = true;
  for (let k = 0; k < fates.count; k++) {
    const fate = order[k] as number;
    const cents = money + liveFate(room, fate, going);
    sum += cents;
    isDearer &&= cents >= (settled[fate] as number);
    if (isDearer && k + 1 >= tried) return Number.POSITIVE_INFINITY;
  }
  return sum / fates.count;
}

interface Going {
  /** Lots that are there, and places that are left alone. */
  readonly lots: number;
  readonly left: readonly SetAside[];
  readonly from: number;
  readonly notes: boolean;
}

const goingBy = (room: Room, decided: Decisions): Pick<Going, 'lots' | 'left'> => ({
  lots: lotsOf(room, decided),
  left: asideIn(room.living.problem, room.living.first, decided),
});

/** Lists the lots that are there with these decisions; returns how many. */
function lotsOf({ fates, active, times }: Room, { packs, cups }: Decisions): number {
  let n = 0;
  fates.lots.forEach((by, lot) => {
    const count = by === null ? 1 : by.pack < 0 ? (cups[by.at] ?? 0) : (packs[by.at]?.[by.pack] ?? 0);
    if (count <= 0) return;
    active[n] = lot;
    times[n++] = count;
  });
  return n;
}

function liveFate(room: Room, fate: number, { lots, left, from, notes }: Going): Cents {
  const { living, rest, late, there, before, restAt, lateAt, centsAt, noted } = room;
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
    gather(room, moment, lots);
    before.set(there);
    const hasAside = setAside(left, t, room);
    for (const e of living.order)
      cents += noted ? fedNoted(room, noted, { fate, t, e, hasAside }) : feed(room, e, { fate, t, hasAside });
    if (noted) noteReady(room, noted, t);
    putBack(left, t, room);
    take(room, moment, lots);
    cents += keepCents(room);
  }
  // First, since handing out what is left takes it away.
  const lost = breedersShort(room, fate);
  const end = leftWorth(living, there) - lost;
  if (noted) noted.endCents[0] = (noted.endCents[0] as number) + end;
  return cents - end;
}

/** What a colony is worth to its own future, in breeders. */
function worthOf({ there }: Room, { first, counts }: Breeding): number {
  let sum = 0;
  for (let n = 0; n < counts.length; n++) sum += (counts[n] as number) * (there[first + n] as number);
  return sum;
}

/** Price of what a colony is worth less at the end than it should be. */
function breedersShort(room: Room, fate: number): Cents {
  const { breeding, bredLeast } = room;
  let cents = 0;
  for (let c = 0; c < breeding.length; c++) {
    const colony = breeding[c] as Breeding;
    const short = (bredLeast[fate * breeding.length + c] as number) - worthOf(room, colony);
    cents += colony.cents * Math.max(0, short);
  }
  return cents;
}

interface Meal extends Feeding {
  readonly e: number;
}

function fedNoted(room: Room, { eaten, taken }: Noted, { e, ...moment }: Meal): Cents {
  const { there, aside, fates } = room;
  const was = there.map((heads, n) => heads + (aside[n] as number));
  const cents = feed(room, e, moment);
  const at = (moment.t * fates.eaters + e) * there.length;
  const by = (moment.fate * fates.periods + moment.t) * there.length;
  for (let n = 0; n < there.length; n++) {
    const heads = (was[n] as number) - (there[n] as number) - (aside[n] as number);
    eaten[at + n] = (eaten[at + n] as number) + heads;
    taken[by + n] = (taken[by + n] as number) + heads;
  }
  return cents;
}

/** What is left of its fare to each group, shared with all others who take of it. */
function noteReady({ living, there, fates }: Room, { ready }: Noted, t: number): void {
  living.eaters.forEach(({ node, items }, e) => {
    const at = t * fates.eaters + e;
    for (let k = 0; k < node.length; k++)
      ready[at] = (ready[at] as number) + (items[k] as number) * (there[node[k] as number] as number);
  });
}

/** Heads of every node before anybody eats. */
function gather({ fates, rest, there, active, times }: Room, moment: number, lots: number): void {
  const { from, slice, node, heads } = fates;
  there.fill(0);
  for (let k = 0; k < lots; k++) {
    const lot = moment * fates.lots.length + (active[k] as number);
    const many = times[k] as number;
    const end = from[lot + 1] as number;
    for (let at = from[lot] as number; at < end; at++) {
      const n = node[at] as number;
      there[n] = (there[n] as number) + many * (heads[at] as number) * (rest[slice[at] as number] as number);
    }
  }
}

/** What was eaten of a node is missing from all its slices alike ever after. */
function take({ fates, rest, there, before, active }: Room, moment: number, lots: number): void {
  const { from, slice, node } = fates;
  for (let n = 0; n < before.length; n++)
    before[n] = (before[n] as number) > 0 ? (there[n] as number) / (before[n] as number) : 1;
  for (let k = 0; k < lots; k++) {
    const lot = moment * fates.lots.length + (active[k] as number);
    const end = from[lot + 1] as number;
    for (let at = from[lot] as number; at < end; at++) {
      const q = slice[at] as number;
      rest[q] = (rest[q] as number) * (before[node[at] as number] as number);
    }
  }
}

function keepCents({ living, there }: Room): Cents {
  const { keepCents: each } = living;
  let cents = 0;
  for (let n = 0; n < there.length; n++) cents += (there[n] as number) * (each[n] as number);
  return cents;
}
