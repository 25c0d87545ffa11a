/** The steps of a plan as lines: what is ordered, harvested, culled and started. */
import { civilDate, type DayNumber } from '../calendar.ts';
import { type Cull, cullsAhead } from '../colony/index.ts';
import type { Offer } from '../orders/index.ts';
import { MINUTES_PER_HOUR } from '../units.ts';
import type { PlanLine, Wish } from './answer.ts';
import { isFull } from './fullness.ts';
import type { LaidOut } from './lay-out.ts';
import type { Node, Nodes } from './nodes.ts';
import { breakCents } from './parcel-cost.ts';
import type { ParcelOf } from './parcels.ts';
import type { Place } from './place-of.ts';
import type { PlanPack, PlanParcel } from './problem.ts';
import type { Proposal } from './proposal.ts';
import type { StartOf } from './starts.ts';

/** All lines, in the order in which they are to be done; reasons come later. */
export function linesOf(laid: LaidOut, proposal: Proposal, wishes: readonly Wish[]): PlanLine[] {
  const isPinned = (key: string) => wishes.some((wish) => wish.key === key && wish.wish === 'pin');
  const lines = [
    ...orderLines(laid, proposal),
    ...harvestLines(laid, proposal),
    ...cullLines(laid, proposal),
    ...startLines(laid, proposal),
  ];
  return lines
    .map((line) => ({ ...line, pinned: isPinned(line.key) }))
    .sort((a, b) => a.actBy - b.actBy || (a.key < b.key ? -1 : 1));
}

const plain = { pinned: false, reason: null } as const;

function orderLines(laid: LaidOut, { packs }: Proposal): PlanLine[] {
  return laid.problem.parcels.flatMap((parcel, i) =>
    parcel.packs.flatMap((pack, j) => {
      const count = packs[i]?.[j] ?? 0;
      return count > 0 ? [orderLine(laid, { parcel, pack, of: laid.parcels[i] as ParcelOf, count })] : [];
    }),
  );
}

interface Ordered {
  readonly parcel: PlanParcel;
  readonly pack: PlanPack;
  readonly of: ParcelOf;
  readonly count: number;
}

const offerIn = ({ offers }: ParcelOf, key: string): Offer =>
  offers.find(({ code }) => key.startsWith(`order:${code}@`)) as Offer;

function orderLine({ places, snapshot }: LaidOut, { parcel, pack, of, count }: Ordered): PlanLine {
  const offer = offerIn(of, pack.key);
  const { policy } = snapshot.facts;
  const minutes = of.supplier.kind === 'shop' ? policy.planShopMinutes.value : policy.planParcelMinutes.value;
  return {
    ...plain,
    key: pack.key,
    actBy: of.orderBy,
    species: offer.species,
    heads: count * offer.packHeads,
    cents: Math.round(count * breakCents(pack, count)),
    minutes,
    what: 'order',
    parcel: parcel.key,
    supplier: of.supplier.code,
    offer: offer.code,
    packs: count,
    fromMm: offer.fromMm,
    toMm: offer.toMm,
    sent: of.sent,
    comes: of.comes,
    bin: (places[pack.place] as Place).into,
  };
}

/** What is used of a colony in a period, by trade size; less than half a head is none. */
function harvestLines(laid: LaidOut, { flows }: Proposal): PlanLine[] {
  const { policy } = laid.snapshot.facts;
  return laid.places.flatMap((place, p) => {
    if (place.role !== 'colony') return [];
    return laid.periods.flatMap(({ from, days }, t) => {
      const used = usedOf(laid, { flows, p, t });
      return place.chain.species.sizeClasses.value.flatMap((size): PlanLine[] => {
        const heads = Math.round(headsIn(laid.nodes[p] as Nodes, used, size));
        const bin = place.bins[0]?.bin.code;
        if (heads < 1 || bin === undefined) return [];
        return [
          {
            ...plain,
            key: `harvest:${bin}:${size.name}@${civilDate(from)}`,
            actBy: from + days - 1,
            species: place.species,
            heads,
            cents: 0,
            minutes: policy.planHarvestMinutes.value,
            what: 'harvest',
            bin,
            fromMm: size.fromMm,
            toMm: size.toMm,
            day: from,
          },
        ];
      });
    });
  });
}

interface UsedAt {
  readonly flows: Proposal['flows'];
  readonly p: number;
  readonly t: number;
}

/** Heads used by node of a place in a period. */
export function usedOf({ problem }: LaidOut, { flows, p, t }: UsedAt): Float64Array {
  const used = new Float64Array(problem.places[p]?.nodes ?? 0);
  problem.eaters.forEach(({ fare }, e) => {
    fare.forEach(({ place, node }, k) => {
      if (place === p) used[node] = (used[node] as number) + (flows.use[e]?.[t]?.[k] ?? 0);
    });
  });
  return used;
}

/** Of the heads of each node those that lie, by the middle of the node, within a size. */
function headsIn({ all }: Nodes, used: Float64Array, size: { fromMm: number; toMm: number }): number {
  return all.reduce((sum, node, n) => sum + (isWithin(node, size) ? (used[n] as number) : 0), 0);
}

function isWithin({ fromMm, toMm }: Node, size: { fromMm: number; toMm: number }): boolean {
  const middle = (fromMm + toMm) / 2;
  return size.fromMm <= middle && middle < size.toMm;
}

/** Bins that will be too full although all are fed from them, or hold more males than are of use. */
function cullLines({ places, snapshot, periods, problem }: LaidOut, { flows }: Proposal): PlanLine[] {
  const days = periods.reduce((sum, period) => sum + period.days, 0);
  const { planSlack, planHarvestMinutes } = snapshot.facts.policy;
  return places.flatMap(({ bins, climate, species }, p) => {
    const hasRoom = !isFull(problem.places[p]?.room ?? null, flows.left[p] ?? [], planSlack.value);
    return bins.flatMap(({ bin, chain, state, belief }) => {
      const life = { chain, bin, climate, speed: Math.exp(belief.speedLog.mean) };
      return cullsAhead({ life, state, today: snapshot.today, days })
        .filter(({ why }) => why !== 'room' || !hasRoom || problem.places[p]?.room === null)
        .map((cull) => cullLine(cull, { bin: bin.code, species, minutes: planHarvestMinutes.value }));
    });
  });
}

function cullLine(
  { why, day, heads, size }: Cull,
  { bin, species, minutes }: { bin: string; species: string; minutes: number },
): PlanLine {
  return {
    ...plain,
    key: `cull:${bin}:${size?.name ?? why}@${civilDate(day)}`,
    actBy: day as DayNumber,
    species,
    heads,
    cents: 0,
    minutes,
    what: 'cull',
    bin,
    why,
    fromMm: size?.fromMm ?? null,
    toMm: size?.toMm ?? null,
    day,
  };
}

function startLines({ starts, problem, snapshot }: LaidOut, { cups }: Proposal): PlanLine[] {
  const { policy } = snapshot.facts;
  const perMinute = (snapshot.market?.purse.hourCents ?? 0) / MINUTES_PER_HOUR;
  return problem.starts.flatMap(({ key, cents, brings }, i): PlanLine[] => {
    const count = cups[i] ?? 0;
    if (count <= 0) return [];
    const { species, day, yieldsFrom, yieldsTo } = starts[i] as StartOf;
    const flies = brings.reduce((sum, heads) => sum + heads.reduce((a, b) => a + b, 0), 0);
    const minutes = policy.planStartMinutes.value * count;
    return [
      {
        ...plain,
        key,
        actBy: day,
        species,
        heads: Math.round(flies * count),
        cents: Math.max(0, Math.round(cents * count - minutes * perMinute)),
        minutes,
        what: 'start',
        cups: count,
        day,
        yieldsFrom,
        yieldsTo,
      },
    ];
  });
}
