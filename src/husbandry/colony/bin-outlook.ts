/** What a bin's page tells of the coming weeks: where the bin goes, what may be taken from it, and what must go. */
import { solver } from '../../maths/linear-programme.ts';
import { type Bin, type Chain, capacityOf, colonyGrowth } from '../larder/index.ts';
import type { DayTemp } from '../prey/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { type BinAhead, binAhead, binNow } from '../supply/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { breedingOf } from './breeding.ts';
import { mostTaken } from './breeding-stock.ts';
import { type Cull, cullsAhead } from './culls.ts';

export interface BinOutlook extends BinAhead {
  readonly culls: readonly Cull[];
  /** Of a colony at today's temperatures; null for other bins, and where nothing is known of its laying. */
  readonly takes: ColonyTakes | null;
}

export interface ColonyTakes {
  /** Largest share of every size that can be taken each week for ever while it has room. */
  readonly weeklyShare: number;
  /** Heads a week, once the bin is full, if this size alone is taken; none where its capacity is not known. */
  readonly most: readonly { readonly size: string; readonly heads: number }[];
}

/** The bin by this code, or null. */
export async function binOutlook(snapshot: Snapshot, code: string): Promise<BinOutlook | null> {
  const ahead = binAhead(snapshot, code);
  const bin = snapshot.bins.find((each) => each.code === code);
  if (!ahead || !bin) return null;
  const { today, facts } = snapshot;
  const { chain, state, belief } = binNow(snapshot, bin);
  const climate = binClimate(snapshot, bin);
  const speed = Math.exp(belief.speedLog.mean);
  const days = facts.policy.binWeeks.value * DAYS_PER_WEEK;
  return {
    ...ahead,
    culls: cullsAhead({
      life: { chain, bin, climate, speed },
      state,
      today,
      days,
      lastsDays: facts.policy.cullDays.value,
    }),
    takes: bin.role === 'colony' ? await takesOf(bin, chain, climate.on(today)) : null,
  };
}

async function takesOf(bin: Bin, chain: Chain, temp: DayTemp): Promise<ColonyTakes | null> {
  const breeding = breedingOf(chain.species, temp);
  const growth = breeding && colonyGrowth(breeding.rates);
  if (!breeding || !growth) return null;
  const capacity = capacityOf(bin, chain);
  const solve = await solver();
  const most = (capacity ? chain.species.sizeClasses.value : []).map((size) => ({
    size: size.name,
    heads: capacity ? mostTaken(solve, breeding, { size, capacity }) : 0,
  }));
  return { weeklyShare: growth.weeklyShare, most };
}
