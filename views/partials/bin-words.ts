/** A bin's next days and weeks in words. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { Bin, BinRole } from '../../src/husbandry/larder/index.ts';
import type { BinAnswer, BinGoes, BinToday } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, ago, expected, shortDay, spell } from '../format.ts';

/** Where a bin's prey goes: 'about 120 eaten, 15 die, 30 outgrow everyone, 205 left'. */
export function goes({ eaten, died, hatched, arrived, outgrown, left }: BinAnswer, role: BinRole): string {
  const parts: readonly (readonly [number, string])[] = [
    [arrived, 'arrive'],
    [hatched, 'hatch'],
    [eaten, 'eaten'],
    [died, 'die'],
    [outgrown, 'outgrow everyone'],
    [left, 'left'],
  ];
  const said = parts.filter(([n]) => n >= 1).map(([n, word]) => `${expected(n)} ${word}`);
  if (said.length > 0) return said.join(', ');
  return role === 'cup' ? 'no flies' : 'empty';
}

/** How much is alive in it: a count, none, or that nobody has counted. */
export function aliveWords({
  headsNow,
  lookedDaysAgo,
}: Pick<BinToday, 'headsNow' | 'lookedDaysAgo'>): string {
  const unknown = headsNow.high < 1 && lookedDaysAgo === null;
  return unknown ? 'not counted yet' : aboutHeads(headsNow);
}

/** What was last seen of a cup: 'producing, 2 days ago'. */
export function cupLooks({ events }: Pick<Bin, 'events'>, today: DayNumber): string {
  const seen = events.findLast((event) => event.kind === 'cup looked');
  return seen?.kind === 'cup looked' ? `${seen.look}, ${ago(today - seen.day)}` : 'not looked at';
}

/** How a colony grows once it is of all ages; the weeks ahead may run faster or slower. */
const doublingWords = (days: number | null): string =>
  days === null ? 'does not grow as warm as it stands' : `doubles in about ${spell(days)} in the long run`;

/** Until when a bin is kept apart or left alone, and to when it keeps in the cold or frozen. */
export interface Kept {
  readonly apartUntil: DayNumber | null;
  readonly restsUntil: DayNumber | null;
  readonly keepsTo: DayNumber | null;
}

interface Going {
  readonly bin: Pick<Bin, 'role'>;
  readonly goes: BinGoes;
  readonly today: DayNumber;
}

/** What a bin comes to first: 'too large for spiderlings from about Thu 3 Dec', 'doubles in about 7 weeks in the long run'. */
export function comesTo({ bin, goes: ahead, today }: Going): readonly string[] {
  const { outgrows, overFrom, mostAdult, doublingDays } = ahead;
  const size = outgrows === null ? null : outgrownWords(outgrows, today);
  return [
    bin.role === 'colony' ? doublingWords(doublingDays) : null,
    size,
    overFrom === null ? null : overWords(overFrom, today),
    size === null && mostAdult !== null ? adultWords(mostAdult, today) : null,
  ].filter((words) => words !== null);
}

function outgrownWords({ name, from, some }: NonNullable<BinGoes['outgrows']>, today: DayNumber): string {
  const whom = some ? `some ${name}` : name;
  return from <= today ? `too large for ${whom}` : `too large for ${whom} from about ${shortDay(from)}`;
}

const overWords = (from: DayNumber, today: DayNumber): string =>
  from <= today ? 'more than it has room for' : `too full from about ${shortDay(from)}`;

const adultWords = (from: DayNumber, today: DayNumber): string =>
  from <= today ? 'most are adult' : `most are adult from about ${shortDay(from)}`;

/** What is written of how a bin is kept: 'apart until Thu 3 Dec', 'keeps to Tue 12 Jan'. */
export function keptWords({ apartUntil, restsUntil, keepsTo }: Kept, today: DayNumber): readonly string[] {
  const keeps = (to: DayNumber) =>
    to < today ? `kept to ${shortDay(to)}: use it up` : `keeps to ${shortDay(to)}`;
  return [
    ...(apartUntil === null ? [] : [`apart until ${shortDay(apartUntil)}`]),
    ...(restsUntil === null ? [] : [`left alone until ${shortDay(restsUntil)}`]),
    ...(keepsTo === null ? [] : [keeps(keepsTo)]),
  ];
}
