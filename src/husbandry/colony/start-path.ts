/** The way of a colony from its starters, week by week, by means: nothing is taken before the breeders are there. */
import {
  adultLot,
  type Bin,
  type BinState,
  capacityOf,
  emptyState,
  type Life,
  loadOf,
  nextDay,
  type Space,
  spreadLot,
  steadyClimate,
  totalHeads,
} from '../larder/index.ts';
import type { DayTemp } from '../prey/index.ts';
import { DAYS_PER_WEEK, type Mm } from '../units.ts';
import type { Breeding } from './breeding.ts';
import type { Size } from './sizes.ts';

/** What a colony is begun with: adults told apart, or young of a size. */
export type Starters =
  | { readonly kind: 'adults'; readonly females: number; readonly males: number }
  | { readonly kind: 'young'; readonly heads: number; readonly fromMm: Mm; readonly toMm: Mm };

/** How large one bin is; absent or null: not said. */
export interface BinSize {
  readonly capacity: number | null;
  readonly space?: Space | null;
}

export interface StartWeek {
  /** Weeks since the start, the first 1. */
  readonly week: number;
  readonly females: number;
  readonly heads: number;
  /** Bins they fill just before the harvest; null where it is not known what a bin holds. */
  readonly bins: number | null;
  /** Heads taken of each wanted size, in the order of the sizes. */
  readonly taken: readonly number[];
  /** Heads still wanted, to be bought. */
  readonly bought: number;
}

export interface Start {
  readonly breeding: Breeding;
  readonly temp: DayTemp;
  readonly starters: Starters;
  readonly binSize: BinSize | null;
  /** Breeders wanted, and sizes from the largest down. */
  readonly breeders: { readonly females: number; readonly males: number };
  readonly sizes: readonly Size[];
  readonly weeks: number;
}

/** Breeders apart from all others, who do not lay: what is too much is taken out before it breeds. */
interface Colony {
  readonly breeders: BinState;
  readonly others: BinState;
}

export function startPath(start: Start): StartWeek[] {
  const { chain } = start.breeding;
  let colony = begun(start);
  let ready = false;
  return Array.from({ length: start.weeks }, (_, week) => {
    colony = placesFilled(start, afterWeek(start, colony, week * DAYS_PER_WEEK));
    const { breeders } = colony;
    const bins = binsFilled(start, both(colony));
    const females = femalesOf(start, breeders);
    ready ||= females >= start.breeders.females * (1 - CLOSE);
    const others = colony.others.heads.slice();
    const vacant = Math.max(0, start.breeders.females + start.breeders.males - totalHeads(breeders.heads));
    const taken = start.sizes.map((size) => (ready ? takeLargest(start, others, { size, vacant }) : 0));
    if (ready && !start.sizes.some(({ share }) => (share[start.breeding.firstAdult] as number) > 0))
      others.fill(0, start.breeding.firstAdult);
    colony = { breeders, others: { ...colony.others, heads: others } };
    return {
      week: week + 1,
      females,
      heads: totalHeads(both(colony), chain.firstHead),
      bins,
      taken,
      bought: start.sizes.reduce((sum, size, i) => sum + size.heads - (taken[i] as number), 0),
    };
  });
}

/** Breeders who lack less than this share are all there. */
const CLOSE = Number.EPSILON ** (1 / 2);

/** As many bins as it needs, so that nothing crowds. */
function lifeOf({ breeding: { chain }, temp }: Start): Life {
  const bin: Bin = {
    code: 'colony',
    name: '',
    species: chain.species.code,
    role: 'colony',
    room: '',
    capacity: null,
    keepAdults: true,
    events: [],
  };
  return { chain, bin, climate: steadyClimate(temp), speed: 1 };
}

/** Starting adults are of every age alike. */
function begun({ breeding: { chain }, starters }: Start): Colony {
  const empty = emptyState(chain);
  if (starters.kind === 'young')
    return { breeders: empty, others: { ...empty, heads: spreadLot(chain, starters) } };
  const { females, males } = starters;
  const heads = spreadLot(chain, adultLot(chain, females + males));
  return { breeders: { ...empty, heads, femaleShare: females / (females + males) }, others: empty };
}

/** Seven days; the breeders' young join the others. */
function afterWeek(start: Start, { breeders, others }: Colony, today: number): Colony {
  const life = lifeOf(start);
  const barren = { ...life, barren: true };
  const { femaleShare } = breeders;
  let [laying, growing] = [breeders, others];
  for (let day = today; day < today + DAYS_PER_WEEK; day++) {
    laying = nextDay(life, laying, day).state;
    growing = nextDay(barren, growing, day).state;
  }
  const { firstAdult } = start.breeding;
  const heads = growing.heads.map((n, j) => (j < firstAdult ? n + (laying.heads[j] as number) : n));
  return {
    breeders: { ...laying, heads: laying.heads.fill(0, 0, firstAdult), femaleShare },
    others: { ...growing, heads },
  };
}

/** Those grown up take the places of breeders that are free, females and males in their usual shares. */
function placesFilled(start: Start, { breeders, others }: Colony): Colony {
  const { firstAdult, femaleShare } = start.breeding;
  const grown = totalHeads(others.heads, firstAdult);
  if (grown <= 0) return { breeders, others };
  const females = femalesOf(start, breeders);
  const adults = totalHeads(breeders.heads);
  const free = (wanted: number, there: number, come: number) => Math.min(come, Math.max(0, wanted - there));
  const newFemales = free(start.breeders.females, females, grown * femaleShare);
  const newMales = free(start.breeders.males, adults - females, grown * (1 - femaleShare));
  const share = (newFemales + newMales) / grown;
  const joined = breeders.heads.map((n, j) => (j < firstAdult ? n : n + (others.heads[j] as number) * share));
  const left = others.heads.map((n, j) => (j < firstAdult ? n : n * (1 - share)));
  const total = adults + newFemales + newMales;
  return {
    breeders: { ...breeders, heads: joined, femaleShare: total > 0 ? (females + newFemales) / total : null },
    others: { ...others, heads: left },
  };
}

const both = ({ breeders, others }: Colony): Float64Array =>
  breeders.heads.map((n, j) => n + (others.heads[j] as number));

const femalesOf = ({ breeding }: Start, { heads, femaleShare }: BinState): number =>
  totalHeads(heads) * (femaleShare ?? breeding.femaleShare);

function binsFilled({ breeding: { chain }, binSize }: Start, heads: Float64Array): number | null {
  const capacity = binSize && capacityOf(binSize, chain);
  return capacity && capacity.heads > 0 ? Math.ceil(loadOf(chain, heads, capacity) / capacity.heads) : null;
}

/** Takes what is wanted from the largest down, less what must grow on and fill vacant places; heads taken. */
function takeLargest(
  { breeding: { chain } }: Start,
  heads: Float64Array,
  { size, vacant }: { size: Size; vacant: number },
): number {
  let spared = Math.max(0, size.growing + vacant - totalHeads(heads, size.above));
  let taken = 0;
  for (let j = chain.size - 1; j >= 0; j--) {
    const there = (heads[j] as number) * (size.share[j] as number);
    const free = Math.max(0, there - spared);
    spared -= there - free;
    const takes = Math.min(free, size.heads - taken);
    heads[j] = (heads[j] as number) - takes;
    taken += takes;
  }
  return taken;
}
