/** Where one bin goes by itself, week by week, if nothing is taken out: how many, of which sizes, and whom it outgrows. */
import { normalQuantile } from '../../maths/normal.ts';
import { joinKeys, mix32, purposes, uniform } from '../../maths/random.ts';
import type { DemandGroup } from '../appetite/index.ts';
import { rosterOf } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import { type Bin, capacityOf } from '../larder/index.ts';
import type { PreySpecies, SizeClass } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK, type Mm } from '../units.ts';
import type { Spread } from './answer.ts';
import { type BinNote, binNote, headsBetween, noteMiddle, noteWeek } from './bin-note.ts';
import { startLarder } from './draws.ts';
import { larderFor, larderOnDay } from './larder.ts';
import { rulerEdges } from './spectrum.ts';
import { stockOf } from './stock.ts';
import { spreadOf } from './summary.ts';

export interface BinAhead {
  readonly bin: string;
  readonly revision: number;
  readonly replicates: number;
  /** The first is today. */
  readonly weeks: readonly BinWeek[];
  readonly edgesMm: readonly Mm[];
  /** Heads it can carry, where that is known: by size, adult heads. */
  readonly capacity: { readonly heads: number; readonly bySize: boolean } | null;
  /** Groups it feeds now or will feed, in the order in which it outgrows them. */
  readonly feeds: readonly FedBy[];
}

export interface BinWeek {
  readonly day: DayNumber;
  /** All alive but eggs, in a cup but maggots. */
  readonly heads: Spread;
  /** Means by trade size, smallest first; then those of no size the trade feeds. */
  readonly bySize: readonly { readonly size: string; readonly heads: number }[];
  /** Means by band of the ruler. */
  readonly byBand: readonly number[];
}

/** A demand group and the days on which half of the heads fit it. */
export interface FedBy {
  readonly key: string;
  readonly name: string;
  readonly fromMm: Mm;
  readonly toMm: Mm;
  /** First day on which most are long enough, from today; null when not within the weeks. */
  readonly fitsFrom: Spread | null;
  /** First day on which most are too long; null when not within the weeks. */
  readonly outgrownOn: Spread | null;
}

const FOR = purposes('warmth');

/** The bin by this code, or null. */
export function binAhead(snapshot: Snapshot, code: string): BinAhead | null {
  const { policy, species } = snapshot.facts;
  const bin = snapshot.bins.find((each) => each.code === code);
  const prey = species.get(bin?.species ?? '');
  if (!bin || !prey) return null;
  const weeks = policy.binWeeks.value;
  const days = weeks * DAYS_PER_WEEK + 1;
  // Left to itself: nobody is fed from it, and its breeders are shown at their length.
  const alone: Bin = { ...bin, restsUntil: null, keepAdults: false };
  const stock = stockOf({ ...snapshot, bins: [alone] }, days);
  const larder = larderFor(stock, policy);
  const replicates = policy.binReplicates.value;
  const note = binNote({ weeks: weeks + 1, days, replicates, edgesMm: rulerEdges(policy) });
  for (let r = 0; r < replicates; r++) {
    const key = joinKeys(mix32(snapshot.seed), r);
    startLarder(larder, key, policy.roomTempSdC.value * normalQuantile(uniform(key, FOR.warmth)));
    for (let day = 0; day < days; day++) {
      larderOnDay(larder, day);
      if (bin.role === 'holding') noteMiddle(note, larder, { replicate: r, day });
      if (day % DAYS_PER_WEEK === 0) noteWeek(note, larder, { replicate: r, day });
    }
  }
  const chain = stock.bins[0]?.chain;
  return {
    bin: code,
    revision: snapshot.revision,
    replicates,
    weeks: Array.from({ length: weeks + 1 }, (_, week) =>
      weekOf(note, { week, prey, today: snapshot.today }),
    ),
    edgesMm: Array.from(note.edgesMm),
    capacity: chain ? capacityOf(bin, chain) : null,
    feeds: bin.role === 'holding' ? fedBy(snapshot, prey, note) : [],
  };
}

interface WeekOf {
  readonly week: number;
  readonly prey: PreySpecies;
  readonly today: DayNumber;
}

function weekOf(note: BinNote, { week, prey, today }: WeekOf): BinWeek {
  const { replicates, weeks, bands } = note;
  const totals = Array.from({ length: replicates }, (_, r) => note.heads[r * weeks + week] as number);
  const row = note.byBand.subarray(week * bands, (week + 1) * bands);
  return {
    day: today + week * DAYS_PER_WEEK,
    heads: spreadOf(totals),
    bySize: sizesOf(note, { week, prey }),
    byBand: Array.from(row, (heads) => heads / replicates),
  };
}

/** Sizes overlap or leave gaps: each length belongs to the first size that reaches it, and what is beyond to none. */
function sizesOf(note: BinNote, { week, prey }: { week: number; prey: PreySpecies }): BinWeek['bySize'] {
  const sizes = [...prey.sizeClasses.value].sort((a, b) => a.toMm - b.toMm);
  const from = (i: number): Mm => (i === 0 ? 0 : (sizes[i - 1] as SizeClass).toMm);
  const named = sizes.map(({ name, toMm }, i) => ({
    size: name,
    heads: headsBetween(note, { week, fromMm: from(i), toMm }),
  }));
  const beyond = headsBetween(note, { week, fromMm: from(sizes.length), toMm: Number.POSITIVE_INFINITY });
  return [...named, { size: 'larger', heads: beyond }];
}

function fedBy(snapshot: Snapshot, prey: PreySpecies, note: BinNote): FedBy[] {
  const { groups } = rosterOf(snapshot, snapshot.facts.policy.moultsAhead.value);
  return groups
    .filter(({ animals, windows }) => animals.length > 0 && windows.has(prey.code))
    .map((group) => fitOf(group, prey, note))
    .filter(({ fitsFrom }) => fitsFrom !== null)
    .sort((a, b) => a.toMm - b.toMm || (a.key < b.key ? -1 : 1));
}

function fitOf(group: DemandGroup, prey: PreySpecies, note: BinNote): FedBy {
  const window = group.windows.get(prey.code);
  const [fromMm, toMm] = [window?.minMm ?? 0, window?.maxMm ?? 0];
  return {
    key: group.key,
    name: group.name,
    fromMm,
    toMm,
    fitsFrom: firstDay(note, (median) => median >= fromMm && median <= toMm),
    outgrownOn: firstDay(note, (median) => median > toMm),
  };
}

/** First day on which the middle of the heads is so, over replicates; null when that is so in fewer than half of them. */
function firstDay({ medianMm, days, replicates }: BinNote, is: (medianMm: Mm) => boolean): Spread | null {
  const first = Array.from({ length: replicates }, (_, r) =>
    medianMm.subarray(r * days, (r + 1) * days).findIndex((median) => median > 0 && is(median)),
  ).filter((day) => day >= 0);
  return 2 * first.length >= replicates ? spreadOf(first) : null;
}
