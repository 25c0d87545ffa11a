/** Changes the keeper's settings; what is not named stays. */
import { z } from 'zod';
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { rowsOf, type SettingRow, settings, type Tx } from '../store/index.ts';
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
    /** For the demo room: never in place of what the keeper has set, and gone with the room. */
    demo: flag.default(false),
    formId,
  }),
  body: async ({ tx }, { formId: _, demo, ...given }) => {
    const backwards = given.absences?.find(({ from, to }) => from > to);
    if (backwards !== undefined) {
      const range = `${civilDate(backwards.from)} to ${civilDate(backwards.to)}`;
      return err(
        problem('ends-swapped', `"${range}" runs backwards; the earlier day comes first.`, 'absences'),
      );
    }
    const rows = Object.entries(said(given)).map(([key, value]) => ({ key, value }));
    const setting = demo ? await madeForDemo(tx, rows) : await madeByKeeper(tx, rows);
    return ok({ summary: 'Changed the settings', puts: { setting }, reply: null });
  },
});

/** What the keeper has not set, marked as belonging to the demo room. */
async function madeForDemo(tx: Tx, rows: readonly SettingRow[]): Promise<readonly SettingRow[]> {
  const { ofDemo } = await tx.ask(settings);
  const set = new Set((await tx.ask(rowsOf('setting'))).map(({ key }) => key));
  const free = rows.filter(({ key }) => !set.has(key) || ofDemo.includes(key));
  const marked = new Set([...ofDemo, ...free.map(({ key }) => key)]);
  return [...free, { key: 'ofDemo', value: [...marked] }];
}

/** What the keeper sets belongs to the demo room no more. */
async function madeByKeeper(tx: Tx, rows: readonly SettingRow[]): Promise<readonly SettingRow[]> {
  const { ofDemo } = await tx.ask(settings);
  const left = ofDemo.filter((key) => !rows.some((row) => row.key === key));
  return left.length === ofDemo.length ? rows : [...rows, { key: 'ofDemo', value: left }];
}
