/** How an animal eats: its appetite and its refusals in a sentence each, and its last weeks' meals. */
import type { Intake, MealShare, RefusalsSeen } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { intakeWords, refusalWords } from '../appetite-words.ts';
import { MealDots } from '../charts/meal-dots.tsx';

export interface AppetiteProps {
  readonly today: DayNumber;
  readonly stageWord: string;
  readonly intake: Intake | null;
  readonly refusals: RefusalsSeen | null;
  /** Offers of the days looked back on, oldest first. */
  readonly meals: readonly MealShare[];
  /** First of those days. */
  readonly from: DayNumber;
}

export const Appetite = ({ today, stageWord, intake, refusals, meals, from }: AppetiteProps) => {
  const refused = refusalWords(refusals);
  return (
    <section aria-labelledby="appetite">
      <h2 id="appetite">Appetite</h2>
      {refused === null ? null : <p class={refusals?.usual ? '' : 'urgent'}>{refused}</p>}
      <p>{intakeWords(intake, stageWord)}</p>
      {meals.length === 0 ? null : <MealDots meals={meals} from={from} today={today} />}
    </section>
  );
};
