/** Records a gauge that was measured. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, gaugeMm, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { resized } from './life-events.ts';
import { action } from './perform.ts';

export const recordMeasure = action({
  verb: 'record-measure',
  schema: z.strictObject({ animal: someText, gaugeMm, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const animal = await findAnimal(tx, given.animal);
    if (!animal.ok) return animal;
    const day = given.day ?? now.today;
    const row = resized(animal.value, { gaugeMm: given.gaugeMm, day, assumed: false });
    return ok({
      summary: `Measured ${given.animal}: ${given.gaugeMm} mm`,
      puts: { animal: [row] },
      entries: [{ day, kind: 'measured', animal: given.animal, details: { gaugeMm: given.gaugeMm } }],
      reply: { gaugeMm: row.gaugeMm },
    });
  },
});
