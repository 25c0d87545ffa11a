/** Lends animals: they are not fed here until they come back, and keep their codes and records. */
import { z } from 'zod';
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { animalCodes, chosenAnimals, manyWords } from './chosen-animals.ts';
import { asOf, civilDay, formId, text } from './fields.ts';
import { action } from './perform.ts';

export const lend = action({
  verb: 'lend',
  schema: z.strictObject({
    animals: animalCodes,
    to: text.min(1, { error: 'Say who has them.' }),
    /** Day they left; by default today. */
    day: civilDay.optional(),
    /** Day they are expected back. */
    back: civilDay.optional(),
    asOf,
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, given) => {
    const rows = await chosenAnimals(scene, given);
    if (!rows.ok) return rows;
    const { to, day = scene.now.today, back = null } = given;
    if (back !== null && back < day) {
      const said = `"${civilDate(back)}" is before they leave (${civilDate(day)}).`;
      return err(problem('ends-swapped', said, 'back'));
    }
    const away = { leftReason: 'lent', leftDay: day, lentTo: to, backDay: back } as const;
    return ok({
      summary: `Lent ${manyWords(rows.value)} to “${to}”`,
      puts: { animal: rows.value.map((row) => ({ ...row, ...away })) },
      reply: { changed: rows.value.length },
    });
  },
});
