/** The coming weeks on the ruler: what will be alive, eaten and missing in each, as if nothing more were ordered. */
import type { DayNumber } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { GroupAnswer, Spectrum } from './answer.ts';
import { type Judged, judge } from './cover.ts';
import { type GroupSaid, groupSaid, groupsShown } from './group-said.ts';
import { daysOfWeek, spectrumOfWeek } from './spectrum.ts';
import { byDay } from './summary.ts';
import type { WeekTally } from './week-tally.ts';

/** A demand group in one week: items of the ideal size wanted and not found, means per replicate. */
export type WeekGroup = Pick<GroupAnswer, 'key' | 'name' | 'window'> & {
  readonly wanted: number;
  readonly unmet: number;
};

export interface WeekAhead {
  /** 0 is the week that begins today. */
  readonly week: number;
  readonly from: DayNumber;
  readonly spectrum: Spectrum;
  /** Groups that want anything in this week; as animals moult they pass from one to the next. */
  readonly groups: readonly WeekGroup[];
}

export interface WeeksAnswer {
  readonly revision: number;
  readonly weeks: readonly WeekAhead[];
}

/** The week that begins today and those that follow, as many as the policy says. */
export function weeksAhead(snapshot: Snapshot): WeeksAnswer {
  const { weeksAhead: ahead, aheadReplicates } = snapshot.facts.policy;
  const days = (ahead.value + 1) * DAYS_PER_WEEK;
  const judged = judge(snapshot, {
    days,
    replicates: aheadReplicates.value,
    notesStock: false,
    notesWeeks: true,
  });
  const weekly = judged.tally.weekly as WeekTally;
  const weeks = Array.from({ length: weekly.weeks }, (_, week) => ({
    week,
    from: snapshot.today + week * DAYS_PER_WEEK,
    spectrum: spectrumOfWeek(judged.tally, weekly, { menu: judged.menu, week }),
    groups: groupsOfWeek(judged, week),
  }));
  return { revision: snapshot.revision, weeks };
}

function groupsOfWeek({ menu, roster, tally }: Judged, week: number): WeekGroup[] {
  const { from, to } = daysOfWeek(tally, week);
  const sumOf = (days: readonly number[]) => days.slice(from, to).reduce((a, b) => a + b, 0);
  return groupsShown(menu, tally)
    .map((g) => ({
      ...windowOf(groupSaid(roster, menu.groups[g]!)),
      wanted: sumOf(byDay(tally, tally.wanted, g)),
      unmet: sumOf(byDay(tally, tally.unmet, g)),
    }))
    .filter(({ wanted }) => wanted > 0);
}

const windowOf = ({ key, name, window }: GroupSaid): Pick<WeekGroup, 'key' | 'name' | 'window'> => ({
  key,
  name,
  window,
});
