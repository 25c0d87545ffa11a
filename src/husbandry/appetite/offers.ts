/**
 * The law of one row's offers where nothing about it changes: on which days its first and its next meal may be
 * offered, and with what chance. The same law as the meal calendar draws from (meals.ts).
 */
import { NEVER } from '../calendar.ts';
import { type FeedingDays, offeredOn } from './feeding-days.ts';
import type { Roster } from './roster.ts';

/** Chance by day of the horizon; the rest of 1 lies beyond it. */
export type DayChances = ReadonlyMap<number, number>;

/** Whether the row neither moults, comes nor goes: a group alike, or an animal whose moults are over. */
export const isSteady = (roster: Roster, i: number): boolean =>
  ((roster.heads[i] as number) > 1 || Number.isNaN(roster.cycleLogMean[i * roster.steps] as number)) &&
  roster.arrivesFrom[i] === NEVER &&
  roster.leavesChance[i] === 0;

interface Spell {
  readonly min: number;
  readonly max: number;
}

const spellOf = (roster: Roster, i: number): Spell => ({
  min: roster.intervalMin[i * roster.steps] as number,
  max: roster.intervalMax[i * roster.steps] as number,
});

/** Days from..to, each as likely. */
const wholeDays = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, n) => from + n);

function gather(days: readonly { readonly day: number; readonly chance: number }[]): DayChances {
  const chances = new Map<number, number>();
  for (const { day, chance } of days) chances.set(day, (chances.get(day) ?? 0) + chance);
  return chances;
}

/** The first offer: an interval after the last meal taken, not before a retry; unknown: anywhere in the interval. */
export function firstOffers(roster: Roster, i: number, feeding: FeedingDays): DayChances {
  const { min, max } = spellOf(roster, i);
  const hold = Math.max(roster.notBefore[i] as number, 0);
  const intervals = wholeDays(min, max);
  return gather(
    intervals.flatMap((interval) => {
      const last = roster.lastTaken[i] as number;
      const fedDays = last === NEVER ? wholeDays(-interval, -1) : [last];
      return fedDays.map((fed) => ({
        day: offeredOn(feeding, {
          from: Math.max(fed + min, hold),
          to: hold > fed + max ? hold + max - min : fed + max,
          drawn: Math.max(fed + interval, hold),
        }),
        chance: 1 / (intervals.length * fedDays.length),
      }));
    }),
  );
}

/** The offer after one on `day`: an interval on when taken, the retry wait on when refused. */
export function nextOffers(
  roster: Roster,
  i: number,
  { feeding, day }: { feeding: FeedingDays; day: number },
): DayChances {
  const { min, max } = spellOf(roster, i);
  const taken = acceptanceOf(roster, i);
  const again = day + (roster.rules.retry[roster.rule[i * roster.steps] as number] as number);
  const intervals = wholeDays(min, max);
  const after = intervals.map((interval) => ({
    day: offeredOn(feeding, { from: day + min, to: day + max, drawn: day + interval }),
    chance: taken / intervals.length,
  }));
  const retry = offeredOn(feeding, { from: again, to: again + max - min, drawn: again });
  return gather([...after, { day: retry, chance: 1 - taken }]);
}

/** Chance that an offer is taken; groups are fed on. */
function acceptanceOf(roster: Roster, i: number): number {
  if ((roster.heads[i] as number) > 1) return 1;
  const rule = roster.rule[i * roster.steps] as number;
  return Math.min(1, (roster.rules.acceptanceBest[rule] as number) * (roster.appetite[i] as number));
}
