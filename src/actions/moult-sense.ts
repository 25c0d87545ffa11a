/** Whether a moult or a size agrees with what is on record of the animal. */
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import type { Mm } from '../husbandry/units.ts';
import { type LifeRows, lifeOf } from '../store/index.ts';
import type { MoultGiven } from './life-events.ts';
import type { Scene } from './perform.ts';

/** The record of an animal up to today. */
export const recordOf = ({ tx, now }: Scene, code: string): Promise<LifeRows> =>
  tx.ask(lifeOf(code, now.today));

/** What is wrong with the days of a moult: on or before the last on record; null when nothing. */
export function moultOutOfTurn({ moults }: LifeRows, { found, earliest }: MoultGiven): Problem | null {
  const day = civilDate(found);
  const last = moults.at(-1);
  if (last === undefined) return null;
  if (found === last)
    return problem('moult-known', `A moult found on ${day} is written down already.`, 'found');
  if (found < last) return problem('moult-before-last', beforeLast(day, last), 'found');
  if (earliest === undefined || earliest >= last) return null;
  return problem('moult-before-last', beforeLast(civilDate(earliest), last), 'earliest');
}

const beforeLast = (day: string, last: DayNumber): string =>
  `"${day}" is before its last moult on record, found on ${civilDate(last)}.`;

interface SizeGiven {
  readonly gaugeMm: Mm;
  readonly moulted: DayNumber;
  /** The keeper has seen the sentence and keeps the size. */
  readonly smaller: boolean;
}

/** Animals do not shrink at a moult: asks whether a size below the last one measured before it is meant; null when fine. */
export function smallerThanBefore(
  { sizes }: LifeRows,
  { gaugeMm, moulted, smaller }: SizeGiven,
): Problem | null {
  const before = sizes.findLast(({ day }) => day < moulted);
  if (smaller || before === undefined || gaugeMm >= before.gaugeMm) return null;
  return problem(
    'smaller-after-moult',
    `${rounded(gaugeMm)} mm is less than the ${rounded(before.gaugeMm)} mm measured before this moult. Was it measured another way?`,
    'smaller',
  );
}

const TENTHS = 10;
const rounded = (mm: Mm): number => Math.round(mm * TENTHS) / TENTHS;
