/** Records a death: of one animal, or of some of a group. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, heads, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { died } from './life-events.ts';
import { action } from './perform.ts';

export const recordDied = action({
  verb: 'record-died',
  schema: z.strictObject({ animal: someText, heads: heads.default(1), day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const animal = await findAnimal(tx, given.animal);
    if (!animal.ok) return animal;
    const event = died(animal.value, given.heads, given.day ?? now.today);
    if (!event.ok) return event;
    const { row, entries } = event.value;
    const summary =
      animal.value.count === 1 ? `${given.animal} died` : `${given.heads} of ${given.animal} died`;
    return ok({
      summary,
      puts: { animal: [row] },
      entries,
      reply: { left: row.leftDay === null ? row.count : 0 },
    });
  },
});
