/** Records that a male has matured: he eats little from now on and moults no more. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { civilDay, formId, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { beforeItCame } from './lifetime.ts';
import { action } from './perform.ts';

export const recordMatured = action({
  verb: 'record-matured',
  schema: z.strictObject({ animal: someText, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const animal = await findAnimal(tx, given.animal);
    if (!animal.ok) return animal;
    if (animal.value.sex === 'female')
      return err(
        problem('is-female', `${given.animal} is written as female; only a male matures so.`, 'animal'),
      );
    const day = given.day ?? now.today;
    const early = beforeItCame(animal.value, { day, field: 'day' });
    if (early !== null) return err(early);
    return ok({
      summary: `${given.animal} matured`,
      puts: { animal: [{ ...animal.value, sex: 'male', matured: true, stageOverride: null }] },
      entries: [{ day, kind: 'matured', animal: given.animal }],
      reply: null,
    });
  },
});
