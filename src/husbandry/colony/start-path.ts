/** The way of a colony from its starters, week by week, by means: nothing is taken before the breeders are there. */
import {
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

export function startPath(start: Start): StartWeek[] {
  const life = lifeOf(start);
  let state = begun(start);
  let ready = false;
  return Array.from({ length: start.weeks }, (_, week) => {
    for (let day = 0; day < DAYS_PER_WEEK; day++)
      state = nextDay(life, state, week * DAYS_PER_WEEK + day).state;
    const bins = binsFilled(start, state.heads);
    ready ||= femalesIn(start, state) >= start.breeders.females;
    const heads = state.heads.slice();
    const taken = start.sizes.map((size) => (ready ? takeLargest(start, heads, size) : 0));
    state = ready ? withBreedersOnly(start, { ...state, heads }) : state;
    return {
      week: week + 1,
      females: femalesIn(start, state),
      heads: totalHeads(state.heads, life.chain.firstHead),
      bins,
      taken,
      bought: start.sizes.reduce((sum, size, i) => sum + size.heads - (taken[i] as number), 0),
    };
  });
}

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
function begun({ breeding: { chain }, starters }: Start): BinState {
  const adultMm = chain.species.adultLengthMm.value;
  const { lot, femaleShare } =
    starters.kind === 'young'
      ? { lot: starters, femaleShare: null }
      : {
          lot: { heads: starters.females + starters.males, fromMm: adultMm, toMm: adultMm },
          femaleShare: starters.females / (starters.females + starters.males),
        };
  return { ...emptyState(chain), heads: spreadLot(chain, lot), femaleShare };
}

const femalesIn = ({ breeding }: Start, { heads, femaleShare }: BinState): number =>
  totalHeads(heads, breeding.firstAdult) * (femaleShare ?? breeding.femaleShare);

function binsFilled({ breeding: { chain }, binSize }: Start, heads: Float64Array): number | null {
  const capacity = binSize && capacityOf(binSize, chain);
  return capacity && capacity.heads > 0 ? Math.ceil(loadOf(chain, heads, capacity) / capacity.heads) : null;
}

/** Takes what is wanted from the largest down, less the breeders and what must grow on; heads taken. */
function takeLargest({ breeding, breeders }: Start, heads: Float64Array, size: Size): number {
  const { firstAdult, chain } = breeding;
  const growing = totalHeads(heads.slice(0, firstAdult), size.above);
  const kept = size.above > firstAdult ? breeders.females + breeders.males : 0;
  let spared = kept + Math.max(0, size.growing - growing);
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

/** Adults beyond the breeders go, surplus males among them. */
function withBreedersOnly(start: Start, state: BinState): BinState {
  const { breeding, breeders } = start;
  const adults = totalHeads(state.heads, breeding.firstAdult);
  if (adults <= 0) return state;
  const there = femalesIn(start, state);
  const females = Math.min(there, breeders.females);
  const stay = females + Math.min(adults - there, breeders.males);
  const heads = state.heads.map((n, j) => (j < breeding.firstAdult ? n : (n * stay) / adults));
  return { ...state, heads, femaleShare: females / stay };
}
