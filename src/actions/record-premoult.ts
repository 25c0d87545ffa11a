/** Records that an animal was seen to near a moult. */
import { z } from 'zod';
import { err, ok } from '../husbandry/result.ts';
import { civilDay, formId, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { beforeItCame } from './lifetime.ts';
import { action } from './perform.ts';

export const recordPremoult = action({
  verb: 'record-premoult',
  schema: z.strictObject({ animal: someText, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const animal = await findAnimal(tx, given.animal);
    if (!animal.ok) return animal;
    const day = given.day ?? now.today;
    const early = beforeItCame(animal.value, { day, field: 'day' });
    if (early !== null) return err(early);
    return ok({
      summary: `${given.animal} nears a moult`,
      entries: [{ day, kind: 'premoult', animal: given.animal }],
      reply: null,
    });
  },
});
