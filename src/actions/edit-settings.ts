/** Changes the keeper's settings; what is not named stays. */
import { z } from 'zod';
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { civilDay, flag, formId, leadDays, oneOf } from './fields.ts';
import { action } from './perform.ts';
import { said } from './said.ts';

const DAYS = 7;
const weekdays = z.array(flag).length(DAYS, { error: 'Seven weekdays are needed, from Monday to Sunday.' });

export const editSettings = action({
  verb: 'edit-settings',
  schema: z.strictObject({
    feedingWeekdays: weekdays.optional(),
    absences: z.array(z.strictObject({ from: civilDay, to: civilDay })).optional(),
    deliveryWeekdays: weekdays.optional(),
    leadTimeDays: leadDays.optional(),
    units: oneOf(['mm', 'inch']).optional(),
    formId,
  }),
  body: async (_scene, { formId: _, ...given }) => {
    const backwards = given.absences?.find(({ from, to }) => from > to);
    if (backwards !== undefined) {
      const range = `${civilDate(backwards.from)} to ${civilDate(backwards.to)}`;
      return err(
        problem('ends-swapped', `"${range}" runs backwards; the earlier day comes first.`, 'absences'),
      );
    }
    const rows = Object.entries(said(given)).map(([key, value]) => ({ key, value }));
    return ok({ summary: 'Changed the settings', puts: { setting: rows }, reply: null });
  },
});
