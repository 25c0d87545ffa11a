/** Records that an animal was seen to near a moult. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { action } from './perform.ts';

export const recordPremoult = action({
  verb: 'record-premoult',
  schema: z.strictObject({ animal: someText, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const animal = await findAnimal(tx, given.animal);
    if (!animal.ok) return animal;
    return ok({
      summary: `${given.animal} nears a moult`,
      entries: [{ day: given.day ?? now.today, kind: 'premoult', animal: given.animal }],
      reply: null,
    });
  },
});
