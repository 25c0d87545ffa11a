/** An absence of the keeper: its days, the evening before it, the day of return and the first feeding day after it. */
import { feedingDaysFrom } from '../appetite/index.ts';
import type { DayNumber, DayRange, FeedingCalendar } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';

export interface Absence extends DayRange {
  /** Evening before leaving; null when it has passed. */
  readonly eve: DayNumber | null;
  /** First day after it that is no other absence. */
  readonly home: DayNumber;
  /** First feeding day from then on; the day of return when none lies ahead. */
  readonly fedAgain: DayNumber;
}

/** The same calendar with nobody there on these days. */
export const withoutDays = (calendar: FeedingCalendar, away: DayRange): FeedingCalendar => ({
  ...calendar,
  absences: [...calendar.absences, away],
});

/** An absence of a snapshot's keeper; what of it has passed is left out. */
export function absenceOf({ calendar, today, facts }: Snapshot, given: DayRange): Absence {
  const from = Math.max(given.from, today);
  const { to } = given;
  const home = homeAfter(calendar, to + 1);
  const days = facts.policy.nextEveningDays.value;
  const next = feedingDaysFrom(calendar, home, days).next[0] as number;
  return {
    from,
    to,
    eve: from > today ? from - 1 : null,
    home,
    fedAgain: next < days ? home + next : home,
  };
}

function homeAfter({ absences }: FeedingCalendar, day: DayNumber): DayNumber {
  const other = absences.find(({ from, to }) => from <= day && day <= to);
  return other === undefined ? day : homeAfter({ feedingWeekdays: [], absences }, other.to + 1);
}
