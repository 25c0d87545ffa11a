/** What an evening took out of the bins, what they hold now, and which should be counted. */

import type { DayNumber } from '../calendar.ts';
import type { Bin, BinEvent } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Spread } from './answer.ts';
import { headsKnown, type StockBin, stockBin } from './stock-bin.ts';

export interface UsedBin {
  readonly bin: string;
  readonly species: string;
  /** Heads fed out of it that evening. */
  readonly fed: number;
  /** Heads it was thought to hold before, as far as nobody has looked since. */
  readonly before: number;
  readonly now: Spread;
  /** More was fed than was thought to be there: the count is doubted, the meals are kept. */
  readonly short: boolean;
  /** Whether a count is worth asking for. */
  readonly ask: boolean;
}

/** One evening, and the heads fed by bin as they are written down. */
export interface Fed {
  readonly day: DayNumber;
  readonly byBin: ReadonlyMap<string, number>;
}

/** The bins in use that were fed from, most used first; `snapshot` is of today, after the evening. */
export function usedBins(snapshot: Snapshot, { day, byBin }: Fed): readonly UsedBin[] {
  return snapshot.bins
    .filter(({ code }) => byBin.has(code))
    .map((bin) => usedBin(snapshot, bin, { day, fed: byBin.get(bin.code) ?? 0 }))
    .sort((a, b) => b.fed - a.fed || (a.bin < b.bin ? -1 : 1));
}

function usedBin(snapshot: Snapshot, bin: Bin, { day, fed }: { day: DayNumber; fed: number }): UsedBin {
  const of = (today: DayNumber, events: readonly BinEvent[]): StockBin =>
    stockBin({ ...snapshot, today }, { ...bin, events }, [...snapshot.facts.species.values()]);
  const since = bin.events.slice(bin.events.findLastIndex(isLook) + 1);
  const thatEvening = since.filter((event) => event.kind === 'offered' && event.day === day);
  const taken = thatEvening.reduce((sum, event) => sum + (event.kind === 'offered' ? event.heads : 0), 0);
  const { heads: before } = of(
    day,
    bin.events.filter((event) => !thatEvening.includes(event)),
  );
  const now = of(snapshot.today, bin.events);
  const short = bin.role !== 'cup' && Math.round(taken - before) >= 1;
  const ask = short || asksFor(now, snapshot, taken / before);
  return { bin: bin.code, species: bin.species, fed, before, now: headsKnown(now), short, ask };
}

const isLook = ({ kind }: BinEvent): boolean => kind === 'counted' || kind === 'looked' || kind === 'weighed';

/** A cup is known by its look; any other bin is counted when its count is old or in doubt, or the evening took much of it. */
function asksFor({ bin, belief, state }: StockBin, { today, facts }: Snapshot, share: number): boolean {
  const { askCountCv, askCountDays, askCountShare } = facts.policy;
  if (bin.role === 'cup' || !(share > 0)) return false;
  const old = today - (state.lookedOn ?? today) >= askCountDays.value;
  return old || belief.heads.cv >= askCountCv.value || share >= askCountShare.value;
}
