/** Where bins are likeliest to go in the coming weeks if nothing is taken out: whom they outgrow, when they are full, how fast they breed. */
import { type DemandGroup, rosterOf } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import {
  type Bin,
  type BinState,
  type Chain,
  capacityOf,
  colonyGrowth,
  colonyRates,
  firstAdult,
  loadOf,
  medianLength,
  nextDay,
  totalHeads,
} from '../larder/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { binNow } from './holding.ts';

export interface BinGoes {
  readonly bin: string;
  /** Of the groups it feeds, the first for which most of it becomes too long; `some`: others of the same name eat on. */
  readonly outgrows: { readonly name: string; readonly from: DayNumber; readonly some: boolean } | null;
  /** Share of its capacity that is taken today; null where that is not known. */
  readonly full: number | null;
  /** First day on which there are more than it can carry; null when not within the weeks. */
  readonly overFrom: DayNumber | null;
  /** First day on which most are adult. */
  readonly mostAdult: DayNumber | null;
  /** Of a colony at today's temperatures; null where it does not grow. */
  readonly doublingDays: number | null;
}

/** Of the living bins that are no cups: at the growth speed and count that are likeliest. */
export function binsGo(snapshot: Snapshot, bins: readonly Bin[] = snapshot.bins): BinGoes[] {
  const { groups } = rosterOf(snapshot, snapshot.facts.policy.moultsAhead.value);
  const eating = groups.filter(({ animals }) => animals.length > 0);
  return bins
    .filter(({ role }) => role === 'holding' || role === 'colony')
    .map((bin) => goesOf(snapshot, bin, eating));
}

function goesOf(snapshot: Snapshot, bin: Bin, groups: readonly DemandGroup[]): BinGoes {
  const { chain, days } = daysAhead(snapshot, bin);
  const { today } = snapshot;
  const capacity = capacityOf(bin, chain);
  const load = (state: BinState) =>
    capacity && capacity.heads > 0 ? loadOf(chain, state.heads, capacity) / capacity.heads : null;
  const firstDay = (is: (state: BinState) => boolean): DayNumber | null => {
    const at = days.findIndex(is);
    return at < 0 ? null : today + at;
  };
  return {
    bin: bin.code,
    outgrows: bin.role === 'holding' ? firstOutgrown(groups, { chain, days, today }) : null,
    full: load(days[0] as BinState),
    overFrom: firstDay((state) => (load(state) ?? 0) > 1),
    mostAdult: bin.role === 'holding' ? firstDay(({ heads }) => mostAreAdult(chain, heads)) : null,
    doublingDays: bin.role === 'colony' ? doublingDays(snapshot, bin, chain) : null,
  };
}

interface Ahead {
  readonly chain: Chain;
  readonly days: readonly BinState[];
}

/** From today, day by day. */
function daysAhead(snapshot: Snapshot, bin: Bin): Ahead {
  const { chain, state, belief } = binNow(snapshot, bin);
  const speed = Math.exp(belief.speedLog.mean);
  const life = { chain, bin, climate: binClimate(snapshot, bin), speed };
  const days = [state];
  for (let day = 0; day < snapshot.facts.policy.binWeeks.value * DAYS_PER_WEEK; day++)
    days.push(nextDay(life, days[day] as BinState, snapshot.today + day).state);
  return { chain, days };
}

/** Only groups that some of the days can feed. */
function firstOutgrown(
  groups: readonly DemandGroup[],
  { chain, days, today }: Ahead & { today: DayNumber },
): BinGoes['outgrows'] {
  const medians = days.map(({ heads }) => medianLength(chain, heads));
  const fed = groups.flatMap(({ name, windows }) => {
    const window = windows.get(chain.species.code);
    if (!window || !medians.some((median) => window.minMm <= median && median <= window.maxMm)) return [];
    const at = medians.findIndex((median) => median > window.maxMm);
    return [{ name, from: today + (at < 0 ? Number.POSITIVE_INFINITY : at) }];
  });
  const [first] = fed.sort((a, b) => a.from - b.from || (a.name < b.name ? -1 : 1));
  if (!first || first.from === Number.POSITIVE_INFINITY) return null;
  return { ...first, some: fed.some(({ name, from }) => name === first.name && from > first.from) };
}

function mostAreAdult(chain: Chain, heads: Float64Array): boolean {
  const all = totalHeads(heads, chain.firstHead);
  return all > 0 && 2 * totalHeads(heads, firstAdult(chain)) >= all;
}

function doublingDays(snapshot: Snapshot, bin: Bin, chain: Chain): number | null {
  if (chain.species.laying === null) return null;
  const temp = binClimate(snapshot, bin).on(snapshot.today);
  return colonyGrowth(colonyRates(chain, temp))?.doublingDays ?? null;
}
