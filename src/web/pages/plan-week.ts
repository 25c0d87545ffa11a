/** What the plan of the room asks for before the next Sunday; nothing where no plan of the room as it is was made. */
import { type PlanStep, stepsOf } from '../../../views/pages/plan-steps.ts';
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
  const steps = stepsOf(plan.lines.filter(({ actBy }) => actBy < next)).toSorted(doneFirst);
  return told === null || steps.length === 0 ? null : { told, steps };
}

/** Leaving alone asks for nothing to be done. */
const doneFirst = (a: PlanStep, b: PlanStep): number =>
  Number(a.line.what === 'rest') - Number(b.line.what === 'rest');

/**
 * The plan's steps as this Sunday asks for them; null where they are no answer to it. Where the room runs short, one of
 * them must feed a group that does within the days looked at, and those that do come first: what makes little
 * difference, can be done next week or is too many is no answer to tonight.
 */
export function answering(
  planned: PlannedWeek,
  { day, horizonDays, groups, verdict }: CoverAnswer,
): PlannedWeek | null {
  if (verdict !== 'runs short') return planned;
  const short = groups
    .filter((group) => group.verdict !== 'lasts' || group.dangers > 0)
    .map(({ key }) => key);
  const feeds = ({ lines }: PlannedWeek['steps'][number]): boolean =>
    lines.some(
      ({ reason }) =>
        reason?.makesLittleDifference === false &&
        reason.feeds.some(({ group, from }) => short.includes(group) && from < day + horizonDays),
    );
  const first = planned.steps.filter(feeds);
  if (first.length === 0) return null;
  return { ...planned, steps: [...first, ...planned.steps.filter((step) => !feeds(step))] };
}

const SUNDAY = 6;

/** The first Sunday after a day. */
const nextSunday = (day: DayNumber): DayNumber =>
  day + ((SUNDAY - weekday(day) + DAYS_PER_WEEK - 1) % DAYS_PER_WEEK) + 1;
