/** What will have to go from a bin: how many, of which size and when, for want of room or because they are spare males. */
import type { DayNumber } from '../calendar.ts';
import {
  adultSize,
  type BinState,
  between,
  type Capacity,
  type Chain,
  capacityOf,
  firstAdult,
  type Life,
  loadOf,
  NO_PRESSURE,
  nextDay,
  totalHeads,
} from '../larder/index.ts';
import type { SizeClass } from '../prey/index.ts';

export interface Cull {
  readonly why: 'room' | 'males';
  /** First day on which they are too many. */
  readonly day: DayNumber;
  readonly heads: number;
  /** Trade size they are taken from; null for males, who are adult. */
  readonly size: SizeClass | null;
}

export interface CullsAsked {
  readonly life: Life;
  readonly state: BinState;
  readonly today: DayNumber;
  /** Days looked ahead. */
  readonly days: number;
  /** A cull makes room for what is to come within so many days. */
  readonly lastsDays: number;
  /** Share of the heads of each substage that is eaten on a day; absent or null: nothing is. */
  readonly eaten?: (day: DayNumber) => ArrayLike<number> | null;
}

/** Culls of the coming days; none where the bin has room enough and nobody told its sexes apart. */
export function cullsAhead(asked: CullsAsked): Cull[] {
  if (asked.life.bin.role === 'frozen' || asked.life.bin.role === 'cup') return [];
  const { culls, states } = thinnedInTime(asked);
  return [...culls, ...ofMales(asked, states)];
}

/** Day by day: whenever it is too full, enough go that it has room for a while. */
function thinnedInTime(asked: CullsAsked): { culls: Cull[]; states: BinState[] } {
  const { life, today, days, lastsDays } = asked;
  const capacity = capacityOf(life.bin, life.chain);
  const over = ({ heads }: BinState): number =>
    capacity === null ? 0 : loadOf(life.chain, heads, capacity) - capacity.heads;
  const states = [asked.state];
  const culls: Cull[] = [];
  for (let at = 0; at <= days; at++) {
    const here = states[at] as BinState;
    if (capacity !== null && capacity.heads > 0 && over(here) > 0) {
      const ahead = { ...asked, state: here, today: today + at, days: lastsDays };
      const gone = forRoom(life, here.heads, { capacity, excess: Math.max(...statesAhead(ahead).map(over)) });
      culls.push(...gone.map(({ heads, size }): Cull => ({ why: 'room', day: today + at, heads, size })));
      states[at] = { ...here, heads: without(life.chain, here.heads, gone) };
    }
    if (at < days) states.push(dayAfter(asked, states[at] as BinState, today + at));
  }
  return { culls, states };
}

function statesAhead(asked: CullsAsked): BinState[] {
  const states = [asked.state];
  for (let at = 0; at < asked.days; at++)
    states.push(dayAfter(asked, states[at] as BinState, asked.today + at));
  return states;
}

/** As if nobody suffered from being many: what is culled in time is not crowded. */
function dayAfter({ life, eaten }: CullsAsked, state: BinState, day: DayNumber): BinState {
  const next = nextDay(life, state, day, NO_PRESSURE).state;
  const shares = eaten?.(day) ?? [];
  return { ...next, heads: next.heads.map((heads, j) => heads * (1 - (shares[j] ?? 0))) };
}

interface Gone {
  readonly size: SizeClass;
  readonly heads: number;
}

/** Enough to make room for an excess, from the sizes that take most of it; a size that holds breeders kept back is left alone. */
function forRoom(
  { bin, chain }: Life,
  heads: Float64Array,
  { capacity, excess }: { capacity: Capacity; excess: number },
): Gone[] {
  let rest = excess;
  const gone: Gone[] = [];
  for (const { size, heads: there, load } of bySize(chain, heads, capacity)) {
    if (rest <= 0) break;
    if (load <= 0 || (bin.keepAdults && adultSize(chain).fromMm <= size.toMm)) continue;
    const goes = Math.min(there, Math.ceil((rest * there) / load));
    gone.push({ size, heads: Math.ceil(goes) });
    rest -= (goes * load) / there;
  }
  return gone;
}

/** Each size's heads in proportion to what is there. */
const without = (chain: Chain, heads: Float64Array, gone: readonly Gone[]): Float64Array =>
  gone.reduce((left, { size, heads: many }) => {
    const within = between(chain, left, size);
    const share = Math.min(1, many / totalHeads(within));
    return left.map((n, j) => n - share * (within[j] as number));
  }, heads);

/** Heads of each trade size and the room they take, the largest load first. */
function bySize(chain: Chain, heads: Float64Array, capacity: Capacity) {
  return chain.species.sizeClasses.value
    .map((size) => {
      const within = between(chain, heads, size);
      return { size, heads: totalHeads(within), load: loadOf(chain, within, capacity) };
    })
    .sort((a, b) => b.load - a.load);
}

/** Males beyond those the females need, where the sexes were told apart and the species' need is known. */
function ofMales({ life: { chain }, today }: CullsAsked, ahead: readonly BinState[]): Cull[] {
  const perMale = chain.species.laying?.femalesPerMale?.value;
  if (perMale === undefined) return [];
  const spare = ahead.map(({ heads, femaleShare }) => {
    const adults = totalHeads(heads, firstAdult(chain));
    const females = adults * (femaleShare ?? 1);
    return Math.floor(adults - females - Math.ceil(females / perMale));
  });
  const first = spare.findIndex((males) => males >= 1);
  return first < 0 ? [] : [{ why: 'males', day: today + first, heads: spare[first] as number, size: null }];
}
