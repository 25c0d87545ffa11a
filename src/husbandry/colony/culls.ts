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
}

/** Culls of the coming days; none where the bin has room enough and nobody told its sexes apart. */
export function cullsAhead(asked: CullsAsked): Cull[] {
  if (asked.life.bin.role === 'frozen' || asked.life.bin.role === 'cup') return [];
  const ahead = statesAhead(asked);
  return [...forRoom(asked, ahead), ...ofMales(asked, ahead)];
}

/** As if nobody suffered from being many: what is culled in time is not crowded. */
function statesAhead({ life, state, today, days }: CullsAsked): BinState[] {
  const states = [state];
  for (let day = 0; day < days; day++)
    states.push(nextDay(life, states[day] as BinState, today + day, NO_PRESSURE).state);
  return states;
}

/**
 * Enough go on the first day over capacity to make room for what else is to come: the greatest excess ahead, from the
 * sizes that take most room then; a size that holds breeders kept back is left alone.
 */
function forRoom({ life: { bin, chain }, today }: CullsAsked, ahead: readonly BinState[]): Cull[] {
  const capacity = capacityOf(bin, chain);
  if (capacity === null || capacity.heads <= 0) return [];
  const over = ahead.map(({ heads }) => loadOf(chain, heads, capacity) - capacity.heads);
  const first = over.findIndex((excess) => excess > 0);
  if (first < 0) return [];
  let excess = Math.max(...over);
  const culls: Cull[] = [];
  for (const { size, heads, load } of bySize(chain, (ahead[first] as BinState).heads, capacity)) {
    if (excess <= 0) break;
    if (load <= 0 || (bin.keepAdults && adultSize(chain).fromMm <= size.toMm)) continue;
    const goes = Math.min(heads, Math.ceil((excess * heads) / load));
    culls.push({ why: 'room', day: today + first, heads: Math.ceil(goes), size });
    excess -= (goes * load) / heads;
  }
  return culls;
}

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
