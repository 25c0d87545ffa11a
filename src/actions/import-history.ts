/** What a list says of an animal's past, as lines of the journal. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Problem } from '../husbandry/problems.ts';
import type { EntryInput } from '../store/index.ts';
import { afterToday } from './parse.ts';

interface Past {
  readonly lastFed?: DayNumber | null | undefined;
  readonly lastMoult?: DayNumber | null | undefined;
}

/** The last meal, taken, and the last moult, found on its day. */
export function historyOf(animal: string, { lastFed, lastMoult }: Past): readonly EntryInput[] {
  const meal: EntryInput[] =
    lastFed == null ? [] : [{ day: lastFed, kind: 'offered', animal, details: { outcome: 'taken' } }];
  const moult: EntryInput[] =
    lastMoult == null ? [] : [{ day: lastMoult, kind: 'moulted', animal, details: { earliest: lastMoult } }];
  return [...moult, ...meal];
}

interface Dated {
  readonly animals: {
    readonly new: readonly Past[];
    readonly changed: readonly { readonly fields: Past }[];
  };
  readonly lots: readonly { readonly came?: DayNumber | null | undefined }[];
}

/** The first day in an import that has not come yet, as a Problem with its place; null when all have. */
export function tooEarly(today: DayNumber, { animals, lots }: Dated): Problem | null {
  const days = [
    ...animals.new.flatMap((past, at) => placed(`animals.new.${at}`, past)),
    ...animals.changed.flatMap(({ fields }, at) => placed(`animals.changed.${at}.fields`, fields)),
    ...lots.map(({ came }, at) => ({ field: `lots.${at}.came`, day: came })),
  ];
  const problems = days.flatMap(({ field, day }) =>
    day == null ? [] : (afterToday(day, today, field) ?? []),
  );
  return problems[0] ?? null;
}

const placed = (at: string, { lastFed, lastMoult }: Past) => [
  { field: `${at}.lastFed`, day: lastFed },
  { field: `${at}.lastMoult`, day: lastMoult },
];
