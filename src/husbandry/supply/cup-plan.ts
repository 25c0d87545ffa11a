/** Which cups to start on which days, so that so many flies come out of them week by week. */
import type { DayNumber } from '../calendar.ts';
import { type CupGives, weekFrom } from '../larder/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';

export interface CupStart {
  readonly day: DayNumber;
  readonly cups: number;
}

export interface CupNeed {
  readonly today: DayNumber;
  /** First day on which flies are wanted. */
  readonly from: DayNumber;
  /** Flies wanted in each week from then on, less what is there for them already. */
  readonly flies: readonly number[];
}

/**
 * For each week, so many cups that their best seven days fill what the cups before them leave open: started so that
 * those days fall on the week, or today where that has passed. Flies left from a week before are not counted.
 */
export function cupStarts({ today, from, flies }: CupNeed, cup: CupGives): readonly CupStart[] {
  const starts: CupStart[] = [];
  flies.forEach((wanted, week) => {
    const begins = from + week * DAYS_PER_WEEK;
    const comes = starts.reduce((sum, { day, cups }) => sum + cups * given(cup, begins - day), 0);
    const short = wanted - comes;
    if (short <= 0) return;
    starts.push({ day: Math.max(today, begins - cup.bestDay), cups: Math.ceil(short / cup.bestWeek) });
  });
  return starts;
}

/** Flies of one cup in the week that begins so many days after its start. */
const given = ({ flies }: CupGives, age: number): number => weekFrom(flies, age);
