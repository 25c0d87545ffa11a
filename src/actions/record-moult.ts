/** Records a moult that was found. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, gaugeMm, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { moulted } from './life-events.ts';
import { action } from './perform.ts';

export const recordMoult = action({
  verb: 'record-moult',
  schema: z.strictObject({
    animal: someText,
    found: civilDay.optional(),
    earliest: civilDay.optional(),
    gaugeMm: gaugeMm.optional(),
    formId,
  }),
  pastDays: ['found', 'earliest'],
  body: async (scene, given) => {
    const animal = await findAnimal(scene.tx, given.animal);
    if (!animal.ok) return animal;
    const event = await moulted(scene, animal.value, { ...given, found: given.found ?? scene.now.today });
    if (!event.ok) return event;
    const { row, entries } = event.value;
    return ok({
      summary: `${given.animal} moulted`,
      puts: { animal: [row] },
      entries,
      reply: { gaugeMm: row.gaugeMm },
    });
  },
});
