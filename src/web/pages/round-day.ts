/** Which evening a round is of: tonight, or one of the last weeks. */
import { afterToday } from '../../actions/parse.ts';
import { tooLongAgo } from '../../actions/record-evening.ts';
import { type DayNumber, parseCivilDate } from '../../husbandry/calendar.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Facts } from '../../husbandry/snapshot.ts';

/** The evening asked for as YYYY-MM-DD; by default today's. */
export function eveningAsked(
  text: string | undefined,
  { today, facts }: { readonly today: DayNumber; readonly facts: Facts },
): Result<DayNumber> {
  if (text === undefined || text === '') return ok(today);
  const day = parseCivilDate(text);
  if (!day.ok) return day;
  const outside =
    afterToday(day.value, today, 'day') ?? tooLongAgo(day.value, { today, policy: facts.policy });
  return outside === null ? day : err(outside);
}
