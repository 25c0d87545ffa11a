/** A meal served in time or not: what is not offered is late, is missed again each time another would have been due, and is dangerous. */
import { COUNTED, dangerAfter, type Meals, missedBy, missesAgain, offered } from '../appetite/index.ts';
import { countOverdue, type Tally } from './tally.ts';

export interface Served {
  readonly meals: Meals;
  readonly tally: Tally;
}

/** The demand group an animal is in at the moment. */
export const groupOf = ({ meals }: Served, i: number): number =>
  meals.roster.group[i * meals.roster.steps + (meals.step[i] as number)] as number;

/** Counts what was not offered by the end of `day`: late and dangerous once each, and every meal it has missed since. */
export function noteOverdue(served: Served, i: number, day: number): void {
  const { meals } = served;
  const seen = meals.counted[i] as number;
  const missed = Math.floor(seen / COUNTED.missed);
  const more = Math.max(0, missedBy(meals, i, day) - missed);
  let now = seen + more * COUNTED.missed;
  if (day >= (meals.rangeTo[i] as number)) now |= COUNTED.late;
  if (day >= dangerAfter(meals, i)) now |= COUNTED.danger;
  if (now === seen) return;
  meals.counted[i] = now;
  const fresh = now & ~seen;
  countOverdue(served.tally, {
    group: groupOf(served, i),
    animal: i,
    late: fresh & COUNTED.late,
    danger: (fresh & COUNTED.danger) / COUNTED.danger,
    missed: more,
    cameDue: missed === 0 ? 1 : 0,
  });
}

/** The evening, tonight or later, at whose end a meal still not offered is counted for something more. */
export function alarmOf(meals: Meals, i: number): number {
  const counted = meals.counted[i] as number;
  const unless = (bit: number, day: number) => (counted & bit ? Number.POSITIVE_INFINITY : day);
  const late = unless(COUNTED.late, meals.rangeTo[i] as number);
  const missed = missesAgain(meals, i, Math.floor(counted / COUNTED.missed));
  return Math.max(0, Math.min(late, missed, unless(COUNTED.danger, dangerAfter(meals, i))));
}

/** Offers an animal its meal, after counting what was overdue by the evening before. */
export function serve(served: Served, i: number, day: number): void {
  if (day > 0) noteOverdue(served, i, day - 1);
  served.tally.now.askedInVain[i] = 0;
  offered(served.meals, i, day);
}
