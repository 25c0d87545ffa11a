/** Nothing is written down of an animal before it hatched, nor as seen here before it came. */
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import type { AnimalRow } from '../store/index.ts';

type Begun = Pick<AnimalRow, 'code' | 'name' | 'hatchedDay' | 'hereSince'>;

interface Dated {
  readonly day: DayNumber | null | undefined;
  readonly field: string;
}

/** Refuses what is dated before the animal hatched: also what somebody else saw and told. */
export const beforeItHatched = (row: Begun, dated: Dated): Problem | null =>
  early(dated, row.hatchedDay, (day) => `before ${called(row)} hatched (${day})`);

/** Refuses what the keeper cannot have seen: dated before the animal hatched or came here. */
export const beforeItCame = (row: Begun, dated: Dated): Problem | null =>
  beforeItHatched(row, dated) ??
  early(dated, row.hereSince, (day) => `before ${called(row)} came to live here (${day})`);

const called = ({ name, code }: Begun): string => (name === '' ? code : name);

function early(
  { day, field }: Dated,
  start: DayNumber | null,
  said: (day: string) => string,
): Problem | null {
  if (day == null || start === null || day >= start) return null;
  return problem('before-its-life', `"${civilDate(day)}" is ${said(civilDate(start))}.`, field);
}

interface Told {
  readonly lastTaken: DayNumber | undefined;
  readonly lastMoult: DayNumber | undefined;
}

/** What an animal's form tells of its past and of its beginning, checked against each other. */
export const pastTooEarly = (row: Begun, { lastTaken, lastMoult }: Told): Problem | null =>
  beforeItHatched(row, { day: row.hereSince, field: 'hereSince' }) ??
  beforeItHatched(row, { day: lastTaken, field: 'lastTaken' }) ??
  beforeItHatched(row, { day: lastMoult, field: 'lastMoult' });
