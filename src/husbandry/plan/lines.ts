/** The steps of a plan as lines: what is ordered, harvested, culled, started and left alone. */
import type { Offer } from '../orders/index.ts';
import { MINUTES_PER_HOUR } from '../units.ts';
import type { PlanLine, Wish } from './answer.ts';
import { type CullLine, wantedCulls } from './culls.ts';
import { harvestLines } from './harvests.ts';
import type { LaidOut } from './lay-out.ts';
import { breakCents } from './parcel-cost.ts';
import type { ParcelOf } from './parcels.ts';
import type { Place } from './place-of.ts';
import type { PlanPack, PlanParcel } from './problem.ts';
import type { Proposal } from './proposal.ts';
import { restEnds } from './rests.ts';
import type { StartOf } from './starts.ts';
import type { Tried } from './tried.ts';

/** All lines, in the order in which they are to be done; reasons come later. */
export function linesOf(
  laid: LaidOut,
  { proposal, lived, level }: Pick<Tried, 'proposal' | 'lived' | 'level'>,
  { wishes, culls }: { wishes: readonly Wish[]; culls: readonly CullLine[] },
): PlanLine[] {
  const isPinned = (key: string) => wishes.some((wish) => wish.key === key && wish.wish === 'pin');
  const lines = [
    ...orderLines(laid, proposal),
    ...harvestLines(laid, { lived, level, rests: proposal.rests }),
    ...wantedCulls(culls, wishes),
    ...startLines(laid, proposal),
    ...restLines(laid, proposal),
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

/** What is left alone for longer than the keeper has it already. */
function restLines({ places, problem, periods, snapshot }: LaidOut, { rests }: Proposal): PlanLine[] {
  return problem.rests.flatMap(({ key, place: p, own }, i): PlanLine[] => {
    const weeks = rests[i] as number;
    if (weeks <= own) return [];
    const { species, bin } = places[p] as Place;
    const heads = problem.places[p]?.comes[0]?.reduce((a, b) => a + b, 0) ?? 0;
    return [
      {
        ...plain,
        key,
        actBy: snapshot.today,
        species,
        heads: Math.round(heads),
        cents: 0,
        minutes: 0,
        what: 'rest',
        bin: bin.code,
        weeks,
        until: restEnds(periods, weeks),
      },
    ];
  });
}
