/** An absence that is asked about: its plan and its rounds, whether or not it stands in the calendar already. */
import type { DayRange } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { type AwayPlan, awayPlan } from './away.ts';
import { type AwayRounds, awayRounds } from './away-rounds.ts';

export interface WhileAway {
  readonly plan: AwayPlan;
  readonly rounds: AwayRounds | null;
}

export interface AwayAsked {
  readonly days: DayRange;
  /** Whether those are fed too that would else miss a meal without harm. */
  readonly also: boolean;
}

export function whileAway(snapshot: Snapshot, { days, also }: AwayAsked): WhileAway {
  const room = withoutAbsence(snapshot, days);
  const plan = awayPlan(room, days);
  return { plan, rounds: awayRounds(room, plan, also) };
}

/** The room with this absence taken out of its calendar. */
export const withoutAbsence = ({ calendar, ...room }: Snapshot, days: DayRange): Snapshot => ({
  ...room,
  calendar: { ...calendar, absences: calendar.absences.filter((each) => !isSame(each, days)) },
});

const isSame = (a: DayRange, b: DayRange): boolean => a.from === b.from && a.to === b.to;
