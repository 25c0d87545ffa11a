/** What the plan of the room asks for before the next Sunday; nothing where no plan of the room as it is was made. */
import { stepsOf } from '../../../views/pages/plan-steps.ts';
import type { PlannedWeek } from '../../../views/pages/sunday-plan.tsx';
import { keptPlan } from '../../actions/index.ts';
import { type DayNumber, weekday } from '../../husbandry/calendar.ts';
import type { CoverAnswer } from '../../husbandry/supply/index.ts';
import { DAYS_PER_WEEK } from '../../husbandry/units.ts';
import { settings } from '../../store/index.ts';
import type { House } from './house.ts';
import { shownFresh } from './plan-told.ts';
import type { Visit } from './visit.ts';

export async function weekPlanned({ context }: House, here: Visit): Promise<PlannedWeek | null> {
  const { planWeeks } = await context.store.ask(settings);
  const question = { weeks: planWeeks, wishes: [], supposed: [] };
  const plan = await keptPlan(context, question, here.snapshot);
  if (plan === null) return null;
  const { told } = shownFresh(plan, question, here);
  const next = nextSunday(here.snapshot.today);
  const steps = stepsOf(plan.lines.filter(({ actBy }) => actBy < next));
  return told === null || steps.length === 0 ? null : { told, steps };
}

/**
 * Whether the plan's steps are what this Sunday asks for: where the room runs short, one of them must feed a group that does within the
 * days looked at. Else the act that helps most comes first; what can be done next week is no answer to tonight.
 */
export function meets({ steps }: PlannedWeek, { day, horizonDays, groups, verdict }: CoverAnswer): boolean {
  if (verdict !== 'runs short') return true;
  const short = groups
    .filter((group) => group.verdict !== 'lasts' || group.dangers > 0)
    .map(({ key }) => key);
  const feeds = steps.flatMap(({ lines }) => lines.flatMap(({ reason }) => reason?.feeds ?? []));
  return feeds.some(({ group, from }) => short.includes(group) && from < day + horizonDays);
}

const SUNDAY = 6;

/** The first Sunday after a day. */
const nextSunday = (day: DayNumber): DayNumber =>
  day + ((SUNDAY - weekday(day) + DAYS_PER_WEEK - 1) % DAYS_PER_WEEK) + 1;
