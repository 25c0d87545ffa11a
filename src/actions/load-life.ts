/** Reads one animal's whole record, as the core asks for it. */
import type { GrowthRecord, MealOnRecord } from '../husbandry/appetite/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import { lifeOf, type MealRow } from '../store/index.ts';
import type { Context } from './context.ts';
import { unsaid } from './record.ts';

export interface LifeRecord extends GrowthRecord {
  /** Oldest first; each with the act that wrote it down. */
  readonly meals: readonly (MealOnRecord & { readonly act: number })[];
}

/** The record as of a day; what nobody spoke of counts as taken from the next day on. */
export async function loadLife({ store }: Context, code: string, day: DayNumber): Promise<LifeRecord> {
  const { meals, moults, sizes } = await store.ask(lifeOf(code, day));
  return { meals: meals.map((meal) => ({ ...meal, outcome: outcomeOf(meal, day) })), moults, sizes };
}

const outcomeOf = ({ day, outcome }: MealRow, today: DayNumber) => outcome ?? unsaid(day, today);
