/** A meal served in time or not: what is not offered is counted once as late, as missed and as dangerous. */
import { COUNTED, dangerAfter, type Meals, missedAfter, offered } from '../appetite/index.ts';
import { countOverdue, type Tally } from './tally.ts';

export interface Served {
  readonly meals: Meals;
  readonly tally: Tally;
}

/** The demand group an animal is in at the moment. */
export const groupOf = ({ meals }: Served, i: number): number =>
  meals.roster.group[i * meals.roster.steps + (meals.step[i] as number)] as number;

/** Counts a meal not offered by the end of `day` once each as late, missed and dangerous. */
export function noteOverdue(served: Served, i: number, day: number): void {
  const { meals } = served;
  const seen = meals.counted[i] as number;
  let now = seen;
  if (day >= (meals.rangeTo[i] as number)) now |= COUNTED.late;
  if (day >= missedAfter(meals, i)) now |= COUNTED.missed;
  if (day >= dangerAfter(meals, i)) now |= COUNTED.danger;
  if (now === seen) return;
  meals.counted[i] = now;
  countOverdue(served.tally, { group: groupOf(served, i), animal: i, bits: now & ~seen });
}

/** The evening, tonight or later, at whose end a meal still not offered is counted for something more. */
export function alarmOf(meals: Meals, i: number): number {
  const counted = meals.counted[i] as number;
  const unless = (bit: number, day: number) => (counted & bit ? Number.POSITIVE_INFINITY : day);
  const late = unless(COUNTED.late, meals.rangeTo[i] as number);
  const missed = unless(COUNTED.missed, missedAfter(meals, i));
  return Math.max(0, Math.min(late, missed, unless(COUNTED.danger, dangerAfter(meals, i))));
}

/** Offers an animal its meal, after counting what was overdue by the evening before. */
export function serve(served: Served, i: number, day: number): void {
  if (day > 0) noteOverdue(served, i, day - 1);
  served.tally.now.askedInVain[i] = 0;
  offered(served.meals, i, day);
}
