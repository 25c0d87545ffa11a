/** An animal that was lent is back: it is fed again, with the code and the record it had. */
import { z } from 'zod';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import type { AnimalRow } from '../store/index.ts';
import { civilDay, formId, someText } from './fields.ts';
import { findRow } from './find.ts';
import { historyOf } from './import-history.ts';
import { action } from './perform.ts';

const HERE_AGAIN = { leftReason: null, leftDay: null, lentTo: null, backDay: null } as const;

export const cameBack = action({
  verb: 'came-back',
  schema: z.strictObject({
    animal: someText,
    /** Day it came; by default today. */
    day: civilDay.optional(),
    /** Last meal it took while it was away. */
    lastTaken: civilDay.optional(),
    formId,
  }),
  pastDays: ['day', 'lastTaken'],
  body: async (scene, { animal, day = scene.now.today, lastTaken }) => {
    const row = await findRow(scene.tx, 'animal', animal);
    if (!row.ok) return row;
    const wrong = notAway(row.value, day);
    if (wrong !== null) return err(wrong);
    return ok({
      summary: `${animal} came back`,
      puts: { animal: [{ ...row.value, ...HERE_AGAIN }] },
      entries: historyOf(animal, { lastFed: lastTaken }),
      reply: { animal },
    });
  },
});

function notAway({ code, leftReason, leftDay }: AnimalRow, day: DayNumber): Problem | null {
  if (leftReason === null || leftDay === null)
    return problem('not-lent', `${code} is not lent out: it lives here.`, 'animal');
  if (leftReason !== 'lent')
    return problem('not-lent', `${code} was not lent: ${leftReason} on ${civilDate(leftDay)}.`, 'animal');
  return day < leftDay
    ? problem('ends-swapped', `"${civilDate(day)}" is before it was lent (${civilDate(leftDay)}).`, 'day')
    : null;
}
