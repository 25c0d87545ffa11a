/** Where prey lives in a plan: bins of one species in one climate that grow alike, each colony by itself. */
import type { DayNumber } from '../calendar.ts';
import { type Bin, type Chain, type Climate, isApart, rests } from '../larder/index.ts';
import { binClimate, climateAt } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { binNow, type StockBin } from '../supply/index.ts';

/** Bins that are planned as one. */
export interface Place {
  readonly key: string;
  readonly species: string;
  readonly role: Bin['role'];
  readonly chain: Chain;
  readonly climate: Climate;
  readonly speedLog: { readonly mean: number; readonly sd: number };
  readonly bins: readonly StockBin[];
  /** Of them the one that what is bought goes into; null: none, or a new one where there are no bins yet. */
  readonly into: string | null;
  /** Left alone until this day; null: it is not. */
  readonly restsUntil: DayNumber | null;
  /** What the engine is told of it. */
  readonly bin: Bin;
}

/** Speeds within this of one another, as a share, are alike. */
const alike = (log: number, step: number): number => (step > 0 ? Math.round(log / step) : 0);

/** All places of a snapshot, those for what is bought among them. */
export function placesOf(snapshot: Snapshot): Place[] {
  const open = snapshot.bins
    .map((bin) => binNow(snapshot, bin))
    .sort((a, b) => (a.bin.code < b.bin.code ? -1 : 1));
  const byKey = new Map<string, StockBin[]>();
  for (const stock of open) {
    const key = keyOf(snapshot, stock);
    byKey.set(key, [...(byKey.get(key) ?? []), stock]);
  }
  const standing = [...byKey].map(([key, bins]) => standingPlace(snapshot, key, bins));
  return [...standing, ...buyingPlaces(snapshot, standing)];
}

function keyOf(snapshot: Snapshot, { bin, belief }: StockBin): string {
  if (bin.role === 'colony') return `${bin.species} colony ${bin.code}`;
  const climate = climateName(binClimate(snapshot, bin), snapshot.today);
  const speed =
    bin.role === 'holding' ? alike(belief.speedLog.mean, snapshot.facts.policy.speedLogSd.value / 2) : 0;
  const alone = rests(bin, snapshot.today) ? ` until ${bin.restsUntil}` : '';
  return `${bin.species} ${bin.role} ${climate} ${speed}${alone}`;
}

function climateName(climate: Climate, day: DayNumber): string {
  const { minC, maxC } = climate.on(day);
  return `${minC}-${maxC}`;
}

function standingPlace(snapshot: Snapshot, key: string, bins: readonly StockBin[]): Place {
  const open = bins.find(({ bin }) => !isApart(bin, snapshot.today));
  const first = open ?? (bins[0] as StockBin);
  const heads = (stock: StockBin) => Math.max(stock.heads, Number.EPSILON);
  const total = bins.reduce((sum, stock) => sum + heads(stock), 0);
  const mean = bins.reduce((sum, stock) => sum + heads(stock) * stock.belief.speedLog.mean, 0) / total;
  const sd = bins.reduce((sum, stock) => sum + heads(stock) * stock.speedSd, 0) / total;
  return {
    key,
    species: first.bin.species,
    role: first.bin.role,
    chain: first.chain,
    climate: binClimate(snapshot, first.bin),
    speedLog: { mean, sd },
    bins,
    into: open?.bin.role === 'holding' ? open.bin.code : null,
    restsUntil: rests(first.bin, snapshot.today) ? (first.bin.restsUntil ?? null) : null,
    bin: first.bin,
  };
}

/** What is bought goes neither to what is left alone nor to what is kept apart. */
const takesIn = ({ role, restsUntil, bins, into }: Place): boolean =>
  role === 'holding' && restsUntil === null && (into !== null || bins.length === 0);

/** For each species that is offered a place at the speed of the Book: where its other bins stand, else in the first room, if there is any. */
function buyingPlaces(snapshot: Snapshot, standing: readonly Place[]): Place[] {
  if (snapshot.rooms.length === 0) return [];
  const offered = [...new Set((snapshot.market?.offers ?? []).map(({ species }) => species))].sort();
  return offered
    .filter((code) => snapshot.facts.species.has(code))
    .flatMap((species): Place[] => {
      const holding = standing.filter((place) => place.species === species && takesIn(place));
      const usual = holding.find(
        ({ speedLog }) => alike(speedLog.mean, snapshot.facts.policy.speedLogSd.value / 2) === 0,
      );
      return usual ? [] : [newPlace(snapshot, species, holding[0])];
    });
}

function newPlace(snapshot: Snapshot, species: string, like: Place | undefined): Place {
  const room = like?.bin.room ?? snapshot.rooms[0]?.code ?? '';
  const bin: Bin = like
    ? { ...like.bin, events: [] }
    : {
        code: `~new ${species}`,
        name: 'new bin',
        species,
        role: 'holding',
        room,
        capacity: null,
        keepAdults: false,
        events: [],
      };
  const stock = binNow(snapshot, { ...bin, code: `~new ${species}`, capacity: null });
  return {
    key: `${species} holding new`,
    species,
    role: 'holding',
    chain: stock.chain,
    climate: like?.climate ?? climateAt(snapshot.rooms, { room, ownC: null }),
    speedLog: { mean: 0, sd: stock.speedSd },
    bins: [],
    into: like?.bin.code ?? null,
    restsUntil: null,
    bin: stock.bin,
  };
}

/** The place what is bought of a species goes to: at the speed of the Book. */
export function buyingPlace(places: readonly Place[], species: string, step: number): number {
  return places.findIndex(
    (place) => place.species === species && takesIn(place) && alike(place.speedLog.mean, step / 2) === 0,
  );
}
